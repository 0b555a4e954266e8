import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { CardFonts } from "@ringwright/card";

/** The font files from their packages, each once. */
export function readFonts(files: Readonly<Record<keyof CardFonts, readonly string[]>>): CardFonts {
  const { resolve } = createRequire(import.meta.url);
  const read = new Map<string, Uint8Array>();
  const bytes = (name: string): Uint8Array => {
    const known = read.get(name) ?? readFileSync(resolve(name));
    read.set(name, known);
    return known;
  };
  return {
    words: files.words.map(bytes),
    wordsBold: files.wordsBold.map(bytes),
    numbers: files.numbers.map(bytes),
    numbersBold: files.numbersBold.map(bytes),
  };
}
