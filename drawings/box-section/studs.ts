import type { Label, LabelLine, Point, Rectangle, Shape } from "../shapes.ts";
import { type BoxFrame, movement, type Stud } from "./frame.ts";
import type { BoxDrawing } from "./input.ts";
import { halves, line, type Pieces, rectangle, region } from "./pieces.ts";

/** Across flats and across corners of a nut, in thread diameters (ISO 4032 proportions, rounded for drawing). */
const acrossCorners = 1.75;
/** Root of a thread, in its diameter, as it is drawn. */
const root = 0.82;

/** One stud above and one below with its nut; not hatched, since it is not cut. */
export function studs(box: BoxDrawing, { stud, depth, flangeRadius }: BoxFrame): Pieces {
  if (!box.studs || !stud) return { parts: [], shapes: [] };
  const shapes = halves.flatMap(({ half, sign }) => one(stud, depth, half, sign));
  const { count, diameter, left, thread } = box.studs;
  const { gland } = movement(box);
  const says: LabelLine = {
    text:
      thread === undefined
        ? { id: "drawing-studs", with: { count, diameter: { value: diameter, kind: "length", decimals: 0 } } }
        : { id: "drawing-studs-thread", with: { count, thread } },
    ink: "worked",
  };
  const lines: readonly LabelLine[] = left
    ? [
        says,
        {
          text: {
            id: "drawing-thread-left",
            with: { length: { value: left.value - (box.moved?.gland ?? 0), kind: "length", decimals: 0 } },
          },
          ink: gland > 0 ? "worked" : left.by,
        },
      ]
    : [says];
  const label: Label = { id: "studs-label", lines, at: [stud.to, flangeRadius], place: "above", anchor: "end" };
  return { parts: [{ id: "stud", called: { id: "drawing-part-stud" } }], shapes, labels: [label] };
}

/** The room a stud takes in the box wall, which hatching leaves free. */
export function studHole({ stud, depth }: BoxFrame): Rectangle | undefined {
  return stud && stud.from < depth ? [stud.from, stud.at - stud.radius, depth, stud.at + stud.radius] : undefined;
}

function one(stud: Stud, depth: number, half: string, sign: 1 | -1): readonly Shape[] {
  const { radius, at, from, to, nutFrom, nutTo, threadFrom } = stud;
  const name = (what: string) => `stud-${half}${what}`;
  const chamfer = 0.2 * radius;
  const end: readonly Point[] = [
    [nutTo, at - radius],
    [to - chamfer, at - radius],
    [to, at - radius + chamfer],
    [to, at + radius - chamfer],
    [to - chamfer, at + radius],
    [nutTo, at + radius],
  ];
  const thread = (what: string, x0: number, x1: number): readonly Shape[] =>
    x1 <= x0
      ? []
      : [-1, 1].map((side) =>
          line(
            name(`-thread-${what}-${side < 0 ? "in" : "out"}`),
            "stud",
            "thin",
            [
              [x0, at + side * root * radius],
              [x1, at + side * root * radius],
            ],
            sign,
          ),
        );
  const corner = acrossCorners * radius;
  const bevel = 0.22 * radius;
  const nut: readonly Point[] = [
    [nutFrom, at - corner],
    [nutTo - bevel, at - corner],
    [nutTo, at - corner + 1.2 * bevel],
    [nutTo, at + corner - 1.2 * bevel],
    [nutTo - bevel, at + corner],
    [nutFrom, at + corner],
  ];
  const flats = [-0.5, 0.5].map((share) =>
    line(
      name(`-nut-edge-${share < 0 ? "in" : "out"}`),
      "stud",
      "thin",
      [
        [nutFrom, at + share * corner],
        [nutTo, at + share * corner],
      ],
      sign,
    ),
  );
  return [
    region(name("-shank"), "stud", rectangle([from, at - radius, nutFrom, at + radius]), sign),
    region(name("-end"), "stud", end, sign),
    region(name("-nut"), "stud", nut, sign),
    ...flats,
    ...thread("wall", from, depth),
    ...thread("gap", threadFrom, nutFrom),
    ...thread("end", nutTo, to - chamfer),
    line(
      name("-axis"),
      "stud",
      "centre",
      [
        [from - radius, at],
        [to + radius, at],
      ],
      sign,
    ),
  ];
}
