import { colours } from "@ringwright/drawings";
import type { PdfCanvas } from "../pdf/canvas.ts";
import type { Setting } from "../setting.ts";
import type { Block } from "./block.ts";
import { sizes, text } from "./text.ts";

export interface Column {
  readonly title: string;
  readonly width: number;
  readonly anchor?: "start" | "end" | "middle";
}

export type Cell = { readonly text: string; readonly bold?: boolean; readonly ink?: "measured" | "worked" | "quiet" } | string | undefined;

const inset = 1;

/** The head of a ruled table. */
export function gridHead(setting: Setting, columns: readonly Column[]): Block {
  const cells = columns.map(({ title, width }) => text(setting, title, { width: width - 2 * inset, size: sizes.small, bold: true }));
  const height = Math.max(...cells.map((cell) => cell.height)) + 1.4;
  return {
    height,
    tag: "P",
    paint(canvas, left, top) {
      let x = left;
      for (const [i, cell] of cells.entries()) {
        cell.paint(canvas, x + inset, top + 0.5);
        x += columns[i]?.width ?? 0;
      }
      canvas.rule([left, top + height], [x, top + height], 0.2, colours.worked);
      uprights(canvas, columns, left, top, height);
    },
  };
}

/** One row of a ruled table; a cell that is left out is empty, to be written in. */
export function gridRow(setting: Setting, columns: readonly Column[], cells: readonly Cell[], least = 5): Block {
  const size = sizes.body;
  const written = columns.map(({ width }, i) => {
    const cell = cells[i];
    if (cell === undefined) return undefined;
    const { text: words, ...style } = typeof cell === "string" ? { text: cell } : cell;
    return { style, block: text(setting, words, { width: width - 2 * inset, size, ...style }), words };
  });
  const height = Math.max(least, ...written.map((one) => (one?.block.height ?? 0) + 0.5));
  return {
    height,
    tag: "P",
    paint(canvas, left, top) {
      let x = left;
      for (const [i, one] of written.entries()) {
        const { width = 0, anchor = "start" } = columns[i] ?? {};
        if (one) {
          const slack = width - 2 * inset - setting.type.width(one.words, size, one.style.bold);
          const shift = anchor === "start" ? 0 : Math.max(0, anchor === "end" ? slack : slack / 2);
          one.block.paint(canvas, x + inset + shift, top + (height - one.block.height) / 2);
        }
        x += width;
      }
      canvas.rule([left, top + height], [x, top + height], 0.12);
      uprights(canvas, columns, left, top, height);
    },
  };
}

function uprights(canvas: PdfCanvas, columns: readonly Column[], left: number, top: number, height: number): void {
  let x = left;
  for (const { width } of columns.slice(0, -1)) {
    x += width;
    canvas.rule([x, top], [x, top + height], 0.08);
  }
}
