import type { Fill, Point, Rectangle } from "../shapes.ts";
import { type Blanks, insideConvex, outside, type Segment } from "../sheet/clip.ts";
import { plain, weaves } from "./families.ts";

/** Strand widths on paper that can still be told apart, and how many a section shows at most. */
const strand = 1.35;
const fewest = 3;
const most = 7;

/**
 * The weave of one ring on paper. `outline` is the ring's convex section,
 * anticlockwise. A squeezed ring keeps its strands, so they draw closer.
 */
export function braid(
  { family, relaxed }: Extract<Fill, { kind: "weave" }>,
  box: Rectangle,
  outline: readonly Point[],
  blanks: Blanks,
): readonly (readonly Point[])[] {
  const [x0, y0, x1, y1] = box;
  const across = Math.max(fewest, Math.min(most, Math.round((y1 - y0) / strand)));
  const along = Math.max(1, Math.round(across * relaxed));
  const place = ([x, y]: Point): Point => [x0 + (x / along) * (x1 - x0), y0 + (y / across) * (y1 - y0)];
  const pattern = family === undefined ? plain : weaves[family];
  return pattern(along, across).flatMap((line) => {
    const points = line.map(place);
    const kept = points
      .slice(1)
      .map((point, i): Segment => [points[i] as Point, point])
      .map((segment) => insideConvex(segment, outline))
      .filter((segment) => segment !== undefined)
      .flatMap((segment) => outside(segment, blanks));
    return joined(kept);
  });
}

/** Segments that follow each other, as one line. */
function joined(segments: readonly Segment[]): readonly (readonly Point[])[] {
  const lines: Point[][] = [];
  for (const [from, to] of segments) {
    const end = lines.at(-1)?.at(-1);
    if (end && Math.hypot(end[0] - from[0], end[1] - from[1]) < 1e-9) lines.at(-1)?.push(to);
    else lines.push([from, to]);
  }
  return lines;
}
