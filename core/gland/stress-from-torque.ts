import type { Force, GaugePressure, Length, Stress, Torque } from "../units/index.ts";
import { type Answer, type Band, begin, outside, rule } from "../workings/index.ts";
import { noAnnulus, packingArea } from "./annulus.ts";
import type { GlandFacts } from "./gland-facts.ts";
import { type NutFactorGiven, nutFactorOf, scattered } from "./nut-condition.ts";
import { findThread } from "./thread.ts";

const pullRule = rule({
  id: "nut-pull",
  symbol: "F",
  name: "load-per-nut",
  expression: "T / (K_n d)",
  unit: "N",
  inputs: [
    { symbol: "T", name: "nut-torque", unit: "N*m" },
    { symbol: "K_n", name: "nut-factor", unit: "1", valid: { min: 0.1, max: 0.3 } },
    { symbol: "d", name: "thread-diameter", unit: "m" },
  ],
  citation: { source: "packing-torque-sheet-1996", at: "T = 0.2 F d / z, turned round" },
});

const stressRule = rule({
  id: "stress-from-pull",
  symbol: "σ_g",
  name: "gland-stress",
  expression: "z F / A − p",
  unit: "Pa",
  inputs: [
    { symbol: "z", name: "nuts", unit: "1" },
    { symbol: "F", name: "load-per-nut", unit: "N" },
    { symbol: "A", name: "packing-area", unit: "m2" },
    { symbol: "p", name: "box-pressure", unit: "Pa" },
  ],
  citation: { source: "mechanics", at: "what the nuts pull, less what box pressure takes of it" },
});

export interface StressFromTorque {
  readonly perNut: Force;
  /** Negative where box pressure pushes harder than the nuts pull. */
  readonly glandStress: Stress;
  /** By the scatter of torque tightening. */
  readonly glandStressBand: Band<Stress>;
}

/**
 * What a torque on each nut makes of gland stress, as a band: the nut factor
 * is never known well.
 *
 *   F = T / (K_n d),   σ_g = z F / A − p
 *
 * Units: torque N*m, force N, stress and pressure (gauge) Pa.
 * Range: as `glandLoad`, torque 0 to 100 kN*m; refused outside. A stress below 0 means that the set is pushed out, and is flagged.
 * Source: packing maker's valve torque sheet of 1996; scatter from a maintenance article on bolt torque.
 * @example stressFromTorque({ shaft, bore, nuts: 2, thread: "M16", torque, nutFactor: 0.2 }, facts)
 */
export function stressFromTorque(
  given: NutFactorGiven & {
    readonly shaft: Length;
    readonly bore: Length;
    readonly nuts: number;
    readonly thread: string;
    readonly torque: Torque;
    readonly boxPressure?: GaugePressure;
  },
  facts: GlandFacts,
): Answer<StressFromTorque> {
  const { shaft, bore, nuts, torque, boxPressure = 0 } = given;
  const refused =
    noAnnulus(shaft, bore) ??
    outside([
      ["nuts", nuts, { min: 1, max: 48 }, "1"],
      ["torque", torque, { min: 0, max: 1e5 }, "N*m"],
      ["nutFactor", given.nutFactor ?? 0.2, { min: 0.02, max: 1 }, "1"],
      ["boxPressure", boxPressure, { min: 0, max: 1e8 }, "Pa"],
    ]);
  if (refused) return refused;
  const thread = findThread(given.thread, facts.threads);
  if (!thread.ok) return thread;
  const work = begin();
  const factor = nutFactorOf(work, given, facts.nutFactors);
  if (!factor.ok) return factor;
  const { diameter } = work.take(thread);
  const area = packingArea(work, shaft, bore);
  const perNut = work.step(pullRule, [torque, factor.value, diameter], (torque / (factor.value * diameter)) as Force);
  const stress = (pull: Force) => work.step(stressRule, [nuts, pull, area, boxPressure], ((nuts * pull) / area - boxPressure) as Stress);
  const glandStress = stress(perNut);
  const pulls = scattered(work, perNut, facts.nutFactors);
  const glandStressBand = { low: stress(pulls.low), high: stress(pulls.high) };
  if (glandStressBand.low < 0) work.warn({ kind: "limit", input: "boxPressure", says: { id: "set-pushed-out" } });
  return work.found({ perNut, glandStress, glandStressBand });
}
