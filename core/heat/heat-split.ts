import { atmosphereRange } from "../flush/index.ts";
import type { Conductance, Length, Power, TemperatureDifference, VolumeFlow } from "../units/index.ts";
import { type Answer, type Band, begin, outside, refuse } from "../workings/index.ts";
import { type CarryingLiquid, carriedHeat } from "./carried-heat.ts";
import { liquidLimits } from "./flush-flow.ts";
import { type ShaftMaterial, shaftConductance, shaftMaterials } from "./shaft-fin.ts";
import * as rules from "./split-rules.ts";

export interface HeatSplit {
  /** Whether the drip matters as a coolant: under a tenth of the heat, up to a half, more. */
  readonly dripCarries: "little" | "part" | "most";
  /** What the drip carries at the chosen rise. */
  readonly dripPower: Power;
  /** The same as a share of the power; above 1 the drip would warm less than chosen. None without power. */
  readonly dripShareAtRise?: number;
  /** What then is left for shaft, sleeve and box. */
  readonly restPower: Power;
  /** By how much the drip would warm if it carried all; none without a drip. */
  readonly adiabaticRise?: TemperatureDifference;
  /** What shaft, or all metal where given, leads away for each kelvin. */
  readonly conductance: Band<Conductance>;
  /** Share of the heat that goes with the drip when packing, shaft and drip warm alike. */
  readonly dripShare: Band;
  /** By how much the packing is warmer than the liquid then. */
  readonly packingRise: Band<TemperatureDifference>;
}

const littleBelow = 0.1;
const mostAbove = 0.5;

/**
 * Where the friction heat goes: with the drip, or through the metal. The shaft
 * is taken as two long fins, one in the liquid, one in the air; the box wall is
 * left out, so the true rise is lower. Tells whether the drip matters as a
 * coolant. It never gives a drip to aim for: the drip lubricates first.
 *
 *   P_drip = ρ cp Q ΔT;  ΔT_all = P / (ρ cp Q);  G = √(h π d k π d² / 4)
 *   share x = C / (C + G), rise ΔT_p = P / (C + G), with C = ρ cp Q
 *
 * Units: P W, Q m3/s, ΔT K, G W/K, d m.
 * Range: power 0 to 10 MW, drip 0 to 1 L/s, rise 0.01 to 500 K, shaft 1 mm to 5 m, given
 * conductance 0.001 to 1e5 W/K; refused outside. A drip that would have to boil is flagged.
 * Source: heat balance and fin, derived here and from memory; water by IAPWS R7-97.
 * @example heatSplit({ power, drip: quantity("flow", 3, "mL/min"), rise, temperature, shaft }) // little
 */
export function heatSplit(
  given: CarryingLiquid & {
    readonly power: Power;
    readonly drip: VolumeFlow;
    readonly rise: TemperatureDifference;
    readonly shaft: Length;
    readonly shaftMaterial?: ShaftMaterial;
    readonly wallConductance?: Conductance;
  },
): Answer<HeatSplit> {
  const { power, drip, rise, shaft, wallConductance } = given;
  const refused = outside([
    ["power", power, { min: 0, max: 1e7 }, "W"],
    ["drip", drip, { min: 0, max: 0.001 }, "m3/s"],
    ["rise", rise, { min: 0.01, max: 500 }, "K"],
    ["shaft", shaft, { min: 0.001, max: 5 }, "m"],
    ["temperature", given.temperature, liquidLimits.temperature, "K"],
    ["wallConductance", wallConductance ?? 1, { min: 0.001, max: 1e5 }, "W/K"],
    ["boxPressureGauge", given.boxPressureGauge ?? 0, liquidLimits.pressure, "Pa"],
    ["atmosphereAbsolute", given.atmosphereAbsolute ?? atmosphereRange.max, atmosphereRange, "Pa"],
    ["density", given.density ?? 1000, liquidLimits.density, "kg/m3"],
    ["heatCapacity", given.heatCapacity ?? 4000, liquidLimits.heatCapacity, "J/(kg*K)"],
  ]);
  if (refused) return refused;
  if (given.shaftMaterial !== undefined && !shaftMaterials.includes(given.shaftMaterial)) {
    const allowed = shaftMaterials;
    return refuse({
      kind: "not-known",
      input: "shaftMaterial",
      given: given.shaftMaterial,
      allowed,
      says: { id: "shaft-material-unknown" },
    });
  }
  const work = begin();
  const liquid = carriedHeat(work, given);
  if ("ok" in liquid) return liquid;
  const C = work.step(rules.perKelvinRule, [liquid.perVolume, drip], liquid.perVolume * drip);
  const dripPower = work.step(rules.dripPowerRule, [C, rise], (C * rise) as Power);
  const restPower = work.step(rules.restRule, [power, dripPower], Math.max(0, power - dripPower) as Power);
  const atRise = power > 0 ? { dripShareAtRise: work.step(rules.dripShareRule, [dripPower, power], dripPower / power) } : {};
  const alone = C > 0 ? { adiabaticRise: work.step(rules.adiabaticRule, [power, C], (power / C) as TemperatureDifference) } : {};

  const G = wallConductance === undefined ? shaftConductance(work, shaft, given.shaftMaterial) : undefined;
  const usual = G?.usual ?? work.step(rules.givenConductanceRule, [wallConductance ?? Number.NaN], wallConductance as Conductance);
  const conductance = G?.band ?? { low: usual, high: usual };
  const share = work.step(rules.shareRule, [C, usual], C / (C + usual));
  const dripShare = {
    low: work.step(rules.lowestShareRule, [C, conductance.high], C / (C + conductance.high)),
    high: work.step(rules.highestShareRule, [C, conductance.low], C / (C + conductance.low)),
  };
  const riseOf = (g: number) => (power / (C + g)) as TemperatureDifference;
  work.step(rules.riseRule, [power, C, usual], riseOf(usual));
  const packingRise = {
    low: work.step(rules.lowestRiseRule, [power, C, conductance.high], riseOf(conductance.high)),
    high: work.step(rules.highestRiseRule, [power, C, conductance.low], riseOf(conductance.low)),
  };

  const dripCarries = share < littleBelow ? "little" : share > mostAbove ? "most" : "part";
  if (dripCarries === "little") work.warn({ kind: "note", input: "drip", says: { id: "drip-carries-little" } });
  const boilsAbove = liquid.boils === undefined ? Infinity : liquid.boils - given.temperature;
  if ((alone.adiabaticRise ?? 0) >= boilsAbove) {
    const with_ = { rise: { value: alone.adiabaticRise ?? 0, kind: "temperature-difference" } };
    work.warn({ kind: "note", input: "drip", says: { id: "drip-cannot-carry-all", with: with_ } });
  }
  if (packingRise.high >= boilsAbove) {
    work.warn({
      kind: "limit",
      input: "power",
      given: power,
      says: { id: "packing-may-boil", with: { rise: { value: boilsAbove, kind: "temperature-difference" } } },
    });
  }
  if (!wallConductance) work.warn({ kind: "note", says: { id: "box-wall-left-out" } });
  work.warn({ kind: "note", input: "drip", says: { id: "never-a-drip-for-heat" } });
  return work.found<HeatSplit>({ dripCarries, dripPower, ...atRise, restPower, ...alone, conductance, dripShare, packingRise });
}
