import { faces, paperColour, penScale } from "../pens.ts";
import type { Drawing } from "../shapes.ts";
import { type LaidOut, type SheetOptions, sheetOf } from "../sheet/sheet-of.ts";
import { words } from "../sheet/style.ts";
import { escaped, type Frame, short, writeCircle, writePath, writeText } from "./write.ts";

export interface SvgOptions extends SheetOptions {
  /** Paper behind the drawing, or whatever it stands on. */
  readonly background?: "paper" | "none";
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
  const laid = sheetOf(drawing, options);
  return document(laid, (options.idPrefix ?? drawing.name).replace(/[^\w-]+/gu, "-"), options.background ?? "paper");
}

function document({ drawing, placed, frame: edges, shrunk, size, show }: LaidOut, id: string, background: "paper" | "none"): string {
  const frame: Frame = { edges, prefix: id, pen: penScale(size) };
  const style = { size, show, compact: false };
  const [width, height] = [edges[2] - edges[0], edges[3] - edges[1]];
  const named = (part: string | undefined) => [
    ...placed.paths.filter((path) => path.part === part).map((path) => writePath(frame, path)),
    ...placed.circles.filter((circle) => circle.part === part).map((circle) => writeCircle(frame, circle)),
    ...placed.texts.filter((text) => text.part === part).map((text) => writeText(frame, text)),
  ];
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(width * shrunk, 3)}mm" height="${short(height * shrunk, 3)}mm" viewBox="0 0 ${short(width, 3)} ${short(height, 3)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="${faces.words}" fill="none" stroke-linejoin="round">`,
    `<title id="${id}-title">${escaped([drawing.title, ...(drawing.subtitle === undefined ? [] : [drawing.subtitle])].map((text) => words(style, text)).join(", "))}</title>`,
    `<desc id="${id}-desc">${escaped(drawing.description.map((says) => words(style, says)).join(" "))}</desc>`,
    ...(background === "none" ? [] : [`<rect width="${short(width, 3)}" height="${short(height, 3)}" fill="${paperColour}"/>`]),
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
