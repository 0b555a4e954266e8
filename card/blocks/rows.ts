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
  { label, value, note, under, by }: PlanRow,
  width: number,
  valueAt: number,
  noteAt: number,
  shift: number,
): Block {
  const named = text(setting, label, { width: valueAt - 2, size });
  const wide = setting.type.width(value, size);
  const push = valueAt + Math.max(0, shift);
  const fits = push + wide <= noteAt - 1;
  const from = fits ? noteAt : Math.min(push + wide + 2, noteAt + 0.2 * width);
  // A value without a number is a word: it may take the room of the note.
  const valued = text(setting, value, {
    width: (note === undefined ? width : Math.max(noteAt, from)) - push - (note === undefined ? 0 : 1),
    size,
    ink: by,
  });
  const beside = note === undefined ? undefined : text(setting, note, { width: width - from, size: sizes.small, ink: "quiet" });
  const height = Math.max(named.height, valued.height, beside?.height ?? 0) + 0.75;
  const row: Block = {
    height,
    tag: "P",
    paint(canvas, left, top) {
      named.paint(canvas, left, top);
      valued.paint(canvas, left + push, top);
      beside?.paint(canvas, left + from, top + firstBaseline * (size - sizes.small));
      canvas.rule([left, top + height - 0.35], [left + width, top + height - 0.35], 0.08);
    },
  };
  if (under === undefined) return row;
  return stack([row, text(setting, under, { width, indent: 3, size: sizes.small, ink: "quiet", after: 0.9 })]);
}
