import type { Fill, Point, Rectangle } from "../shapes.ts";
import { type Blanks, insideConvex, outside, type Segment } from "../sheet/clip.ts";
import { around } from "../sheet/hatch.ts";
import { plain, weaves } from "./families.ts";
import type { Pattern } from "./lattice.ts";

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
  const clear = wellInside(outline);
  const lines: (readonly Point[])[] = [];
  for (const line of strands(pattern, along, across)) {
    const points = line.map(place);
    // Most strands lie clear of edges and blanks, and so do most pieces of the others: they need no cutting.
    if (clear(points, blanks)) {
      lines.push(points);
      continue;
    }
    const kept: Segment[] = [];
    for (let i = 1; i < points.length; i++) {
      const piece: Segment = [points[i - 1] as Point, points[i] as Point];
      if (clear(piece, blanks)) {
        kept.push(piece);
        continue;
      }
      const segment = insideConvex(piece, outline);
      if (segment) kept.push(...outside(segment, blanks));
    }
    lines.push(...joined(kept));
  }
  return lines;
}

const drawn = new Map<Pattern, Map<string, ReturnType<Pattern>>>();

/** The lines of a pattern; rings of one set have the same, and so has the next drawing of the box. */
function strands(pattern: Pattern, along: number, across: number): ReturnType<Pattern> {
  const sizes = drawn.get(pattern) ?? new Map<string, ReturnType<Pattern>>();
  drawn.set(pattern, sizes);
  const size = `${along} ${across}`;
  const known = sizes.get(size) ?? pattern(along, across);
  // A few sizes are in use at a time.
  if (!sizes.has(size) && sizes.size >= 32) sizes.clear();
  sizes.set(size, known);
  return known;
}

/** Tells lines that are certain to lie inside a rounded outline and clear of what is kept blank. */
function wellInside(outline: readonly Point[]): (line: readonly Point[], blanks: Blanks) => boolean {
  const [x0, y0, x1, y1] = around(outline);
  const corner = cornerOf(outline, [x0, y0, x1, y1]);
  return (line, { boxes, circles }) => {
    let [ax, ay, bx, by] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const [x, y] of line) {
      if (x < ax) ax = x;
      if (x > bx) bx = x;
      if (y < ay) ay = y;
      if (y > by) by = y;
    }
    if (ax < x0 + corner || bx > x1 - corner || ay < y0 + corner || by > y1 - corner) return false;
    if (boxes.some((box) => box[0] < bx && ax < box[2] && box[1] < by && ay < box[3])) return false;
    return !circles.some(
      ({ centre, radius }) => centre[0] - radius < bx && ax < centre[0] + radius && centre[1] - radius < by && ay < centre[1] + radius,
    );
  };
}

/** How far from its corners the edges of a rounded rectangle begin to be straight. */
function cornerOf(outline: readonly Point[], [x0, y0, x1, y1]: Rectangle): number {
  let most = 0;
  for (const [x, y] of outline) {
    const onSide = x - x0 < 1e-9 || x1 - x < 1e-9;
    const onEnd = y - y0 < 1e-9 || y1 - y < 1e-9;
    if (onSide) most = Math.max(most, Math.min(y - y0, y1 - y));
    if (onEnd) most = Math.max(most, Math.min(x - x0, x1 - x));
  }
  return most;
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
