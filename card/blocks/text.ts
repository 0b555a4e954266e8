import { colours } from "@ringwright/drawings";
import type { Writing } from "../pdf/canvas.ts";
import type { Setting } from "../setting.ts";
import { type Block, stack } from "./block.ts";

/** From one baseline to the next, and the first baseline under the top, in font sizes. */
const leading = 1.32;
export const firstBaseline = 1.02;

/** Font sizes of the card, mm. */
export const sizes = { name: 5.4, heading: 3.7, body: 2.95, small: 2.55, tiny: 2.2 } as const;

export interface TextWish extends Partial<Writing> {
  readonly width: number;
  /** Stands before the first line, the others are set in as far. */
  readonly lead?: string;
  readonly indent?: number;
  readonly after?: number;
  /** Cut off with an ellipsis after so many lines. */
  readonly most?: number;
}

/** Lines of words. */
export function text(setting: Setting, words: string, wish: TextWish): Block {
  const { width, lead, indent = 0, size = sizes.body, bold = false, after = 0, most = Number.POSITIVE_INFINITY, ...ink } = wish;
  const { type } = setting;
  const set = indent + (lead === undefined ? 0 : Math.max(1.6 * size, type.width(`${lead} `, size, bold)));
  const lines = type.shortened(words, width - set, size, bold, most);
  return {
    height: lines.length * leading * size + after,
    tag: "P",
    paint(canvas, left, top) {
      if (lead !== undefined) canvas.write(lead, [left + indent, top + firstBaseline * size], { ...ink, size, bold });
      for (const [i, line] of lines.entries())
        canvas.write(line, [left + set, top + (i * leading + firstBaseline) * size], { ...ink, size, bold });
    },
  };
}

/** The same cut into its lines, for a text that may run on over a page. */
export function textLines(setting: Setting, words: string, wish: TextWish): readonly Block[] {
  const { lead, indent = 0, size = sizes.body, bold = false, width } = wish;
  const set = indent + (lead === undefined ? 0 : Math.max(1.6 * size, setting.type.width(`${lead} `, size, bold)));
  const lines = setting.type.wrap(words, width - set, size, bold);
  return lines.map((line, i) =>
    text(
      setting,
      line,
      i === 0 || lead === undefined ? { ...wish, width: width + size } : { ...without(wish), indent: set, width: width + size },
    ),
  );
}

function without({ lead: _, ...wish }: TextWish): TextWish {
  return wish;
}

/** The heading of a section, with a rule under it. */
export function heading(setting: Setting, words: string, width: number): Block {
  const size = sizes.heading;
  const line = text(setting, words, { width, size, bold: true });
  return {
    height: line.height + 1.6,
    tag: "H2",
    paint(canvas, left, top) {
      line.paint(canvas, left, top);
      canvas.rule([left, top + line.height + 0.5], [left + width, top + line.height + 0.5], 0.35, colours.worked);
    },
  };
}

/** What needs a hand now: red chalk, bold, with a bar. */
export function attention(setting: Setting, words: string, width: number): Block {
  return barred(setting, words, width, "attention", undefined);
}

/** A caution: bold, with a bar and its mark. */
export function caution(setting: Setting, words: string, width: number): Block {
  return barred(setting, words, width, "worked", "!");
}

function barred(setting: Setting, words: string, width: number, ink: "attention" | "worked", mark: string | undefined): Block {
  const inset = 2.6;
  const body = text(setting, words, {
    width: width - inset,
    size: sizes.body,
    bold: true,
    ink,
    ...(mark === undefined ? {} : { lead: mark }),
  });
  return {
    height: body.height + 1.2,
    tag: "P",
    paint(canvas, left, top) {
      canvas.rule([left + 0.5, top + 0.1], [left + 0.5, top + body.height + 0.5], 1, colours[ink]);
      body.paint(canvas, left + inset, top);
    },
  };
}

/** Lines to write on by hand, each with what belongs on it. */
export function writingLine(setting: Setting, label: string, width: number, unit?: string): Block {
  const size = sizes.small;
  const height = 6.4;
  const after = unit === undefined ? 0 : setting.type.width(unit, size) + 0.8;
  const room = setting.type.width(label, size);
  // A long label stands over its line.
  const over = label !== "" && room > 0.55 * width;
  const name = text(setting, label, { width, size, ink: "quiet" });
  const line: Block = {
    height,
    tag: "P",
    paint(canvas, left, top) {
      const y = top + height - 1.4;
      if (!over) canvas.write(label, [left, y], { size, ink: "quiet" });
      canvas.rule([left + (over || label === "" ? 0 : room + 1), y + 0.4], [left + width - after, y + 0.4], 0.2, colours.worked);
      if (unit !== undefined) canvas.write(unit, [left + width, y], { size, ink: "quiet", anchor: "end" });
    },
  };
  return over ? stack([name, line]) : line;
}
