import type { Balloon, Fill, Part, Shape } from "../shapes.ts";
import type { BoxFrame, PlacedPart } from "./frame.ts";
import type { BoxDrawing } from "./input.ts";
import { halves, type Pieces, rectangle, region } from "./pieces.ts";

/** The set: rings with the weave of their family and their number from the throat; spacers and bushes as cut metal. */
export function rings(box: BoxDrawing, frame: BoxFrame): Pieces {
  const parts: Part[] = [];
  const shapes: Shape[] = [];
  const balloons: Balloon[] = [];
  for (const [i, placed] of frame.parts.entries()) {
    const { part, from, to } = placed;
    const soft = part.kind === "ring" || part.kind === "end-ring";
    const number = part.number === undefined ? undefined : String(part.number);
    const id = `${part.kind}-${number ?? `at-${i + 1}`}`;
    parts.push({ id, called: { id: `drawing-part-${part.kind}`, ...(number === undefined ? {} : { with: { number } }) } });
    const round = soft ? (part.kind === "ring" ? 0.16 : 0.05) * Math.min(frame.section, to - from) : undefined;
    for (const { half, sign } of halves) {
      const outline = rectangle([from, frame.shaft, to, frame.bore]);
      shapes.push(region(`${id}-${half}`, id, outline, sign, filling(box, frame, placed, i), round));
      if (number === undefined || !soft) continue;
      const room = Math.min(frame.section, to - from) / 2;
      balloons.push({
        id: `${id}-${half}-number`,
        part: id,
        text: number,
        at: [(from + to) / 2, (sign * (frame.shaft + frame.bore)) / 2],
        room,
        lead: sign < 0,
      });
    }
  }
  return { parts, shapes, balloons };
}

function filling(box: BoxDrawing, { section }: BoxFrame, { part, relaxed }: PlacedPart, i: number): Fill {
  if (part.kind === "ring" || part.kind === "end-ring") {
    return { kind: "weave", family: part.family ?? box.family, relaxed: relaxed / section };
  }
  // The box wall and the follower beside it are hatched otherwise; two metal parts in a row differ by their spacing.
  return { kind: "hatch", lean: -45, spacing: i % 2 === 0 ? 1.15 : 1.4 };
}
