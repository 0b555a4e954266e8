import type { Point } from "../shapes.ts";

/** A closed polygon with its corners rounded to a radius, each corner by five points. */
export function rounded(points: readonly Point[], radius: number): readonly Point[] {
  if (!(radius > 0)) return points;
  return points.flatMap((corner, i) => {
    const before = points[(i + points.length - 1) % points.length] as Point;
    const after = points[(i + 1) % points.length] as Point;
    const start = towards(corner, before, radius);
    const end = towards(corner, after, radius);
    return [0, 0.25, 0.5, 0.75, 1].map((t): Point => {
      // A quadratic curve with the corner as its handle; close enough to an arc for packing.
      const [a, b, c] = [(1 - t) ** 2, 2 * t * (1 - t), t ** 2];
      return [a * start[0] + b * corner[0] + c * end[0], a * start[1] + b * corner[1] + c * end[1]];
    });
  });
}

function towards(from: Point, to: Point, distance: number): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = length > 0 ? Math.min(0.5, distance / length) : 0;
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
