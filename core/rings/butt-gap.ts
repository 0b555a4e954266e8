import type { Family } from "../materials/index.ts";
import { type Length, quantity } from "../units/index.ts";
import { type Answer, type Band, band, begin, rule, type Workings } from "../workings/index.ts";
import type { Opinion, RingFacts } from "./facts.ts";

/** Whether the ends of a ring meet, or stand apart so that the fibre can swell. */
export const gapPolicies = ["close", "swell", "not-known"] as const;

export interface ButtGap {
  readonly policy: (typeof gapPolicies)[number];
  /** Between the ends as cut; none when the material is not known. */
  readonly gap?: Band<Length> | undefined;
  /** What books and makers print, to judge by. */
  readonly opinions: readonly Opinion[];
}

const lessGapRule = rule({
  id: "ring-length-less-gap",
  symbol: "L_g",
  expression: "L − (g_lo + g_hi) / 2, to the nearest millimetre",
  unit: "m",
  inputs: [
    { symbol: "L", name: "ring-cut-length", unit: "m" },
    { symbol: "g_lo", name: "butt-gap", unit: "m" },
    { symbol: "g_hi", name: "butt-gap", unit: "m" },
  ],
  citation: { source: "own-proposal", at: "middle of the printed gap" },
});

const millimetre = quantity("length", 1, "mm");

/** The gap as a part of another answer. */
export function stepGap(work: Workings, family: Family | undefined, facts: RingFacts): ButtGap {
  const { gaps, gapOpinions: opinions } = facts;
  const of = family === undefined ? undefined : gaps.get(family);
  if (!of) {
    work.warn({ kind: "gap", input: "family", says: { id: "rings-gap-family" } });
    return { policy: "not-known", opinions };
  }
  const low = work.step(of.rules[0], [], of.low);
  const high = work.step(of.rules[1], [], of.high);
  return { policy: high > 0 ? "swell" : "close", gap: band(low, high), opinions };
}

/** A cut length with the middle of the gap taken off, in whole millimetres. */
export function lessGap(work: Workings, cutLength: Length, { low, high }: Band<Length>): Length {
  const shorter = quantity("length", Math.round((cutLength - (low + high) / 2) / millimetre), "mm");
  return work.step(lessGapRule, [cutLength, low, high], shorter);
}

/**
 * Whether the ends of a ring meet or stand apart, by the family of the
 * packing; with what books and makers print beside it, for they differ.
 *
 *   g between 1.5 and 3 mm for vegetable fibre, which swells; none for the rest
 *
 * Units: gap m.
 * Range: any family of packing; where it or its gap is not known, no gap is named and all opinions are shown.
 * Source: common practice; Mobley 1999 (at least 1/16 in), Bloch and Geitner (1/16 to 1/8 in), fire-pump maker's manual (none).
 * @example buttGap({ family: "ptfe" }, facts) // close, 0 mm
 */
export function buttGap({ family }: { readonly family?: Family }, facts: RingFacts): Answer<ButtGap> {
  const work = begin();
  return work.found(stepGap(work, family, facts));
}
