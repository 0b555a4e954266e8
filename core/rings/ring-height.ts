import { isStem } from "../box/index.ts";
import type { Length } from "../units/index.ts";
import { type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import type { RingFacts, Seating } from "./facts.ts";
import { ringSection } from "./ring-section.ts";
import type { RingSetQuestion } from "./survey.ts";

/** Height of one seated ring: as reckoned, and between what it can be. */
export interface RingHeight {
  readonly section: Length;
  readonly height: Length;
  readonly uncertainty: Length;
  readonly tallest: Length;
  readonly lowest: Length;
}

const lossGivenRule = rule({
  id: "seating-loss",
  symbol: "ε",
  expression: "(ε_lo + ε_hi) / 2",
  unit: "1",
  inputs: [
    { symbol: "ε_lo", name: "seatingLossLow", unit: "1" },
    { symbol: "ε_hi", name: "seatingLossHigh", unit: "1" },
  ],
  citation: { source: "definition", at: "middle of the range for the material" },
});

const heightRule = rule({
  id: "ring-height-seated",
  symbol: "h",
  name: "ringHeight",
  expression: "s · (1 − ε)",
  unit: "m",
  inputs: [
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "ε", name: "seating-loss", unit: "1" },
  ],
  citation: { source: "geometry", at: "share of height lost while seating; uncertainty as of a rectangle over the range" },
});

const tolerance = rule({
  id: "ring-height-tolerance",
  symbol: "δ",
  name: "ring-height-tolerance",
  expression: "",
  unit: "1",
  inputs: [],
  citation: { source: "own-proposal", at: "a seated ring measured with a depth gauge" },
  assumed: { min: 0.01, max: 0.05 },
});

/** How rings are seated when nobody says: stems with full load ring by ring, the rest tamped home. */
function seatingOf({ seating, motion }: RingSetQuestion): Seating {
  return seating ?? (isStem(motion) ? "full" : "firm");
}

/** Refuses losses the wrong way round. */
export function refuseLosses({ seatingLossLow: low, seatingLossHigh: high }: RingSetQuestion): Refused | undefined {
  if (low === undefined && high === undefined) return undefined;
  if (low === undefined || high === undefined) {
    const input = low === undefined ? "seatingLossLow" : "seatingLossHigh";
    return refuse({ kind: "not-known", input, says: { id: "rings-loss-other-end" } });
  }
  if (low <= high) return undefined;
  return refuse({
    kind: "impossible",
    input: "seatingLossHigh",
    given: high,
    allowed: { min: low, unit: "1" },
    says: { id: "rings-loss-wrong-way" },
  });
}

/** Section and seated height of the rings of a set. */
export function ringHeight(work: Workings, given: RingSetQuestion, facts: RingFacts): RingHeight {
  const section = sectionOf(work, given);
  if (given.ringHeight !== undefined) return measuredHeight(work, section, given.ringHeight);
  const { low, high, loss } = lossOf(work, given, facts);
  const uncertainty = ((section * (high - low)) / Math.sqrt(12)) as Length;
  return {
    section,
    height: work.step(heightRule, [section, loss], (section * (1 - loss)) as Length, uncertainty),
    uncertainty,
    tallest: (section * (1 - low)) as Length,
    lowest: (section * (1 - high)) as Length,
  };
}

function sectionOf(work: Workings, { shaft, bore, section }: RingSetQuestion): Length {
  if (section !== undefined) return section;
  return shaft === undefined ? (0 as Length) : ringSection(work, { shaft, ...(bore === undefined ? {} : { bore }) });
}

function measuredHeight(work: Workings, section: Length, height: Length): RingHeight {
  const half = work.assume(tolerance, 0.02);
  return {
    section,
    height,
    uncertainty: ((height * half) / Math.sqrt(3)) as Length,
    tallest: (height * (1 + half)) as Length,
    lowest: (height * (1 - half)) as Length,
  };
}

function lossOf(work: Workings, given: RingSetQuestion, facts: RingFacts): { low: number; high: number; loss: number } {
  const { seatingLossLow: low, seatingLossHigh: high } = given;
  if (low !== undefined && high !== undefined) return { low, high, loss: work.step(lossGivenRule, [low, high], (low + high) / 2) };
  const manner = facts.seating.get(seatingOf(given));
  if (!manner) return { low: 0, high: 0, loss: 0 };
  return { low: manner.low, high: manner.high, loss: work.assume(manner.rule, (manner.low + manner.high) / 2) };
}
