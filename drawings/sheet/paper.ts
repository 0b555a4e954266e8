import type { Drawing, Point, Rectangle } from "../shapes.ts";

/** From millimetres of the real thing to millimetres of paper, y still up. */
export type ToPaper = (point: Point) => Point;

/**
 * The scale, with what is left out taken out: beyond the left-out band every
 * coordinate keeps its scale, and the band itself becomes a gap of `gap` on
 * each side of its middle.
 */
export function paper(drawing: Drawing, scale: number, gap: number): ToPaper {
  const band = drawing.leftOut;
  if (!band) return ([x, y]) => [x * scale, y * scale];
  const half = (band.to - band.from) / 2;
  const map = (value: number) =>
    value <= band.from
      ? (value - band.from) * scale - gap
      : value >= band.to
        ? (value - band.to) * scale + gap
        : ((value - band.from - half) / half) * gap;
  return band.axis === "x" ? ([x, y]) => [map(x), y * scale] : ([x, y]) => [x * scale, map(y)];
}

/** The rectangle round all shapes of a drawing, in millimetres of the real thing. */
export function bodyOf({ shapes }: Drawing): Rectangle {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { points } of shapes) {
    for (const [x, y] of points) {
      x0 = Math.min(x0, x);
      y0 = Math.min(y0, y);
      x1 = Math.max(x1, x);
      y1 = Math.max(y1, y);
    }
  }
  return x0 <= x1 ? [x0, y0, x1, y1] : [0, 0, 0, 0];
}
