import { type Run, runsOf } from "@ringwright/drawings";
import type { PdfDocument } from "./document.ts";
import type { CardFonts } from "./fonts.ts";

/** A stretch of text that one font file has every character of. */
export interface Piece {
  readonly font: string;
  readonly text: string;
}

/** Stands for a character that no font has. */
const unknownCharacter = "□";
const em = 1000;

/** Measures text and finds the font that has each character. */
export class Typesetter {
  readonly #doc: PdfDocument;
  readonly #faces: Readonly<Record<keyof CardFonts, readonly string[]>>;
  readonly #has = new Map<string, string>();
  readonly #widths = new Map<string, number>();

  constructor(doc: PdfDocument, fonts: CardFonts) {
    this.#doc = doc;
    const registered = new Map<Uint8Array, string>();
    const name = (bytes: Uint8Array): string => {
      const known = registered.get(bytes);
      if (known !== undefined) return known;
      const fresh = `face-${registered.size + 1}`;
      registered.set(bytes, fresh);
      doc.registerFont(fresh, bytes);
      return fresh;
    };
    this.#faces = {
      words: fonts.words.map(name),
      wordsBold: fonts.wordsBold.map(name),
      numbers: fonts.numbers.map(name),
      numbersBold: fonts.numbersBold.map(name),
    };
  }

  /** A run cut up by the fonts that have its characters. */
  pieces({ text, face, bold }: Run): readonly Piece[] {
    const pieces: { font: string; text: string }[] = [];
    for (const raw of text) {
      // A line break or a tab that was typed is a space here.
      const character = /\p{Cc}/u.test(raw) ? " " : raw;
      // The space between number and unit is one of the words' face: as wide as a digit it would tear them apart.
      const of = character === "\u00a0" ? "words" : face;
      const found = this.#fontFor(character, bold ? `${of}Bold` : of);
      const [font, drawn] = found === "" ? [this.#fontFor(unknownCharacter, face), unknownCharacter] : [found, character];
      const last = pieces.at(-1);
      if (last?.font === font) last.text += drawn;
      else pieces.push({ font, text: drawn });
    }
    return pieces;
  }

  /** Width of runs at a font size, in the unit of the size. */
  widthOf(runs: readonly Run[], size: number): number {
    let sum = 0;
    for (const run of runs) for (const piece of this.pieces(run)) sum += this.pieceWidth(piece);
    return sum * size;
  }

  /** Width of a piece in font sizes. */
  pieceWidth({ font, text }: Piece): number {
    const key = `${font} ${text}`;
    let width = this.#widths.get(key);
    if (width === undefined) {
      this.#doc.font(font);
      this.#doc.fontSize(em);
      width = this.#doc.widthOfString(text) / em;
      this.#widths.set(key, width);
    }
    return width;
  }

  width(text: string, size: number, bold = false): number {
    return this.widthOf(runsOf(text, bold), size);
  }

  /** Breaks a text into lines no wider than `width`; a word that is wider by itself is broken. */
  wrap(text: string, width: number, size: number, bold = false): readonly string[] {
    const space = this.width("n n", size, bold) - this.width("nn", size, bold);
    const lines: string[] = [];
    let [line, used] = ["", 0];
    for (const word of text.split(/[ \n\t]+/u).flatMap((one) => this.#broken(one, width, size, bold))) {
      const wide = this.width(word, size, bold);
      if (line !== "" && used + space + wide > width) {
        lines.push(line);
        [line, used] = ["", 0];
      }
      used += (line === "" ? 0 : space) + wide;
      line = line === "" ? word : `${line} ${word}`;
    }
    return line === "" ? lines : [...lines, line];
  }

  /** As many lines as there is room for; what is cut off ends in an ellipsis. */
  shortened(text: string, width: number, size: number, bold: boolean, most: number): readonly string[] {
    const lines = this.wrap(text, width, size, bold);
    if (lines.length <= most) return lines;
    let last = lines[most - 1] ?? "";
    while (last !== "" && this.width(`${last}…`, size, bold) > width) last = [...last].slice(0, -1).join("");
    return [...lines.slice(0, most - 1), `${last}…`];
  }

  #broken(word: string, width: number, size: number, bold: boolean): readonly string[] {
    if (word === "") return [];
    if (this.width(word, size, bold) <= width) return [word];
    const parts: string[] = [];
    let [part, used] = ["", 0];
    for (const character of word) {
      const wide = this.width(character, size, bold);
      if (part !== "" && used + wide > width) {
        parts.push(part);
        [part, used] = ["", 0];
      }
      part += character;
      used += wide;
    }
    return [...parts, part];
  }

  #fontFor(character: string, face: keyof CardFonts): string {
    const key = `${face} ${character}`;
    const known = this.#has.get(key);
    if (known !== undefined) return known;
    const found = this.#faces[face].find((font) => {
      this.#doc.font(font);
      return this.#doc._font.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
    });
    this.#has.set(key, found ?? "");
    return found ?? "";
  }
}
