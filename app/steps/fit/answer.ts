import type { Step } from "@ringwright/core/fit";
import { type Kind, siUnits } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import type { Bodies, Measured } from "@ringwright/logbook";
import { readTyping, typingOf } from "../../parts/quantity/typing.ts";
import type { Words } from "../../parts/words.ts";

type Written = Bodies["fit-step"];

/** What stands on a step's screen: its drafts by field, as they were typed and tapped. */
export type Drafted = ReadonlyMap<string, string>;

/** The blank that counts old rings left in the box. */
export const leftIn = "rings-left-in";

export type Answer =
  | {
      readonly kind: "ready";
      readonly found: Exclude<Written["found"], null>;
      readonly blanks: { readonly [blank: string]: string };
      /** Blanks with nothing in them. */
      readonly empty: readonly string[];
      /** Old rings left in: then the step is not done, and needs a make-do. */
      readonly ringsLeftIn: number;
    }
  | { readonly kind: "missing" | "refused"; readonly says: Says };

/** A step's number as a kind of quantity; none for counts and rates, which are plain numbers. */
export function quantityOf({ measures }: Step): Kind | undefined {
  return measures === undefined || measures === "count" || measures === "rate" ? undefined : measures;
}

/** Reads what stands on a step's screen. */
export function readAnswer(step: Step, drafted: Drafted): Answer {
  const found = foundIn(step, drafted);
  if ("kind" in found) return found;
  const blanks: { [blank: string]: string } = {};
  const empty: string[] = [];
  for (const blank of step.blanks) {
    const text = (drafted.get(`blank/${blank}`) ?? (blank === leftIn ? "0" : "")).trim();
    if (text === "") empty.push(blank);
    else blanks[blank] = text;
  }
  return { kind: "ready", found: found.found, blanks, empty, ringsLeftIn: Number(blanks[leftIn] ?? 0) };
}

function foundIn(
  step: Step,
  drafted: Drafted,
): { readonly found: boolean | number | string | Measured } | (Answer & { kind: "missing" | "refused" }) {
  if (step.kind === "tick" || step.kind === "wait" || step.kind === "text") return { found: true };
  if (step.kind === "choice") {
    const choice = drafted.get("choice");
    return choice === undefined ? { kind: "missing", says: { id: "fitting-choice-missing" } } : { found: choice };
  }
  const kind = quantityOf(step);
  if (kind === undefined) {
    const count = drafted.get("count");
    return count === undefined ? { kind: "missing", says: { id: "fitting-count-missing" } } : { found: Number(count) };
  }
  const read = readTyping(typingOf(drafted.get("value")), kind, "found");
  if (read.kind === "empty") return { kind: "missing", says: { id: "fitting-number-missing" } };
  return read.kind === "refused" ? { kind: "refused", says: read.says } : { found: read.measured };
}

/** What the plan expects of a step's number, as an entry keeps it. */
export function expectedOf({ predicted }: Step, words: Words): number | Measured | undefined {
  if (predicted === undefined) return undefined;
  const { kind, value } = predicted;
  if (kind === "count" || kind === "rate") return value;
  return { value, unit: siUnits[kind], typed: words.value(kind, value as never) };
}
