import type { Answer, Filling, Found, Refused } from "../workings/index.ts";

/** A part of the plan that could not be worked out because something was not measured or said. */
export interface Missing {
  readonly ok: false;
  /** Fields of the survey, by name, that would settle it. */
  readonly needs: readonly string[];
}

/** One part of a plan: found, refused, or waiting for what is not known. */
export type Part<T> = Found<T> | Refused | Missing;

/**
 * The value of a part, where there is one.
 *
 * Units: as the part's. Range: any part; nothing is refused. Source: definition.
 * @example answerOf(plan.rings.set)?.joints
 */
export function answerOf<T>(part: Part<T> | undefined): T | undefined {
  return part?.ok ? part.value : undefined;
}

/** What a function of a topic is given, its members still being filled in from the survey. */
export type GivenTo<F> = F extends (given: infer Given, ...facts: never) => unknown ? Filling<Given> : never;

type Known<T> = { readonly [N in keyof T]: Exclude<T[N], undefined> };

/**
 * Works out a part when everything it needs is known; otherwise says what is
 * missing, by the names of the survey.
 */
export function when<const T extends Readonly<Record<string, unknown>>, R>(needs: T, work: (known: Known<T>) => Answer<R>): Part<R> {
  for (const name in needs) {
    if (needs[name] === undefined) return { ok: false, needs: Object.keys(needs).filter((one) => needs[one] === undefined) };
  }
  return work(needs as Known<T>);
}

/**
 * Whether a part was refused, as opposed to missing or found.
 *
 * Units: none. Range: any part. Source: definition.
 * @example isRefused(plan.box.section)
 */
export function isRefused<T>(part: Part<T>): part is Refused {
  return !part.ok && "refusal" in part;
}
