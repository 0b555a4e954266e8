import { isStem, type Motion } from "../box/index.ts";
import type { Force, GaugePressure, Length, Stress, Torque } from "../units/index.ts";
import { type Answer, type Band, begin, outside, rule, type Workings } from "../workings/index.ts";
import { noAnnulus, packingArea } from "./annulus.ts";
import type { GlandFacts } from "./gland-facts.ts";
import { assumedNutFactor, type NutFactorGiven, nutFactorOf, scattered } from "./nut-condition.ts";
import { nutLoad } from "./nut-load.ts";
import { findThread, type Thread } from "./thread.ts";

const glandForceRule = rule({
  id: "gland-force",
  symbol: "F_g",
  expression: "σ_g · A",
  unit: "N",
  inputs: [
    { symbol: "σ_g", name: "gland-stress", unit: "Pa" },
    { symbol: "A", name: "packing-area", unit: "m2" },
  ],
  citation: { source: "definition" },
});

const pushOutRule = rule({
  id: "push-out-force",
  symbol: "F_o",
  expression: "p · A",
  unit: "N",
  inputs: [
    { symbol: "p", name: "box-pressure", unit: "Pa" },
    { symbol: "A", name: "packing-area", unit: "m2" },
  ],
  citation: { source: "mechanics", at: "box pressure on the bottom of the set, none of it taken by the walls" },
});

const flatRule = rule({
  id: "advance-per-flat",
  symbol: "a",
  expression: "P / 6",
  unit: "m",
  inputs: [{ symbol: "P", name: "thread-pitch", unit: "m" }],
  citation: { source: "geometry", at: "six flats to a turn" },
});

const flatShareRule = rule({
  id: "share-per-flat",
  symbol: "ε",
  expression: "a / L",
  unit: "1",
  inputs: [
    { symbol: "a", name: "advance-per-flat", unit: "m" },
    { symbol: "L", name: "set-height", unit: "m" },
  ],
  citation: { source: "definition" },
});

/** Below this nobody feels or holds a torque on a gland stud. */
const feltTorque = 5;

export interface GlandLoadGiven extends NutFactorGiven {
  readonly shaft: Length;
  readonly bore: Length;
  /** Axial stress that squeezes the packing under the follower. */
  readonly glandStress: Stress;
  readonly nuts: number;
  readonly thread: string;
  readonly boxPressure?: GaugePressure;
  /** Height of all rings, for the share of it that one flat takes. */
  readonly ringsHeight?: Length;
  readonly motion?: Motion;
}

export interface GlandLoad {
  /** On the packing: gland stress times area. */
  readonly force: Force;
  /** What box pressure adds on the nuts. */
  readonly pushOut: Force;
  /** Both together, shared by the nuts. */
  readonly perNut: Force;
  /** What a nut may really pull at that torque. */
  readonly perNutBand: Band<Force>;
  readonly torque: Torque;
  readonly advancePerFlat: Length;
  readonly sharePerFlat?: number;
}

/**
 * What a gland stress asks of the nuts, and what one flat of a nut does.
 *
 *   F = (σ_g A + p A) / z,   T = K_n F d,   a = P / 6
 *
 * Box pressure pushes the set out against the follower; the careful end is
 * taken, that the walls hold none of it, so it adds to what the nuts carry.
 * Pumps are set by flats, drip and temperature, never by this torque.
 *
 * Units: stress, pressure (gauge) Pa; force N; torque N*m; length m.
 * Range: 0 < shaft < bore ≤ 6 m, stress 0 to 1 GPa, pressure 0 to 100 MPa, 1 to 48 nuts, nut factor 0.02 to 1; refused outside.
 * A nut factor outside 0.1 to 0.3 and a torque under 5 N*m are flagged. Without nut factor or nut condition
 * the factor as received is assumed and said; for a stem, whose torque is set, it is `not-known`.
 * Source: packing maker's valve torque sheet of 1996 (torque), geometry, force balance.
 * @example glandLoad({ shaft, bore, glandStress, nuts: 2, thread: "M12", nutFactor: 0.2 }, facts)
 */
export function glandLoad(given: GlandLoadGiven, facts: GlandFacts): Answer<GlandLoad> {
  const { shaft, bore, glandStress, nuts, boxPressure } = given;
  const refused =
    noAnnulus(shaft, bore) ??
    outside([
      ["glandStress", glandStress, { min: 0, max: 1e9 }, "Pa"],
      ["nuts", nuts, { min: 1, max: 48 }, "1"],
      ["nutFactor", given.nutFactor ?? 0.2, { min: 0.02, max: 1 }, "1"],
      ["boxPressure", boxPressure ?? 0, { min: 0, max: 1e8 }, "Pa"],
      ["ringsHeight", given.ringsHeight ?? 1, { min: Number.MIN_VALUE, max: 10 }, "m"],
    ]);
  if (refused) return refused;
  const thread = findThread(given.thread, facts.threads);
  if (!thread.ok) return thread;
  const work = begin();
  const said = given.nutFactor !== undefined || given.nutCondition !== undefined;
  const torqueIsSet = given.motion !== undefined && isStem(given.motion);
  const factor = (said || torqueIsSet ? undefined : assumedNutFactor(work, facts.nutFactors)) ?? nutFactorOf(work, given, facts.nutFactors);
  if (!factor.ok) return factor;
  work.take(thread);
  const area = packingArea(work, shaft, bore);
  const force = work.step(glandForceRule, [glandStress, area], (glandStress * area) as Force);
  const pushOut = boxPressure === undefined ? (0 as Force) : work.step(pushOutRule, [boxPressure, area], (boxPressure * area) as Force);
  const nut = nutLoad(work, { force, pushOut, nuts, factor: factor.value, thread: thread.value });
  const perNutBand = scattered(work, nut.perNut, facts.nutFactors);
  const flat = flatOf(work, thread.value, given.ringsHeight);
  warnOfTorque(work, nut.torque, given.motion);
  if (pushOut > 0) work.warn({ kind: "note", input: "boxPressure", says: { id: "push-out-assumed" } });
  return work.found({ force, pushOut, ...nut, perNutBand, ...flat });
}

function flatOf(work: Workings, thread: Thread, ringsHeight: Length | undefined): Pick<GlandLoad, "advancePerFlat" | "sharePerFlat"> {
  const advancePerFlat = work.step(flatRule, [thread.pitch], (thread.pitch / 6) as Length);
  if (ringsHeight === undefined) return { advancePerFlat };
  return { advancePerFlat, sharePerFlat: work.step(flatShareRule, [advancePerFlat, ringsHeight], advancePerFlat / ringsHeight) };
}

function warnOfTorque(work: Workings, torque: Torque, motion: Motion | undefined): void {
  if (motion !== undefined && isStem(motion)) return;
  work.warn({ kind: "note", input: "glandStress", says: { id: "pump-gland-by-flats" } });
  if (torque < feltTorque) {
    const with_ = { torque: { value: torque, kind: "torque" }, felt: { value: feltTorque, kind: "torque", decimals: 0 } };
    work.warn({ kind: "note", input: "glandStress", says: { id: "torque-too-small", with: with_ }, citation: { source: "own-proposal" } });
  }
}
