import type { Point, Shape } from "../shapes.ts";
import type { BoxFrame } from "./frame.ts";
import type { BoxDrawing } from "./input.ts";
import { halves, line, type Pieces, rectangle, region } from "./pieces.ts";

/** The shaft, not hatched because it is not cut, broken where it goes on; its sleeve; the centre line. */
export function shaft(box: BoxDrawing, frame: BoxFrame): Pieces {
  const { bare, shaftFrom, shaftTo, sleeveFrom, sleeveTo, leftOut } = frame;
  const shapes: Shape[] = [];
  for (const { half, sign } of halves) {
    shapes.push(
      line(
        `shaft-${half}`,
        "shaft",
        "outline",
        [
          [shaftFrom, bare],
          [shaftTo, bare],
        ],
        sign,
      ),
    );
    if (leftOut > 0)
      shapes.push(line(`shaft-${half}-left-out`, "shaft", "thin", ripple(shaftFrom, shaftTo, leftOut, 0.1 * frame.section), sign));
    if (box.sleeve) {
      const fill = { kind: "hatch", lean: -45, spacing: 0.95 } as const;
      shapes.push(region(`sleeve-${half}`, "sleeve", rectangle([sleeveFrom, bare, sleeveTo, frame.shaft]), sign, fill));
    }
  }
  shapes.push(...ends(frame));
  const beyond = 0.25 * frame.section;
  shapes.push(
    line("centre-line", "shaft", "centre", [
      [shaftFrom - beyond, 0],
      [shaftTo + beyond, 0],
    ]),
  );
  return {
    parts: [
      { id: "shaft", called: { id: "drawing-part-shaft" } },
      ...(box.sleeve ? [{ id: "sleeve", called: { id: "drawing-part-sleeve" } }] : []),
    ],
    shapes,
  };
}

/** The break of a round bar: an S, one of its bows closed to a loop. With its middle left out, each half ends in a bow. */
function ends({ bare, shaftFrom, shaftTo, leftOut, section }: BoxFrame): readonly Shape[] {
  const sway = Math.min(0.5 * section, 0.22 * (bare - leftOut));
  const shapes: Shape[] = [];
  for (const [end, x, out] of [
    ["left", shaftFrom, 1],
    ["right", shaftTo, -1],
  ] as const) {
    const loopAbove = end === "left" ? 1 : -1;
    for (const { half, sign } of halves) {
      const single = bow(x, leftOut, bare, out * (sign === loopAbove ? 1 : -1) * sway);
      const id = `shaft-${end}-${half}`;
      shapes.push(line(id, "shaft", "outline", single, sign));
      if (sign !== loopAbove) continue;
      const other = bow(x, leftOut, bare, -out * sway);
      const loop = [...single, ...[...other].reverse().slice(1, -1)];
      const shape = region(`${id}-loop`, "shaft", loop, sign, { kind: "hatch", lean: 45, spacing: 0.95 });
      shapes.push({ ...shape, layer: "thin" });
    }
  }
  return shapes;
}

function bow(x: number, low: number, high: number, sway: number): readonly Point[] {
  return Array.from({ length: 13 }, (_, i): Point => {
    const t = i / 12;
    return [x + sway * Math.sin(Math.PI * t), low + (high - low) * t];
  });
}

/** The long break beside what is left out; it stays inside the piece that is drawn. */
function ripple(from: number, to: number, y: number, sway: number): readonly Point[] {
  const waves = 14;
  return Array.from({ length: waves * 4 + 1 }, (_, i): Point => {
    const t = i / (waves * 4);
    return [from + (to - from) * t, y + sway * (1 - Math.cos(2 * Math.PI * waves * t))];
  });
}
