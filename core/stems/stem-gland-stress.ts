import type { GaugePressure, Stress } from "../units/index.ts";
import { outside, type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import { type StemFacts, type StemSet, stemSets } from "./stem-facts.ts";

const glandStressRule = rule({
  id: "stem-gland-stress",
  symbol: "σ_g",
  name: "gland-stress",
  expression: "max(σ_0, m p)",
  unit: "Pa",
  inputs: [
    { symbol: "σ_0", name: "stem-floor-stress", unit: "Pa" },
    { symbol: "m", name: "stem-times-pressure", unit: "1" },
    { symbol: "p", name: "pressure", unit: "Pa" },
  ],
  citation: { source: "packing-torque-sheet-1996", at: "load factor: a multiple of the pressure, not under a floor" },
});

/** Which of the two decides the gland stress. */
export const stemGovernors = ["floor", "pressure"] as const;
export type StemGovernor = (typeof stemGovernors)[number];

export interface StemStressGiven {
  readonly pressure: GaugePressure;
  /** Least gland stress. No default: from the set's own sheet, or by naming the `set`. */
  readonly floorStress?: Stress;
  /** Least gland stress over line pressure. No default, as `floorStress`. */
  readonly timesPressure?: number;
  /** A set whose printed load stands in for the two above, and is said. */
  readonly set?: StemSet;
}

type StemStress = { readonly ok: true; readonly glandStress: Stress; readonly governs: StemGovernor };

/** Gland stress by floor and multiple as given; what is missing comes from the named set, written down as taken from there. */
export function stemGlandStress(work: Workings, given: StemStressGiven, facts: StemFacts): Refused | StemStress {
  const { pressure, set } = given;
  const refused = outside([
    ["pressure", pressure, { min: 0, max: 1e8 }, "Pa"],
    ["floorStress", given.floorStress ?? 0, { min: 0, max: 5e8 }, "Pa"],
    ["timesPressure", given.timesPressure ?? 0, { min: 0, max: 10 }, "1"],
  ]);
  if (refused) return refused;
  const printed = set === undefined ? undefined : facts.sets.get(set);
  const floorStress = given.floorStress ?? (printed && work.assume(printed.floorRule, printed.floorStress));
  const timesPressure = given.timesPressure ?? (printed && work.assume(printed.timesRule, printed.timesPressure));
  if (floorStress === undefined || timesPressure === undefined) {
    return refuse({
      kind: "not-known",
      input: floorStress === undefined ? "floorStress" : "timesPressure",
      allowed: stemSets,
      says: { id: "stem-load-not-known" },
    });
  }
  const byPressure = timesPressure * pressure;
  const glandStress = work.step(glandStressRule, [floorStress, timesPressure, pressure], Math.max(floorStress, byPressure) as Stress);
  return { ok: true, glandStress, governs: byPressure > floorStress ? "pressure" : "floor" };
}
