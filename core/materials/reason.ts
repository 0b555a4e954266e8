import type { Citation } from "../sources/index.ts";
import type { Says } from "../workings/index.ts";
import type { Confidence } from "./facts.ts";
import type { Family } from "./families.ts";

/** What a packing can fail on. */
export type ConstraintId =
  | "release"
  | "oxygen"
  | "lead"
  | "listing"
  | "motion"
  | "chemistry"
  | "rubber"
  | "galvanic"
  | "sleeve-hardness"
  | "temperature"
  | "cold"
  | "ph"
  | "speed"
  | "pressure"
  | "pressure-speed"
  | "gas"
  | "abrasives"
  | "extrusion"
  | "condition"
  | "nothing-to-compare";

/**
 * `stop`: not this packing. `warn`: may be used, look at this first. `ask`: no
 * limit is known, ask for the item's own sheet. `note`: good to know. `holds`:
 * compared and within its limit.
 */
export type ReasonKind = "stop" | "warn" | "ask" | "note" | "holds";

export interface Reason {
  readonly kind: ReasonKind;
  readonly constraint: ConstraintId;
  readonly says: Says;
  readonly citation: Citation;
  /** What would clear it. */
  readonly clears?: Says;
}

/** A given figure beside its limit. */
export interface Compared {
  readonly kind: "temperature" | "speed" | "pressure" | "number";
  readonly given: number;
  readonly limit: number;
  /** What is left before the limit; negative beyond it. A temperature margin is in K. */
  readonly margin: number;
  /** How much of the limit is used: 1 at the limit. */
  readonly share: number;
}

/** The one constraint that is tightest, or that stops this packing. */
export interface Binding {
  readonly constraint: ConstraintId;
  readonly compared?: Compared;
  readonly says: Says;
  readonly citation: Citation;
  /** Whether a source for this limit was read. */
  readonly seen: boolean;
  readonly confidence: Confidence;
}

export interface Candidate {
  readonly style: string;
  readonly family: Family;
  /** `ask` where a limit is not known and the item's own sheet is needed. */
  readonly standing: "fits" | "look" | "ask";
  readonly score: number;
  /** Weight times fit for each of `preferences`, in their order. */
  readonly contributions: readonly number[];
  readonly binding: Binding;
  readonly because: readonly Reason[];
}

export interface Rejected {
  readonly style: string;
  readonly family: Family;
  readonly binding: Binding;
  readonly because: readonly Reason[];
}
