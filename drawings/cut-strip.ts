import type { Family } from "@ringwright/core/materials";
import { type Angle, inUnit, type Length, quantity } from "@ringwright/core/units";
import { arc } from "./round.ts";
import type { Dimension, Drawing, Label, Note, Point, Shape, Text } from "./shapes.ts";
import { undrawn } from "./undrawn.ts";

/** One ring before it is bent round: a strip of braid with its two cuts. */
export interface CutStrip {
  readonly title?: Text;
  readonly section: Length;
  /** On the mean line. */
  readonly length: Length;
  /** Tip to tip. */
  readonly cutLength: Length;
  /** Between the cut face and the strip's length; a right angle is a square cut. */
  readonly angle: Angle;
  /** Diameter of the bar to cut on: the worn sleeve's. */
  readonly mandrel?: Length;
  readonly family?: Family;
}

/** Sections of strip that are shown at either end when the middle is left out. */
const shown = 2.2;
/** Flatter than so many radians a cut is no cut but a tear. */
const flattest = 0.08;

/**
 * The strip to cut for one ring, to scale with its middle left out: mean
 * length and length tip to tip, section, and the angle of a skive cut read
 * both ways, from the strip's length and from square.
 * @example toSvg(drawCutStrip({ section, length, cutLength, angle }), { width: 103 })
 */
export function drawCutStrip(strip: CutStrip): Drawing {
  const head = { name: "cut-strip", title: strip.title ?? { id: "drawing-cut-strip" } };
  const [section, length, tips] = [strip.section, strip.length, strip.cutLength].map((one) => inUnit("length", one, "mm")) as [
    number,
    number,
    number,
  ];
  const { angle } = strip;
  const lean = section / Math.tan(angle);
  const square = Math.abs(angle - Math.PI / 2) < 1e-9;
  const fine = section > 0 && length > section && length < 1e6 && angle > flattest && angle <= Math.PI / 2 + 1e-12;
  if (!fine) return undrawn(head, [{ id: "drawing-cannot-strip" }]);
  if (Math.abs(tips - (length + (square ? 0 : lean))) > 0.5) return undrawn(head, [{ id: "drawing-cannot-tips" }]);
  const over = square ? 0 : lean;
  const corners: readonly Point[] = [
    [0, 0],
    [length, 0],
    [length + over, section],
    [over, section],
  ];
  const [from, to] = [over + shown * section, length - shown * section];
  const leftOut = to - from > section ? { axis: "x" as const, from, to } : undefined;
  const shapes: Shape[] = leftOut
    ? ends(corners, leftOut.from, leftOut.to, section, strip.family)
    : [braided("strip", corners, strip.family, length / section)];
  shapes.push(line("mean-line", "centre", [over / 2, section / 2], [leftOut?.from ?? length + over / 2, section / 2]));
  if (leftOut) shapes.push(line("mean-line-end", "centre", [leftOut.to, section / 2], [length + over / 2, section / 2]));
  if (!square) shapes.push(...angles(length, section, angle));
  return {
    ...head,
    description: [
      {
        id: square ? "drawing-says-strip-square" : "drawing-says-strip",
        with: {
          section: shownLength(strip.section, 1),
          length: shownLength(strip.length, 0),
          tips: shownLength(strip.cutLength, 0),
          angle: degrees(angle),
        },
      },
    ],
    parts: [{ id: "strip", called: { id: "drawing-part-strip" } }],
    shapes,
    dimensions: dimensions(strip, length, over, section),
    balloons: [],
    labels: square ? [] : figures(length, section, angle),
    notes: notes(strip, square, leftOut !== undefined),
    ...(leftOut ? { leftOut } : {}),
    toScale: true,
    legible: { length: section, sizes: 2.6 },
  };
}

const shownLength = (value: number, decimals: number) => ({ value, kind: "length", decimals });
const degrees = (angle: number) => ({ value: angle, kind: "angle", decimals: 0 });

function line(id: string, layer: Shape["layer"], ...points: readonly Point[]): Shape {
  return { id, part: "strip", layer, points, closed: false };
}

function braided(id: string, points: readonly Point[], family: Family | undefined, relaxed: number): Shape {
  return { id, part: "strip", layer: "outline", points, closed: true, fill: { kind: "weave", family, relaxed } };
}

/** Both ends of the strip, each broken off where the middle is left out. */
function ends(corners: readonly Point[], from: number, to: number, section: number, family: Family | undefined): Shape[] {
  const [a, b, c, d] = corners as [Point, Point, Point, Point];
  const left: readonly Point[] = [a, [from, 0], [from, section], d];
  const right: readonly Point[] = [[to, 0], b, c, [to, section]];
  const weave = (id: string, points: readonly Point[]): Shape => {
    const xs = points.map(([x]) => x);
    return { ...braided(id, points, family, (Math.max(...xs) - Math.min(...xs)) / section), layer: "none" };
  };
  return [
    weave("left-end", left),
    weave("right-end", right),
    line("left-edge", "outline", [from, 0], a, d, [from, section]),
    line("right-edge", "outline", [to, 0], b, c, [to, section]),
    line("left-break", "thin", ...broken(from, section)),
    line("right-break", "thin", ...broken(to, section)),
  ];
}

function broken(x: number, section: number): readonly Point[] {
  return Array.from({ length: 25 }, (_, i): Point => [x + 0.045 * section * Math.sin((i / 24) * 3 * Math.PI), (i / 24) * section]);
}

/** The angle at the right-hand cut, once from the strip's length and once from square. */
function angles(length: number, section: number, angle: number): readonly Shape[] {
  const out = (points: readonly Point[]): readonly Point[] => points.map(([x, y]) => [x + length, y]);
  const reach = section / Math.sin(angle);
  const [near, far] = [0.72 * reach, 1.28 * reach];
  return [
    line("along", "thin", [length, 0], [length + 1.1 * near, 0]),
    line("square-line", "thin", [length, section], [length, far]),
    line("face-line", "thin", [length + reach * Math.cos(angle), section], [length + far * Math.cos(angle), far * Math.sin(angle)]),
    line("from-length", "thin", ...out(arc(near, 0, angle, 24))),
    line("from-square", "thin", ...out(arc(far, angle, Math.PI / 2, 24))),
  ];
}

function figures(length: number, section: number, angle: number): readonly Label[] {
  const reach = section / Math.sin(angle);
  const half = (angle + Math.PI / 2) / 2;
  const label = (id: string, at: Point, anchor: Label["anchor"], offset: Point, value: number): Label => ({
    id,
    lines: [{ text: { id: "drawing-angle", with: { angle: degrees(value) } }, ink: "worked" }],
    at,
    place: "here",
    anchor,
    offset,
  });
  return [
    label("from-length-figure", [length + 0.72 * reach, 0.72 * reach * Math.sin(angle / 2)], "start", [0.5, -0.15], angle),
    label(
      "from-square-figure",
      [length + 1.28 * reach * Math.cos(half), 1.28 * reach * Math.sin(half)],
      "start",
      [0.2, 1.25],
      Math.PI / 2 - angle,
    ),
  ];
}

function dimensions({ section, length, cutLength }: CutStrip, mean: number, over: number, height: number): readonly Dimension[] {
  const across: Dimension = {
    id: "section",
    side: "left",
    row: 0,
    from: [0, 0],
    to: [over, height],
    states: section,
    ink: "worked",
    called: { id: "drawing-section" },
  };
  const tips: Dimension = {
    id: "tip-to-tip",
    side: "below",
    row: 1,
    from: [0, 0],
    to: [mean + over, over > 0 ? height : 0],
    // The stated length may be rounded to what a rule can do; the line is as long as it says within that.
    states: over > 0 ? cutLength : length,
    ink: "worked",
    byRule: true,
    called: { id: over > 0 ? "drawing-tip-to-tip" : "drawing-cut-length" },
  };
  const onMean: Dimension = {
    id: "mean",
    side: "below",
    row: 0,
    from: [over / 2, height / 2],
    to: [mean + over / 2, height / 2],
    states: length,
    ink: "worked",
    byRule: true,
    called: { id: "drawing-mean-line" },
  };
  return over > 0 ? [across, onMean, tips] : [across, { ...tips, row: 0 }];
}

function notes({ angle, mandrel }: CutStrip, square: boolean, broken: boolean): readonly Note[] {
  const other = quantity("angle", 90, "deg") - angle;
  return [
    ...(square
      ? [{ id: "square", text: { id: "drawing-square-cut" }, ink: "worked" as const }]
      : [
          {
            id: "readings",
            text: {
              id: Math.abs(other - angle) < 1e-9 ? "drawing-angle-either" : "drawing-angle-readings",
              with: { angle: degrees(angle), other: degrees(other) },
            },
            ink: "worked" as const,
          },
        ]),
    ...(mandrel === undefined
      ? []
      : [{ id: "mandrel", text: { id: "drawing-mandrel", with: { mandrel: shownLength(mandrel, 1) } }, ink: "worked" as const }]),
    ...(broken ? [{ id: "left-out", text: { id: "drawing-strip-left-out" }, ink: "quiet" as const }] : []),
  ];
}
