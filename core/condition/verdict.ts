import type { Seen, SourceId } from "../sources/index.ts";
import type { Length } from "../units/index.ts";

/**
 * What is said about one point of the survey. `attend`: put right, or the
 * sources quarrel and a person decides. `cannot-tell`: measured, but too close
 * to a limit, or nothing to hold it against. `not-measured` is an answer.
 */
export const verdicts = ["good", "attend", "renew", "cannot-tell", "not-measured"] as const;
export type VerdictWord = (typeof verdicts)[number];

/** What the verdict rests on. */
export const deciders = [
  "house-limit",
  "all-limits",
  "split-limits",
  "too-close",
  "no-limit",
  "basis-missing",
  "seen",
  "own-check",
  "not-measured",
] as const;
export type Decider = (typeof deciders)[number];

export const outcomes = ["pass", "fail", "close"] as const;
export type Outcome = (typeof outcomes)[number];

/** Metres, or a plain number such as HB. */
export type LimitUnit = "m" | "1";

/** One published or habitual limit held against the reading. */
export interface LimitVerdict {
  /** Also the id of what words/ says about it. */
  readonly id: string;
  readonly value: number;
  readonly unit: LimitUnit;
  readonly source: SourceId;
  readonly at?: string;
  /** How this value was seen, where that differs from the source as a whole. */
  readonly seen?: Seen;
  readonly outcome: Outcome;
  /** Shown for comparison; does not count. */
  readonly beside: boolean;
}

/** A limit the site has set for itself. */
export interface HouseLimit {
  readonly item: string;
  readonly value?: Length;
  /** For hardness, which is a plain number. */
  readonly number?: number;
  readonly setBy: string;
  readonly why?: string;
}

/** The site's own limit held against the reading. */
export interface HouseVerdict {
  readonly value: number;
  readonly unit: LimitUnit;
  readonly setBy: string;
  readonly why?: string;
  readonly outcome: Outcome;
}

export interface Verdict {
  readonly id: string;
  readonly verdict: VerdictWord;
  /** Whether this box should not be packed before this was looked at. */
  readonly required: boolean;
  readonly measured?: { readonly value: number; readonly unit: LimitUnit; readonly standardUncertainty: number };
  /** What was seen, where it was looked at and not measured. */
  readonly seen?: string;
  readonly limits: readonly LimitVerdict[];
  readonly houseLimit?: HouseVerdict;
  readonly decidedBy: Decider;
  /** How many of the limits that count are passed. */
  readonly passes: number;
  readonly of: number;
  /** Ids of what to do. */
  readonly advice: readonly string[];
}
