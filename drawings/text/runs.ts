import { widthOf } from "./widths.ts";

/** A stretch of text in one face: Next for words, Mono for numbers and their units. */
export interface Run {
  readonly text: string;
  readonly face: "words" | "numbers";
  readonly bold: boolean;
}

/** A number as people write it, with its sign, its diameter mark, and the unit bound to it by a no-break space. */
const number = /Ø?[−±]?\d(?:[\d.,\u2009]*\d)?(?:\u00a0[^\s,;]+)?/gu;

/** Splits a text so that numbers and units stand in the face for numbers. */
export function runsOf(text: string, bold = false): readonly Run[] {
  const runs: Run[] = [];
  let from = 0;
  for (const match of text.matchAll(number)) {
    if (match.index > from) runs.push({ text: text.slice(from, match.index), face: "words", bold });
    runs.push({ text: match[0], face: "numbers", bold });
    from = match.index + match[0].length;
  }
  if (from < text.length) runs.push({ text: text.slice(from), face: "words", bold });
  return runs;
}

/** Width of a text at a font size, never less than it will be. */
export function runsWidth(runs: readonly Run[], size: number): number {
  return runs.reduce((sum, { text, face, bold }) => sum + widthOf(text, face, bold), 0) * size;
}

/** Breaks a text into lines no wider than `width`; a single word that is wider keeps a line of its own. */
export function wrap(text: string, width: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && runsWidth(runsOf(longer, bold), size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** About how wide a text really is, for a line drawn under it: words mostly run narrower than the room kept for them. */
export function inkedWidth(runs: readonly Run[], size: number): number {
  return runs.reduce((sum, { text, face, bold }) => sum + widthOf(text, face, bold) * (face === "words" ? 0.92 : 1), 0) * size;
}
