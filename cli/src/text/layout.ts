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
}

/** Where the decimal mark of a value stands, or the end of its leading digits. */
function markOf(value: string): number {
  return /^[^\d]*[\d\u2009]*/u.exec(value)?.[0].length ?? value.length;
}

/** Rows of label, value and note; values line up by the decimal mark, notes wrap under themselves. */
export function rows(list: readonly Row[]): string {
  const labels = Math.min(36, Math.max(0, ...list.map((row) => row.label.length)));
  const marks = Math.max(0, ...list.map((row) => markOf(row.value)));
  const values = list.map((row) => " ".repeat(marks - markOf(row.value)) + row.value);
  const widest = Math.max(0, ...values.map((value) => value.length));
  return list
    .map((row, index) => {
      const value = values[index] ?? row.value;
      if (row.label.length > labels) return `${wrap(row.label, "  ")}\n${line("", labels, value, widest, row.note)}`;
      return line(row.label, labels, value, widest, row.note);
    })
    .join("\n");
}

function line(label: string, labels: number, value: string, widest: number, note: string | undefined): string {
  const lead = `  ${label.padEnd(labels)}  ${value.padEnd(note ? widest : 0)}`;
  return note ? wrap(note, `${lead}  `) : lead.trimEnd();
}
