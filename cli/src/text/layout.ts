/** Columns of a page in the terminal. */
export const width = 88;

/** Breaks a text into lines of at most `columns`, the first one led by `lead`, the rest by as many spaces. */
export function wrap(text: string, lead = "", columns = width): string {
  const indent = " ".repeat(lead.length);
  const lines: string[] = [];
  let line = lead;
  for (const word of text.split(/ +/u)) {
    if (line.length + word.length + 1 > columns && line.trim() !== lead.trim()) {
      lines.push(line.trimEnd());
      line = indent;
    }
    line += line === lead || line === indent ? word : ` ${word}`;
  }
  return [...lines, line.trimEnd()].join("\n");
}

/** A heading with a rule under it. */
export function heading(text: string): string {
  return `\n${text}\n${"─".repeat(width)}`;
}

export interface Row {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
  /** A remark on its own line under the row. */
  readonly under?: string;
}

/** Columns of the label; a longer label has its line to itself. */
const labelColumns = 38;
/** The fewest columns in which a note may stand beside its value. */
const noteColumns = 24;

/** Where the decimal mark of a value stands, or the end of its leading digits; none for words. */
function markOf(value: string): number | undefined {
  return /\d/u.test(value) ? /^[^\d]*[\d\u2009]*/u.exec(value)?.[0].length : undefined;
}

/** Rows of label, value and note; values line up by the decimal mark, long notes go under their row. */
export function rows(list: readonly Row[]): string {
  const labels = Math.min(labelColumns, Math.max(0, ...list.map((row) => row.label.length)));
  const mark = Math.max(0, ...list.map((row) => markOf(row.value) ?? 0));
  const values = list.map((row) => " ".repeat(mark - (markOf(row.value) ?? mark)) + row.value);
  const widest = Math.max(0, ...values.map((value) => value.length));
  return list.map((row, index) => line(row, labels, values[index] ?? row.value, widest)).join("\n");
}

function line(row: Row, labels: number, value: string, widest: number): string {
  const under = row.under ? `\n${wrap(row.under, " ".repeat(6))}` : "";
  return rowLine(row, labels, value, widest) + under;
}

function rowLine({ label, note }: Row, labels: number, value: string, widest: number): string {
  const long = label.length > labels;
  const before = long ? `${wrap(label, "  ")}\n` : "";
  const row = `  ${(long ? "" : label).padEnd(labels)}  ${value}`;
  if (!note) return before + row.trimEnd();
  const lead = `  ${(long ? "" : label).padEnd(labels)}  ${value.padEnd(widest)}  `;
  const fits = lead.length + note.length <= width || (width - lead.length >= noteColumns && note.length <= 2 * (width - lead.length));
  return before + (fits ? wrap(note, lead) : `${row.trimEnd()}\n${wrap(note, " ".repeat(6))}`);
}
