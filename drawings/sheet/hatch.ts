import type { Point, Rectangle } from "../shapes.ts";
import type { Segment } from "./clip.ts";

/**
 * Hatching of any simple polygon on paper: lines at 45 degrees, `spacing`
 * apart, from one origin for the whole sheet, so that the same part has the
 * same lines on both sides of a hole.
 */
export function hatch(polygon: readonly Point[], lean: 45 | -45, spacing: number): readonly Segment[] {
  const turn = lean === 45 ? 1 : -1;
  // Across the lines, and along them.
  const across = ([x, y]: Point) => (y - turn * x) / Math.SQRT2;
  const along = ([x, y]: Point) => (x + turn * y) / Math.SQRT2;
  const back = (a: number, l: number): Point => [(l - turn * a) / Math.SQRT2, (a + turn * l) / Math.SQRT2];
  const heights = polygon.map(across);
  const lengths = polygon.map(along);
  const segments: Segment[] = [];
  const [lowest, highest] = [Math.min(...heights), Math.max(...heights)];
  for (let k = Math.ceil(lowest / spacing); k * spacing < highest; k++) {
    const level = k * spacing;
    const crossings: number[] = [];
    for (let i = 0; i < polygon.length; i++) {
      const j = i + 1 === polygon.length ? 0 : i + 1;
      const a = heights[i] as number;
      const b = heights[j] as number;
      if (a <= level === b <= level) continue;
      const start = lengths[i] as number;
      crossings.push(start + (((lengths[j] as number) - start) * (level - a)) / (b - a));
    }
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = [crossings[i] as number, crossings[i + 1] as number];
      if (to - from > 1e-6) segments.push([back(level, from), back(level, to)]);
    }
  }
  return segments;
}

/** The rectangle round some points. */
export function around(points: readonly Point[]): Rectangle {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
