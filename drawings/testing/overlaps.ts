import type { Point, Rectangle } from "../shapes.ts";
import type { Sheet } from "../sheet/lay-out.ts";

const touch = ([ax0, ay0, ax1, ay1]: Rectangle, [bx0, by0, bx1, by1]: Rectangle): boolean =>
  ax0 < bx1 && bx0 < ax1 && ay0 < by1 && by0 < ay1;

/** Everything on a sheet that lies over a text, or over the page's edge, said so that the culprit can be found. */
export function overlapsOf({ placed, frame }: Sheet): readonly string[] {
  const { texts, paths, circles } = placed;
  const found: string[] = [];
  for (const [i, { id, box }] of texts.entries()) {
    const [x0, y0, x1, y1] = box;
    if (x0 < frame[0] || y0 < frame[1] || x1 > frame[2] || y1 > frame[3]) found.push(`text ${id} leaves the page`);
    for (const other of texts.slice(i + 1)) if (touch(box, other.box)) found.push(`text ${id} and text ${other.id}`);
    for (const { id: circle, centre, radius } of circles) {
      const round: Rectangle = [centre[0] - radius, centre[1] - radius, centre[0] + radius, centre[1] + radius];
      if (circle !== id && touch(box, round)) found.push(`text ${id} and circle ${circle}`);
    }
  }
  for (const [i, a] of circles.entries()) {
    for (const b of circles.slice(i + 1)) {
      if (Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]) < a.radius + b.radius)
        found.push(`circle ${a.id} and circle ${b.id}`);
    }
  }
  for (const { role, layer, part, id, pieces, closed } of paths) {
    if (role === "underline") continue;
    for (const piece of pieces) {
      const near = texts.filter(({ box }) => touch(box, grown(piece)));
      if (near.length === 0) continue;
      const points = closed ? [...piece, piece[0] as Point] : piece;
      for (let k = 0; k + 1 < points.length; k++) {
        const [a, b] = [points[k] as Point, points[k + 1] as Point];
        for (const text of near) if (crosses(a, b, text.box)) found.push(`${role} ${layer} ${id ?? part ?? ""} over text ${text.id}`);
      }
    }
  }
  return [...new Set(found)];
}

/** The rectangle round a line, never quite flat. */
function grown(piece: readonly Point[]): Rectangle {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [x, y] of piece) {
    x0 = Math.min(x0, x - 1e-9);
    y0 = Math.min(y0, y - 1e-9);
    x1 = Math.max(x1, x + 1e-9);
    y1 = Math.max(y1, y + 1e-9);
  }
  return [x0, y0, x1, y1];
}

/** Whether a line from a to b comes inside a rectangle: both ends out on one side never does, else the corners must lie on both sides of the line. */
function crosses([ax, ay]: Point, [bx, by]: Point, [x0, y0, x1, y1]: Rectangle): boolean {
  if (Math.max(ax, bx) <= x0 || Math.min(ax, bx) >= x1 || Math.max(ay, by) <= y0 || Math.min(ay, by) >= y1) return false;
  const side = (x: number, y: number) => Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
  const corners = new Set([side(x0, y0), side(x1, y0), side(x1, y1), side(x0, y1)]);
  return corners.size > 1 || corners.has(0);
}
