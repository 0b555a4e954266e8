import { balloonStroke, colours, faces, strokeOf } from "../pens.ts";
import type { Point, Rectangle } from "../shapes.ts";
import type { PlacedCircle, PlacedPath, PlacedText } from "../sheet/placed.ts";

/** Paper seen from its top left corner, y down: the only place where y turns over. */
export interface Frame {
  readonly edges: Rectangle;
  readonly prefix: string;
  /** How much thicker than usual the pens are. */
  readonly pen: number;
}

export function escaped(text: string): string {
  // XML 1.0 has no way to write control characters or half a surrogate pair, not even escaped.
  const allowed = text.replace(/(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu, "");
  return allowed.replace(/&/gu, "&amp;").replace(/</gu, "&lt;").replace(/>/gu, "&gt;").replace(/"/gu, "&quot;");
}

/** A number with so many decimals and nothing that says nothing. */
export function short(value: number, decimals: number): string {
  const ten = 10 ** decimals;
  return String(Math.round(value * ten) / ten || 0);
}

function flipped({ edges }: Frame, [x, y]: Point): Point {
  return [x - edges[0], edges[3] - y];
}

const outlineDecimals = 4;
/** Hatching, weave and lines of dimensions go to the hundredth. */
const finest = 100;

function data(frame: Frame, { pieces, closed, role }: PlacedPath): string {
  let text = "";
  for (const piece of pieces) {
    if (piece.length < 2) continue;
    text += role === "shape" ? `M${absolute(frame, piece)}${closed ? "Z" : ""}` : relative(frame, piece, closed);
  }
  return text;
}

function absolute(frame: Frame, points: readonly Point[]): string {
  return points
    .map((point) => flipped(frame, point))
    .map(([x, y]) => `${short(x, outlineDecimals)} ${short(y, outlineDecimals)}`)
    .join("L");
}

/** Steps from point to point, each from where the last one ended after rounding, so that nothing drifts. */
function relative({ edges }: Frame, points: readonly Point[], closed: boolean): string {
  let text = "";
  let x = 0;
  let y = 0;
  for (let i = 0; i < points.length; i++) {
    const point = points[i] as Point;
    const dx = Math.round((point[0] - edges[0] - x) * finest) / finest || 0;
    const dy = Math.round((edges[3] - point[1] - y) * finest) / finest || 0;
    x += dx;
    y += dy;
    const gap = i === 1 || dx < 0 ? "" : " ";
    text += `${i === 0 ? "M" : i === 1 ? "l" : gap}${dx}${dy < 0 ? "" : " "}${dy}`;
  }
  return closed ? `${text}z` : text;
}

export function writePath(frame: Frame, path: PlacedPath): string {
  const d = data(frame, path);
  if (d === "") return "";
  const stroke = strokeOf(path);
  const id = path.id === undefined ? "" : ` id="${frame.prefix}-${path.id}"`;
  const paint = path.filled
    ? ` fill="${stroke.colour}" stroke="none"`
    : ` stroke="${stroke.colour}" stroke-width="${short(stroke.width * frame.pen, 4)}"`;
  const dash = stroke.dash && !path.filled ? ` stroke-dasharray="${stroke.dash}"${stroke.round ? ' stroke-linecap="round"' : ""}` : "";
  const kind = path.role === "shape" || path.role === "fill" ? path.layer : path.role;
  return `<path${id} class="${kind}"${paint}${dash} d="${d}"/>`;
}

export function writeCircle(frame: Frame, { id, centre, radius }: PlacedCircle): string {
  const [x, y] = flipped(frame, centre);
  return `<circle id="${frame.prefix}-${id}-circle" class="balloon" stroke="${balloonStroke.colour}" stroke-width="${short(balloonStroke.width * frame.pen, 4)}" cx="${short(x, 3)}" cy="${short(y, 3)}" r="${short(radius, 3)}"/>`;
}

export function writeText(frame: Frame, { id, runs, at, anchor, size, ink, turned }: PlacedText): string {
  const [x, y] = flipped(frame, at).map((value) => short(value, 3));
  const turn = turned ? ` transform="rotate(-90 ${x} ${y})"` : "";
  const anchored = anchor === "start" ? "" : ` text-anchor="${anchor}"`;
  const spans = runs.map(({ text, face, bold }) => {
    const weight = bold ? ' font-weight="700"' : "";
    if (face === "words" && !bold) return escaped(text);
    return `<tspan${face === "numbers" ? ` font-family="${faces.numbers}"` : ""}${weight}>${escaped(text)}</tspan>`;
  });
  return `<text id="${frame.prefix}-${id}" class="${ink}" x="${x}" y="${y}"${anchored} font-size="${short(size, 3)}" fill="${colours[ink]}"${turn} xml:space="preserve">${spans.join("")}</text>`;
}
