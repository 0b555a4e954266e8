import type { UnitSystem } from "@ringwright/core/units";
import { english, type Show } from "@ringwright/words";
import type { Drawing, Point } from "../shapes.ts";
import { layOut, type Sheet } from "./lay-out.ts";
import { bodyOf, paper } from "./paper.ts";

/** How a drawing is put on a page, whatever writes it down. */
export interface SheetOptions {
  /** Millimetres of paper, or of screen where a CSS pixel is 1/96 in; the drawing is made as large as fits. 180 when neither this nor a scale is given. */
  readonly width?: number;
  /** Millimetres of paper for one of the real thing: 0.5 is 1:2. A width beside it is then the least the page has, for what stands under the drawing. */
  readonly scale?: number;
  /** Font size of ordinary text, mm; when not given 3.4 on a phone's width, up to 4.4 on a desktop's. */
  readonly textSize?: number;
  readonly system?: UnitSystem;
  readonly catalogue?: Show["catalogue"];
  /** Title and subtitle above the drawing; off where the page says them already. */
  readonly heading?: boolean;
}

/** A drawing on its page, with the text size and the words that it was laid out for. */
export interface LaidOut extends Sheet {
  readonly drawing: Drawing;
  readonly size: number;
  readonly show: Show;
}

/**
 * Lays a drawing out for whatever writes it down: SVG or a printed page.
 * @example sheetOf(drawBoxSection(box), { scale: 0.5, textSize: 2.6, heading: false })
 */
export function sheetOf(drawing: Drawing, options: SheetOptions = {}): LaidOut {
  const show: Show = { catalogue: options.catalogue ?? english, system: options.system ?? "metric" };
  const scale = options.scale === undefined ? undefined : bounded(options.scale, 1, 0.005, 100);
  const width = bounded(options.width, 180, 10, 5000);
  const size = bounded(options.textSize, scale === undefined ? Math.min(4.4, Math.max(3.4, 2.9 + width / 200)) : 3.5, 1, 20);
  const sheet = layOut(drawing, {
    ...(scale === undefined ? { width } : { scale, stated: scaleText(scale), ...(options.width === undefined ? {} : { width }) }),
    size,
    show,
    heading: options.heading ?? true,
  });
  return { ...sheet, drawing, size, show };
}

/** Width and height on paper of a drawing's shapes alone: its sheet is never smaller. */
export function leastSize(drawing: Drawing, scale: number): Point {
  const [x0, y0, x1, y1] = bodyOf(drawing);
  const toPaper = paper(drawing, scale, 0);
  const [low, high] = [toPaper([x0, y0]), toPaper([x1, y1])];
  return [high[0] - low[0], high[1] - low[1]];
}

function bounded(value: number | undefined, usual: number, low: number, high: number): number {
  return value === undefined || !Number.isFinite(value) ? usual : Math.min(high, Math.max(low, value));
}

/** `1:2`, `2:1`: as scales are written on a drawing (ISO 5455). */
export function scaleText(scale: number): string {
  const short = (value: number) => String(Math.round(value * 100) / 100);
  return scale >= 1 ? `${short(scale)}:1` : `1:${short(1 / scale)}`;
}
