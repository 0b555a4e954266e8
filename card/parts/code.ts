import { colours, type Point } from "@ringwright/drawings";
import qrcode from "qrcode-generator";
import type { PdfCanvas } from "../pdf/canvas.ts";

/** Least side of one module, and the quiet zone in modules (ISO/IEC 18004; label practice). */
const leastModule = 0.35;
const usualModule = 0.6;
const quiet = 4;
const longest = 255;

/** A square code that leads to the box, level Q: a quarter of it may be dirty. */
export interface Code {
  readonly modules: number;
  /** Draws it with its quiet zone in a square of this side. */
  paint(canvas: PdfCanvas, left: number, top: number, side: number): void;
}

/** Least side of a code with its quiet zone, mm. */
export function codeSize({ modules }: Code): number {
  return (modules + 2 * quiet) * leastModule;
}

/**
 * The code of a link.
 * @throws RangeError for a link of more than 255 characters: a tag that can be scanned has a short one.
 */
export function codeOf(link: string): Code {
  if (link.length > longest) throw new RangeError(`A link to a box has at most ${longest} characters, not ${link.length}.`);
  const code = qrcode(0, "Q");
  code.addData(link, "Byte");
  code.make();
  const modules = code.getModuleCount();
  return {
    modules,
    paint(canvas, left, top, side) {
      const module = Math.min(usualModule, side / (modules + 2 * quiet));
      const inset = (side - module * modules) / 2;
      canvas.area(dark(code, modules, module, [left + inset, top + inset]), colours.worked);
    },
  };
}

/** The dark modules as rectangles, neighbours in a row as one. */
function dark(code: ReturnType<typeof qrcode>, modules: number, side: number, [left, top]: Point): readonly (readonly Point[])[] {
  const bars: (readonly Point[])[] = [];
  for (let row = 0; row < modules; row++) {
    for (let from = 0; from < modules; from++) {
      if (!code.isDark(row, from)) continue;
      let to = from;
      while (to < modules && code.isDark(row, to)) to++;
      const [x0, x1, y0, y1] = [left + from * side, left + to * side, top + row * side, top + (row + 1) * side];
      bars.push([
        [x0, y0],
        [x1, y0],
        [x1, y1],
        [x0, y1],
      ]);
      from = to;
    }
  }
  return bars;
}
