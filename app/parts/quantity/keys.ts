/** What a key of the keypad does to the text of a field. */
export type Key =
  | { readonly does: "write"; readonly text: string }
  | { readonly does: "fraction"; readonly text: string }
  | { readonly does: "rub-out" }
  | { readonly does: "unit" };

export interface Caret {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** Sixteenths of an inch, the smallest names of each. */
export const sixteenths = [
  "1/16",
  "1/8",
  "3/16",
  "1/4",
  "5/16",
  "3/8",
  "7/16",
  "1/2",
  "9/16",
  "5/8",
  "11/16",
  "3/4",
  "13/16",
  "7/8",
  "15/16",
] as const;

/** The text after a key, and where the caret then stands. A fraction follows the whole inches, and takes the place of one that stands there. */
export function pressed({ text, from, to }: Caret, key: Exclude<Key, { readonly does: "unit" }>): Caret {
  if (key.does === "fraction") {
    const whole = text.replace(/\s*\d+\s*\/\s*\d*\s*$/u, (fraction) => (/^\s/u.test(fraction) ? " " : "")).trimEnd();
    const now = `${whole}${whole === "" ? "" : " "}${key.text}`;
    return { text: now, from: now.length, to: now.length };
  }
  const start = key.does === "rub-out" && from === to ? Math.max(0, from - 1) : from;
  const put = key.does === "write" ? key.text : "";
  const caret = start + put.length;
  return { text: text.slice(0, start) + put + text.slice(to), from: caret, to: caret };
}
