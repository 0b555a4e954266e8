import type { Citation } from "../sources/index.ts";
import type { Range } from "./rule.ts";

/** A value that a sentence shows: a plain number or text, or an SI value with its kind of quantity. */
export type Shown = string | number | { readonly value: number; readonly kind: string; readonly decimals?: number };

/** Something to be said to a person: an id in words/ and the values its sentence shows. */
export interface Says {
  readonly id: string;
  readonly with?: Readonly<Record<string, Shown>>;
}

/** The first four are of the question itself: its reading found them. The rest are of the calculation. */
export type RefusalKind = "malformed" | "missing" | "wrong-unit" | "unknown-field" | "outside-range" | "impossible" | "not-known";

/** Why there is no answer: which input, what was given, what is allowed. */
export interface Refusal {
  readonly kind: RefusalKind;
  /** The field, by its name in the question: `bore`, `parts[2].height`. */
  readonly input: string;
  readonly given?: number | string;
  readonly allowed?: (Range & { readonly unit?: string }) | readonly string[];
  readonly says: Says;
  readonly citation?: Citation;
}

/**
 * Something to look at although there is an answer. `slip`: the input looks
 * mistyped. `outside-validity`: a formula was used beyond where it is known to
 * hold. `caution`: someone may be hurt. `limit`: a limit is passed. `gap`:
 * something not known was worked around. `note`: what the model does not know.
 */
export interface Warning {
  readonly kind: "slip" | "outside-validity" | "caution" | "limit" | "gap" | "note";
  readonly input?: string;
  readonly given?: number | string;
  /** For a slip: what was perhaps meant, in SI. */
  readonly suggestion?: number | string;
  readonly says: Says;
  readonly citation?: Citation;
}

export interface Found<T> {
  readonly ok: true;
  readonly value: T;
  readonly workings: readonly Step[];
  readonly warnings: readonly Warning[];
}

export interface Refused {
  readonly ok: false;
  readonly refusal: Refusal;
}

/** What every public function of a topic returns. */
export type Answer<T> = Found<T> | Refused;

/** One step of the workings: the rule, its inputs in the rule's order, the value, its standard uncertainty. */
export type Step = readonly [rule: import("./rule.ts").Rule, inputs: readonly number[], value: number, uncertainty?: number];

/** A value with its standard uncertainty (JCGM 100), both in SI. */
export interface Uncertain<Q extends number = number> {
  readonly mean: Q;
  /** Standard uncertainty; 0 when nothing is said about it. */
  readonly u: Q;
}

/** From the lowest to the highest that is to be reckoned with, in SI. */
export interface Band<Q extends number = number> {
  readonly low: Q;
  readonly high: Q;
}

/**
 * Something whose members are still being filled in, those that are known one
 * by one. Where speed counts this is many times quicker than spreading members
 * that may not be there into a literal.
 */
export type Filling<T> = { -readonly [N in keyof T]: T[N] };

/** Refuses: returned, never thrown. */
export function refuse(refusal: Refusal): Refused {
  return { ok: false, refusal };
}
