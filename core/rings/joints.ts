import { type Answer, begin, outside, rule, type Workings } from "../workings/index.ts";

export interface JointsQuestion {
  readonly rings: number;
  /** Clock hour of the first joint; 12, at the datum, when left out. */
  readonly first?: number;
  /** Hours from one joint to the next: 3 is 90°. */
  readonly step?: number;
}

const jointRule = rule({
  id: "joint-hour",
  symbol: "j_k",
  expression: "j_1 + (k − 1) · q, on a clock of 12",
  unit: "1",
  inputs: [
    { symbol: "j_1", name: "first", unit: "1" },
    { symbol: "k", name: "ring", unit: "1" },
    { symbol: "q", name: "step", unit: "1" },
  ],
  citation: { source: "axial-flow-pump-manual", at: "p. 80: 90 to 120° apart" },
});

const stepAssumed = rule({
  id: "joint-step",
  symbol: "q",
  name: "step",
  expression: "",
  unit: "1",
  inputs: [],
  citation: { source: "fsa-valve-compression-2016", at: "90 to 180° apart; 120° in a marine diesel text" },
  assumed: { min: 3, max: 6 },
});

/** Hours of one joint after another, without their limits checked. */
export function jointHours(work: Workings, rings: number, first: number, step: number): readonly number[] {
  const hours: number[] = [];
  for (let ring = 0; ring < rings; ring++) hours.push(work.step(jointRule, [first, ring + 1, step], ((first + ring * step + 11) % 12) + 1));
  return hours;
}

/** The usual step of 90°, noted as taken. */
export function usualStep(work: Workings): number {
  return work.assume(stepAssumed, 3);
}

/**
 * Where each joint goes, as clock hours seen facing the follower from the air
 * side, 12 at the box's datum, ring 1 at the throat: 12, 3, 6, 9, 12 ...
 *
 *   j_k = j_1 + (k − 1) · q, on a clock of 12
 *
 * Units: clock hours; one hour is 30°.
 * Range: rings 1 to 100, first 1 to 12, step 3 to 6 hours (90 to 180°); refused outside.
 * Source: axial-flow pump maker's manual, p. 80 (90 to 120°); FSA 2016 (90 to 180°).
 * @example joints({ rings: 5 }) // 12, 3, 6, 9, 12
 */
export function joints(given: JointsQuestion): Answer<{ readonly joints: readonly number[] }> {
  const { rings, first = 12 } = given;
  const refused = outside([
    ["rings", rings, { min: 1, max: 100 }, "1"],
    ["first", first, { min: 1, max: 12 }, "1"],
    ["step", given.step ?? 3, { min: 3, max: 6 }, "1"],
  ]);
  if (refused) return refused;
  const work = begin();
  const step = given.step ?? usualStep(work);
  return work.found({ joints: jointHours(work, rings, first, step) });
}
