import { balloonStroke, colours, penScale, type Stroke, strokeOf } from "../pens.ts";
import type { Point } from "../shapes.ts";
import type { LaidOut } from "../sheet/sheet-of.ts";
import type { Canvas } from "./canvas.ts";

/** Width and height of a laid-out drawing on paper, mm. */
export function sizeOf({ frame, shrunk }: LaidOut): Point {
  return [(frame[2] - frame[0]) * shrunk, (frame[3] - frame[1]) * shrunk];
}

/**
 * Draws a laid-out drawing on a canvas, its top left corner at a point: the
 * same lines and texts, from the same layout, as in its SVG.
 * @example paint(sheetOf(drawing, { scale: 0.5 }), canvas, [12, 60])
 */
export function paint({ placed, frame, shrunk, size }: LaidOut, canvas: Canvas, [left, top]: Point): void {
  const to = ([x, y]: Point): Point => [left + (x - frame[0]) * shrunk, top + (frame[3] - y) * shrunk];
  const pen = penScale(size) * shrunk;
  const inked = (stroke: Stroke): Stroke => ({ ...stroke, width: stroke.width * pen });
  for (const path of placed.paths) {
    const pieces = path.pieces.filter((piece) => piece.length > 1).map((piece) => piece.map(to));
    if (pieces.length === 0) continue;
    const stroke = strokeOf(path);
    if (path.filled) canvas.area(pieces, stroke.colour);
    else canvas.lines(pieces, inked(stroke), path.closed);
  }
  for (const { centre, radius } of placed.circles) canvas.circle(to(centre), radius * shrunk, inked(balloonStroke));
  for (const { runs, at, anchor, size: font, ink, turned } of placed.texts)
    canvas.text(runs, to(at), { size: font * shrunk, colour: colours[ink], anchor, turned });
}
