import type { Ink, Layer } from "./shapes.ts";
import type { PlacedPath } from "./sheet/placed.ts";

/** The marks: blue pencil, ink, red chalk, quiet; each reaches 7:1 on paper. */
export const colours: Readonly<Record<Ink, string>> = {
  measured: "#1d4e89",
  worked: "#17212b",
  attention: "#9c2a12",
  quiet: "#4c555f",
};

export const paperColour = "#fbfaf5";

export const faces = {
  words: "'Atkinson Hyperlegible Next','DejaVu Sans',sans-serif",
  numbers: "'Atkinson Hyperlegible Mono','DejaVu Sans Mono',monospace",
} as const;

/** Two line widths, 2 : 1 (ISO 128-2; nothing under 0.25 mm, so that a copy keeps it). Larger text has thicker pens. */
const thick = 0.5;
const thin = 0.25;

interface Pen {
  readonly width: number;
  readonly dash?: string;
  /** Overrides the ink's colour. */
  readonly colour?: string;
  readonly cap?: "round";
}

const pens: Readonly<Record<Layer, Pen>> = {
  none: { width: 0 },
  outline: { width: thick },
  thin: { width: thin },
  centre: { width: thin, dash: "5 0.9 0.9 0.9", colour: colours.quiet },
  hidden: { width: thin, dash: "1.6 0.8" },
  hatch: { width: thin, colour: colours.quiet },
  // Texture, not line: finer, or a close plait would print black.
  weave: { width: 0.18 },
  curve: { width: 2 * thin, cap: "round" },
  dashed: { width: 2 * thin, dash: "2 1.2" },
  chalk: { width: thin },
  flow: { width: thick },
  grid: { width: thin, dash: "0.6 1", colour: colours.quiet },
};

/** How one path is drawn: millimetres of paper. */
export interface Stroke {
  readonly colour: string;
  readonly width: number;
  /** Marks and gaps in turn. */
  readonly dash?: string;
  readonly round: boolean;
}

/** The pen that draws a path; the line under what was measured is dotted. */
export function strokeOf({ layer, ink, role }: Pick<PlacedPath, "layer" | "ink" | "role">): Stroke {
  const pen = pens[layer];
  const colour = pen.colour ?? colours[ink];
  if (role === "underline") return { colour, width: 1.6 * thin, dash: "0.01 0.75", round: true };
  return { colour, width: pen.width, ...(pen.dash === undefined ? {} : { dash: pen.dash }), round: false };
}

/** The circle round a number. */
export const balloonStroke: Stroke = { colour: colours.worked, width: thin, round: false };

/** How much thicker than usual the pens are for a text size: larger text stands beside thicker lines. */
export function penScale(size: number): number {
  return Math.max(1, Math.round((100 * size) / 3.5) / 100);
}
