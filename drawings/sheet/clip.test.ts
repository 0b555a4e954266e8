import fc from "fast-check";
import { expect } from "vitest";
import { property } from "../../testing/property.ts";
import type { Point, Rectangle } from "../shapes.ts";
import { insideConvex, outside, type Segment } from "./clip.ts";

// Thousandths of a millimetre: what a drawing can have. A line nearer to an edge than that, but not on it, is on neither side in double precision.
const coordinate = fc.integer({ min: -10_000, max: 10_000 }).map((thousandths) => thousandths / 1000);
const size = fc.integer({ min: 100, max: 5000 }).map((thousandths) => thousandths / 1000);
const point: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate);
const segment: fc.Arbitrary<Segment> = fc.tuple(point, point);
const rectangle: fc.Arbitrary<Rectangle> = fc.tuple(coordinate, coordinate, size, size).map(([x, y, w, h]) => [x, y, x + w, y + h]);
const lengthOf = ([[ax, ay], [bx, by]]: Segment): number => Math.hypot(bx - ax, by - ay);
const at = ([[ax, ay], [bx, by]]: Segment, t: number): Point => [ax + (bx - ax) * t, ay + (by - ay) * t];

property(
  "of a line, what is inside a rectangle and what is outside make the whole line",
  [segment, rectangle],
  (line, [x0, y0, x1, y1]) => {
    const corners: readonly Point[] = [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ];
    const kept = insideConvex(line, corners);
    const rest = outside(line, { boxes: [[x0, y0, x1, y1]], circles: [] });
    const total = (kept ? lengthOf(kept) : 0) + rest.reduce((sum, one) => sum + lengthOf(one), 0);
    // A line along an edge is kept by both: hatching reaches its edge, and what is beside a text does not touch it.
    const [[ax, ay], [bx, by]] = line;
    const alongEdge = (ax === bx && (ax === x0 || ax === x1)) || (ay === by && (ay === y0 || ay === y1));
    expect(total).toBeGreaterThan(lengthOf(line) - 1e-9);
    expect(total).toBeLessThan((alongEdge ? 2 : 1) * lengthOf(line) + 1e-9);
  },
);

property("no point of a line that is kept clear of a circle lies in the circle", [segment, point, size], (line, centre, radius) => {
  const rest = outside(line, { boxes: [], circles: [{ centre, radius }] });
  for (const one of rest) {
    for (const t of [0.01, 0.25, 0.5, 0.75, 0.99]) {
      const [x, y] = at(one, t);
      expect(Math.hypot(x - centre[0], y - centre[1])).toBeGreaterThan(radius - 1e-6);
    }
  }
});
