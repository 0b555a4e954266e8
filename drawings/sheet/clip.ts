import type { Point, Rectangle } from "../shapes.ts";

export type Segment = readonly [from: Point, to: Point];

const along = ([[ax, ay], [bx, by]]: Segment, t: number): Point => [ax + (bx - ax) * t, ay + (by - ay) * t];

/** The part of a segment inside a convex polygon given anticlockwise (Cyrus and Beck), if any. */
export function insideConvex(segment: Segment, polygon: readonly Point[]): Segment | undefined {
  const [[ax, ay], [bx, by]] = segment;
  let [enter, leave] = [0, 1];
  for (let i = 0; i < polygon.length; i++) {
    const [px, py] = polygon[i] as Point;
    const [qx, qy] = polygon[(i + 1) % polygon.length] as Point;
    // Distance to the left of the edge, where the inside is.
    const atStart = (qx - px) * (ay - py) - (qy - py) * (ax - px);
    const atEnd = (qx - px) * (by - py) - (qy - py) * (bx - px);
    if (atStart < 0 && atEnd < 0) return undefined;
    if (atStart < 0) enter = Math.max(enter, atStart / (atStart - atEnd));
    else if (atEnd < 0) leave = Math.min(leave, atStart / (atStart - atEnd));
  }
  return enter < leave ? [along(segment, enter), along(segment, leave)] : undefined;
}

/** Where a segment is inside a rectangle, as shares of its length. */
function stretchInside([[ax, ay], [bx, by]]: Segment, [x0, y0, x1, y1]: Rectangle): readonly [number, number] | undefined {
  let [enter, leave] = [0, 1];
  for (const [start, step, low, high] of [
    [ax, bx - ax, x0, x1],
    [ay, by - ay, y0, y1],
  ] as const) {
    if (step === 0) {
      if (start <= low || start >= high) return undefined;
      continue;
    }
    const [one, other] = [(low - start) / step, (high - start) / step];
    enter = Math.max(enter, Math.min(one, other));
    leave = Math.min(leave, Math.max(one, other));
  }
  return enter < leave ? [enter, leave] : undefined;
}

function stretchInCircle([[ax, ay], [bx, by]]: Segment, [cx, cy]: Point, radius: number): readonly [number, number] | undefined {
  const [dx, dy, fx, fy] = [bx - ax, by - ay, ax - cx, ay - cy];
  const a = dx * dx + dy * dy;
  // Shorter than a millionth of a millimetre is a point.
  if (a < 1e-12) return Math.hypot(fx, fy) < radius ? [0, 1] : undefined;
  const b = fx * dx + fy * dy;
  const root = b * b - a * (fx * fx + fy * fy - radius * radius);
  if (root <= 0) return undefined;
  const enter = Math.max(0, (-b - Math.sqrt(root)) / a);
  const leave = Math.min(1, (-b + Math.sqrt(root)) / a);
  return enter < leave ? [enter, leave] : undefined;
}

export interface Blanks {
  readonly boxes: readonly Rectangle[];
  readonly circles: readonly { readonly centre: Point; readonly radius: number }[];
}

/** Those that reach into a rectangle. */
export function within([x0, y0, x1, y1]: Rectangle, { boxes, circles }: Blanks): Blanks {
  return {
    boxes: boxes.filter((box) => box[0] < x1 && x0 < box[2] && box[1] < y1 && y0 < box[3]),
    circles: circles.filter(
      ({ centre, radius }) => centre[0] - radius < x1 && x0 < centre[0] + radius && centre[1] - radius < y1 && y0 < centre[1] + radius,
    ),
  };
}

/** What is left of a segment when texts and numbers are kept clear. */
export function outside(segment: Segment, { boxes, circles }: Blanks): readonly Segment[] {
  const [[ax, ay], [bx, by]] = segment;
  const [x0, x1, y0, y1] = [Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by)];
  const hidden: (readonly [number, number])[] = [];
  const hide = (stretch: readonly [number, number] | undefined) => stretch && hidden.push(stretch);
  // Few are near: what is not is told by its edges.
  for (const box of boxes) if (box[0] < x1 && x0 < box[2] && box[1] < y1 && y0 < box[3]) hide(stretchInside(segment, box));
  for (const { centre, radius } of circles)
    if (centre[0] - radius < x1 && x0 < centre[0] + radius && centre[1] - radius < y1 && y0 < centre[1] + radius)
      hide(stretchInCircle(segment, centre, radius));
  if (hidden.length === 0) return [segment];
  hidden.sort((a, b) => a[0] - b[0]);
  const left: Segment[] = [];
  let from = 0;
  for (const [enter, leave] of hidden) {
    if (enter > from) left.push([along(segment, from), along(segment, enter)]);
    from = Math.max(from, leave);
  }
  if (from < 1) left.push([along(segment, from), along(segment, 1)]);
  return left;
}

/** A rectangle grown by a margin on every side. */
export function grown([x0, y0, x1, y1]: Rectangle, by: number): Rectangle {
  return [x0 - by, y0 - by, x1 + by, y1 + by];
}
