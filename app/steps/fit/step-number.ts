import type { Step } from "@ringwright/core/fit";
import type { Kind, Kinds } from "@ringwright/core/units";
import { trimmed } from "../../parts/trimmed.ts";
import type { Words } from "../../parts/words.ts";

/** A step's number in the reader's units: a count as it is, a length to what a caliper can do. */
export function stepNumber({ measures }: Step, value: number, words: Words): string {
  if (measures === undefined || measures === "count" || measures === "rate") return String(Math.round(value));
  if (measures !== "length") return trimmed(words.value(measures as Kind, value as Kinds[Kind], { digits: 3 }));
  const inch = words.value("length", 0 as Kinds["length"]).endsWith("in");
  return words.value("length", value as Kinds["length"], { decimals: inch ? 3 : 1 });
}
