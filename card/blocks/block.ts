import type { PdfCanvas } from "../pdf/canvas.ts";

/** Something with a height of its own that is drawn where it is put. Millimetres. */
export interface Block {
  readonly height: number;
  /** What it is to a screen reader. */
  readonly tag: "P" | "H1" | "H2" | "Figure";
  /** Said in place of a figure. */
  readonly alt?: string;
  paint(canvas: PdfCanvas, left: number, top: number): void;
}

/** Empty paper. */
export function space(height: number): Block {
  return { height, tag: "P", paint: () => undefined };
}

/** Blocks under one another, as one that is not taken apart. */
export function stack(blocks: readonly Block[], tag: Block["tag"] = "P", alt?: string): Block {
  return {
    height: blocks.reduce((sum, { height }) => sum + height, 0),
    tag,
    ...(alt === undefined ? {} : { alt }),
    paint(canvas, left, top) {
      let y = top;
      for (const block of blocks) {
        block.paint(canvas, left, y);
        y += block.height;
      }
    },
  };
}

/** Blocks beside one another, their tops level, each with its distance from the left edge. */
export function beside(columns: readonly { readonly at: number; readonly block: Block }[]): Block {
  return {
    height: Math.max(0, ...columns.map(({ block }) => block.height)),
    tag: "P",
    paint(canvas, left, top) {
      for (const { at, block } of columns) block.paint(canvas, left + at, top);
    },
  };
}
