import type { UnitSystem } from "@ringwright/core/units";
import { english, type Show } from "@ringwright/words";
import type { Drawing } from "../shapes.ts";
import { layOut, type Sheet } from "../sheet/lay-out.ts";
import { words } from "../sheet/style.ts";
import { faces, paperColour } from "./pens.ts";
import { escaped, type Frame, short, writeCircle, writePath, writeText } from "./write.ts";

export interface SvgOptions {
  /** Millimetres of paper, or of screen where a CSS pixel is 1/96 in; the drawing is made as large as fits. 180 when neither this nor a scale is given. */
  readonly width?: number;
  /** Millimetres of paper for one of the real thing: 0.5 is 1:2. Used instead of a width. */
  readonly scale?: number;
  /** Font size of ordinary text, mm; when not given 3.4 on a phone's width, up to 4.4 on a desktop's. */
  readonly textSize?: number;
  readonly system?: UnitSystem;
  readonly catalogue?: Show["catalogue"];
  /** Paper behind the drawing, or whatever it stands on. */
  readonly background?: "paper" | "none";
  /** Title and subtitle above the drawing; off where the page says them already. */
  readonly heading?: boolean;
  /** Begins every id, where one page holds the same drawing twice. */
  readonly idPrefix?: string;
}

/**
 * A drawing as one SVG document: outlines twice as wide as thin lines, texts
 * as text, every part a group with its id and its name, a title and a
 * description for those who cannot see it. The same drawing and options give
 * the same bytes.
 * @example toSvg(drawBoxSection(box), { width: 180, system: "metric" })
 */
export function toSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const show: Show = { catalogue: options.catalogue ?? english, system: options.system ?? "metric" };
  const scale = options.scale === undefined ? undefined : bounded(options.scale, 1, 0.005, 100);
  const width = bounded(options.width, 180, 10, 5000);
  const size = bounded(options.textSize, scale === undefined ? Math.min(4.4, Math.max(3.4, 2.9 + width / 200)) : 3.5, 1, 20);
  const sheet = layOut(drawing, {
    ...(scale === undefined ? { width } : { scale, stated: scaleText(scale) }),
    size,
    show,
    heading: options.heading ?? true,
  });
  return document(drawing, sheet, { ...options, idPrefix: (options.idPrefix ?? drawing.name).replace(/[^\w-]+/gu, "-") }, show, size);
}

function bounded(value: number | undefined, usual: number, low: number, high: number): number {
  return value === undefined || !Number.isFinite(value) ? usual : Math.min(high, Math.max(low, value));
}

/** `1:2`, `2:1`: as scales are written on a drawing (ISO 5455). */
function scaleText(scale: number): string {
  return scale >= 1 ? `${short(scale, 2)}:1` : `1:${short(1 / scale, 2)}`;
}

function document(drawing: Drawing, sheet: Sheet, options: SvgOptions & { readonly idPrefix: string }, show: Show, size: number): string {
  const { placed, frame: edges, shrunk } = sheet;
  const frame: Frame = { edges, prefix: options.idPrefix, pen: Math.max(1, Math.round((100 * size) / 3.5) / 100) };
  const style = { size, show, compact: false };
  const [width, height] = [edges[2] - edges[0], edges[3] - edges[1]];
  const id = options.idPrefix;
  const named = (part: string | undefined) => [
    ...placed.paths.filter((path) => path.part === part).map((path) => writePath(frame, path)),
    ...placed.circles.filter((circle) => circle.part === part).map((circle) => writeCircle(frame, circle)),
    ...placed.texts.filter((text) => text.part === part).map((text) => writeText(frame, text)),
  ];
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(width * shrunk, 3)}mm" height="${short(height * shrunk, 3)}mm" viewBox="0 0 ${short(width, 3)} ${short(height, 3)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="${faces.words}" fill="none" stroke-linejoin="round">`,
    `<title id="${id}-title">${escaped([drawing.title, ...(drawing.subtitle === undefined ? [] : [drawing.subtitle])].map((text) => words(style, text)).join(", "))}</title>`,
    `<desc id="${id}-desc">${escaped(drawing.description.map((says) => words(style, says)).join(" "))}</desc>`,
    ...(options.background === "none" ? [] : [`<rect width="${short(width, 3)}" height="${short(height, 3)}" fill="${paperColour}"/>`]),
    ...drawing.parts.flatMap((part) => [
      `<g id="${id}-${part.id}" class="part"><title>${escaped(words(style, part.called))}</title>`,
      ...named(part.id),
      "</g>",
    ]),
    `<g id="${id}-written" class="written">`,
    ...named(undefined),
    "</g>",
    "</svg>",
  ];
  return `${lines.filter((line) => line !== "").join("\n")}\n`;
}
