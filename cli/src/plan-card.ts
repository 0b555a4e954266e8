import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { CardFonts, Issued, Paper } from "@ringwright/card";
import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import { say } from "@ringwright/words";
import type { Drawn } from "./plan-drawings.ts";
import type { Streams } from "./streams.ts";

export interface CardAsked {
  readonly file: string;
  readonly paper: Paper;
}

/**
 * Writes the card of a plan, and tells what became of it. Card, PDF library and fonts are loaded only here.
 */
export async function writeCard(plan: Found<Plan>, { file, paper }: CardAsked, system: UnitSystem, streams: Streams): Promise<Drawn> {
  const [{ drawCard, fontFiles }, { default: Document }] = await Promise.all([import("@ringwright/card"), import("pdfkit")]);
  const bytes = await drawCard(plan, { Document, fonts: readFonts(fontFiles), system, paper, issued: issuedNow(streams.now()) });
  try {
    streams.write(file, bytes);
    return { line: say({ id: "plan-card-written", with: { file } }), failed: false };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { line: say({ id: "plan-card-not-written", with: { file, why } }), failed: true };
  }
}

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

/** The moment as the clock on this machine shows it, with its offset, and the version of this program. */
function issuedNow(now: Date): Issued {
  const { version } = createRequire(import.meta.url)("@ringwright/cli/package.json") as { readonly version: string };
  const two = (value: number) => String(value).padStart(2, "0");
  const offset = -now.getTimezoneOffset();
  const [sign, away] = [offset < 0 ? "-" : "+", Math.abs(offset)];
  const date = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const time = `${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}`;
  return { when: `${date}T${time}${sign}${two(Math.floor(away / 60))}:${two(away % 60)}`, version };
}
