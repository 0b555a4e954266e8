import type { Ink, Layer, Point, Rectangle } from "../shapes.ts";
import { inkedWidth, type Run, runsWidth } from "../text/runs.ts";

/** Something with its place on paper: millimetres of paper, y up, the drawing's own origin. */
export interface PlacedText {
  readonly id: string;
  readonly part?: string;
  readonly runs: readonly Run[];
  /** Where the baseline starts, ends or has its middle. */
  readonly at: Point;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
  readonly ink: Ink;
  /** Reads upwards. */
  readonly turned: boolean;
  /** All that the text may cover. */
  readonly box: Rectangle;
}

export interface PlacedPath {
  readonly id?: string;
  readonly part?: string;
  readonly layer: Layer;
  readonly ink: Ink;
  readonly pieces: readonly (readonly Point[])[];
  readonly closed: boolean;
  readonly filled: boolean;
  /** What it is there for, so that a check can tell an extension line from an outline. */
  readonly role: "shape" | "fill" | "dimension" | "extension" | "arrow" | "leader" | "underline" | "flow";
}

export interface PlacedCircle {
  readonly id: string;
  readonly part: string;
  readonly centre: Point;
  readonly radius: number;
}

export interface Placed {
  readonly texts: readonly PlacedText[];
  readonly paths: readonly PlacedPath[];
  readonly circles: readonly PlacedCircle[];
}

export const nothing: Placed = { texts: [], paths: [], circles: [] };

export function together(...placed: readonly Placed[]): Placed {
  return {
    texts: placed.flatMap(({ texts }) => texts),
    paths: placed.flatMap(({ paths }) => paths),
    circles: placed.flatMap(({ circles }) => circles),
  };
}

/** Middle of the capitals above the baseline, and how far letters reach up and down, in font sizes. */
const capitals = 0.334;
const rises = 0.78;
const falls = 0.26;

export interface TextWish {
  readonly id: string;
  readonly part?: string;
  readonly runs: readonly Run[];
  /** The middle of the capitals, at the anchor. */
  readonly at: Point;
  readonly anchor: PlacedText["anchor"];
  readonly size: number;
  readonly ink: Ink;
  readonly turned?: boolean;
}

/** A text with its baseline and the room it takes; a measured one gets its dotted line. */
export function placeText({ turned = false, ...wish }: TextWish): Placed {
  const { at, anchor, size, runs } = wish;
  const width = runsWidth(runs, size);
  const start = anchor === "start" ? 0 : anchor === "end" ? -width : -width / 2;
  const [x, y] = at;
  // Along the text and across it, upwards from the baseline.
  const point = (along: number, up: number): Point =>
    turned ? [x + capitals * size - up, y + along] : [x + along, y - capitals * size + up];
  const [a, b] = [point(start, -falls * size), point(start + width, rises * size)];
  const box: Rectangle = [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[0], b[0]), Math.max(a[1], b[1])];
  const text: PlacedText = { ...wish, at: point(0, 0), turned, box };
  if (wish.ink !== "measured") return { ...nothing, texts: [text] };
  const inked = inkedWidth(runs, size);
  const from = anchor === "start" ? 0 : anchor === "end" ? -inked : -inked / 2;
  const under: PlacedPath = {
    layer: "thin",
    ink: "measured",
    pieces: [[point(from, -0.22 * size), point(from + inked, -0.22 * size)]],
    closed: false,
    filled: false,
    role: "underline",
    ...(wish.part === undefined ? {} : { part: wish.part }),
  };
  return { ...nothing, texts: [text], paths: [under] };
}

/** A line of one kind. */
export function placeLine(role: PlacedPath["role"], ink: Ink, pieces: PlacedPath["pieces"], layer: Layer = "thin"): PlacedPath {
  return { layer, ink, pieces, closed: false, filled: false, role };
}

/** A filled arrowhead with its tip at a point, three times as long as wide. */
export function arrowhead(tip: Point, towards: Point, length: number, ink: Ink): PlacedPath {
  const [ux, uy] = towards;
  const half = length / 6;
  const back: Point = [tip[0] - ux * length, tip[1] - uy * length];
  const pieces: readonly Point[] = [tip, [back[0] - uy * half, back[1] + ux * half], [back[0] + uy * half, back[1] - ux * half]];
  return { layer: "thin", ink, pieces: [pieces], closed: true, filled: true, role: "arrow" };
}

/** The rectangle round everything placed, or undefined when nothing is. */
export function extentOf({ texts, paths, circles }: Placed): Rectangle | undefined {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const take = (ax: number, ay: number, bx: number, by: number) => {
    if (ax < x0) x0 = ax;
    if (ay < y0) y0 = ay;
    if (bx > x1) x1 = bx;
    if (by > y1) y1 = by;
  };
  for (const { box } of texts) take(box[0], box[1], box[2], box[3]);
  for (const { pieces } of paths) for (const piece of pieces) for (const point of piece) take(point[0], point[1], point[0], point[1]);
  for (const { centre, radius } of circles) take(centre[0] - radius, centre[1] - radius, centre[0] + radius, centre[1] + radius);
  return x0 <= x1 ? [x0, y0, x1, y1] : undefined;
}
