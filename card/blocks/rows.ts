import { colours } from "@ringwright/drawings";
import type { PlanRow } from "@ringwright/words/plan";
import type { Setting } from "../setting.ts";
import { type Block, stack } from "./block.ts";
import { firstBaseline, sizes, text } from "./text.ts";

/** Where label, value and note of a row begin, as shares of its width. */
interface Shares {
  readonly value: number;
  readonly note: number;
}
const shares: Shares = { value: 0.37, note: 0.57 };
const size = sizes.body;

/** Rows of label, value and note; values line up by the decimal mark, a remark stands under its row. */
export function rowBlocks(setting: Setting, rows: readonly PlanRow[], width: number, at = shares): readonly Block[] {
  const before = (value: string) => {
    const lead = /\d/u.test(value) ? /^[^\d]*[\d\u2009]*/u.exec(value)?.[0] : undefined;
    return lead === undefined ? undefined : setting.type.width(lead, size);
  };
  const [valueAt, noteAt] = [at.value * width, at.note * width];
  // A value that would run into the notes doesn't push the others aside.
  const mark = Math.max(
    0,
    ...rows.filter(({ value }) => setting.type.width(value, size) < noteAt - valueAt - 2).map(({ value }) => before(value) ?? 0),
  );
  return rows.map((row) => rowBlock(setting, row, width, valueAt, noteAt, mark - (before(row.value) ?? mark)));
}

function rowBlock(
  setting: Setting,
  { label, value, note, under, by, blank, asks }: PlanRow,
  width: number,
  valueAt: number,
  noteAt: number,
  shift: number,
): Block {
  const said = blank && note === undefined ? value : note;
  const shown = blank ? "" : value;
  const named = text(setting, label, { width: valueAt - 2, size });
  const wide = setting.type.width(shown, size);
  const push = valueAt + Math.max(0, shift);
  // A value too long for its column moves its note aside, and takes the note's room where there is none.
  const from = said === undefined ? width : push + wide <= noteAt - 1 ? noteAt : Math.min(push + wide + 2, noteAt + 0.2 * width);
  const valued = text(setting, shown, { width: from - push - 1, size, ink: by });
  const beside =
    said === undefined
      ? undefined
      : text(setting, said, { width: width - from, size: sizes.small, ...(asks ? { bold: true } : { ink: "quiet" as const }) });
  const height = Math.max(named.height, valued.height, beside?.height ?? 0, blank ? 5.4 : 0) + 0.75;
  const row: Block = {
    height,
    tag: "P",
    paint(canvas, left, top) {
      named.paint(canvas, left, top);
      valued.paint(canvas, left + push, top);
      beside?.paint(canvas, left + from, top + firstBaseline * (size - sizes.small));
      if (blank) canvas.rule([left + valueAt, top + height - 1.6], [left + noteAt - 2, top + height - 1.6], 0.2, colours.worked);
      canvas.rule([left, top + height - 0.35], [left + width, top + height - 0.35], 0.06);
    },
  };
  if (under === undefined) return row;
  return stack([row, text(setting, under, { width, indent: 3, size: sizes.small, ink: "quiet", after: 0.9 })]);
}
