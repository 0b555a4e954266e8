import type { Fill, Point, Shape } from "../shapes.ts";
import type { BoxFrame } from "./frame.ts";
import { halves, line, mirrored, type Pieces, rectangle, region } from "./pieces.ts";
import { studHole } from "./studs.ts";

/** The box in the casing: throat wall, bore, box face; broken off where the casing goes on. The flush port goes through the upper wall. */
export function housing(frame: BoxFrame): Pieces {
  const shapes: Shape[] = [];
  const { wall, wallFrom, bore, depth, port, bush } = frame;
  const throat = frame.throat + (bush?.wall ?? 0);
  const hole = studHole(frame);
  for (const { half, sign } of halves) {
    const fill: Fill = { kind: "hatch", lean: 45, spacing: 1.7, around: hole ? [mirrored(hole, sign)] : [] };
    const edge = brokenEdge(wallFrom, throat, wall, sign === 1 ? 1 : -1);
    const opened = sign === 1 ? port : undefined;
    const inner: readonly Point[] = [
      [0, throat],
      [0, bore],
    ];
    const outside: readonly Point[] = [
      [depth, bore],
      [depth, wall],
    ];
    const [left, right] = opened ? [opened.at - opened.radius, opened.at + opened.radius] : [undefined, undefined];
    const near: readonly Point[] = left === undefined ? [...edge, ...inner, ...outside] : [...edge, ...inner, [left, bore], [left, wall]];
    shapes.push(filled(`housing-${half}`, near, sign, fill), line(`housing-${half}-break`, "housing", "thin", edge, sign));
    shapes.push(line(`housing-${half}-outline`, "housing", "outline", [...near.slice(edge.length - 1), edge[0] as Point], sign));
    if (right !== undefined) shapes.push(region(`housing-${half}-gland`, "housing", rectangle([right, bore, depth, wall]), sign, fill));
    if (bush) {
      const across: Fill = { kind: "hatch", lean: -45, spacing: 1.1 };
      shapes.push(region(`throat-bush-${half}`, "throat-bush", rectangle([wallFrom * 0.86, frame.throat, 0, throat]), sign, across));
    }
  }
  return {
    parts: [
      { id: "housing", called: { id: "drawing-part-housing" } },
      ...(bush ? [{ id: "throat-bush", called: { id: "drawing-part-throat-bush" } }] : []),
    ],
    shapes,
  };
}

/** Hatched without an outline of its own: the break line is thin, the rest of the edge is drawn thick. */
function filled(id: string, points: readonly Point[], sign: 1 | -1, fill: Fill): Shape {
  return { ...region(id, "housing", points, sign, fill), layer: "none" };
}

/** A freehand break from the outside down to the throat. */
function brokenEdge(x: number, low: number, high: number, lean: number): readonly Point[] {
  const sway = 0.05 * (high - low);
  return Array.from({ length: 17 }, (_, i): Point => {
    const t = i / 16;
    return [x + lean * sway * (Math.sin(2 * Math.PI * t) + 0.35 * Math.sin(5 * Math.PI * t)), high + (low - high) * t];
  });
}
