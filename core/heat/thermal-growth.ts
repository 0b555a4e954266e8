import { type Length, quantity, type Temperature } from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse } from "../workings/index.ts";
import { expansionCurve, type HeatFacts } from "./expansion.ts";
import * as rules from "./growth-rules.ts";

export const growingPackings = ["ptfe", "flexible-graphite"] as const;
export const boxMaterials = ["carbon-steel", "austenitic-steel", "rigid"] as const;
export type GrowingPacking = (typeof growingPackings)[number];
export type BoxMaterial = (typeof boxMaterials)[number];

const boxExpansion: Readonly<Record<BoxMaterial, number>> = { "carbon-steel": 11.5e-6, "austenitic-steel": 16.5e-6, rigid: 0 };
const graphiteExpansion = 33e-6;
/** Above this, flexible graphite begins to burn away in air (flexible graphite maker's sheet: from 450 °C). */
const graphiteTo = quantity("temperature", 450, "degC");
const graphiteFrom = quantity("temperature", -200, "degC");

export interface ThermalGrowth {
  /** Linear strain of the packing material. */
  readonly strain: number;
  readonly volumeStrain: number;
  /** Growth along the shaft beyond that of the box, free to grow sideways. */
  readonly free: Length;
  /** The same, held by shaft and bore; only for PTFE. */
  readonly confined?: Length;
  readonly freeFlats?: number;
  readonly confinedFlats?: number;
}

/**
 * How much a packing set grows along the shaft when it warms, beyond the
 * growth of the box, as a length and in flats of the gland nuts: between free
 * to grow sideways and wholly held by shaft and bore.
 *
 *   ε_p = ∫ α dT;  free L (ε_p − ε_b);  held L (ε_p − ε_b) (1 + ν) / (1 − ν)
 *
 * PTFE from a handbook table of its expansion, which smooths over the jumps at
 * 19 and 30 °C. Flexible graphite: the most it grows across its layers, so an
 * upper end. Box material left out: carbon steel. Poisson's ratio left out: 0.46 (0.36 to 0.46).
 *
 * Units: temperatures K, lengths m, pitch m a turn.
 * Range: PTFE −150 to 250 °C, flexible graphite −200 to 450 °C; packed length 0.5 mm to 5 m;
 * ν 0 to 0.49; pitch 0.1 to 20 mm. Refused outside.
 * Source: Springer Handbook of Condensed Matter and Materials Data, table 3.3-13; Cermak 2020; steel from memory.
 * @example thermalGrowth({ packing: "ptfe", packedLength, from, to, pitch: quantity("length", 1.75, "mm") }, facts.heat)
 */
export function thermalGrowth(
  given: {
    readonly packing: GrowingPacking;
    readonly packedLength: Length;
    readonly from: Temperature;
    readonly to: Temperature;
    readonly boxMaterial?: BoxMaterial;
    readonly poisson?: number;
    readonly pitch?: Length;
  },
  facts: HeatFacts,
): Answer<ThermalGrowth> {
  const ptfe = expansionCurve(facts.ptfeExpansion);
  const { packing, packedLength, from, to, boxMaterial } = given;
  const range = packing === "ptfe" ? { min: ptfe.from, max: ptfe.to } : { min: graphiteFrom, max: graphiteTo };
  const refused: Refused | undefined = outside([
    ["packedLength", packedLength, { min: 0.0005, max: 5 }, "m"],
    ["from", from, range, "K"],
    ["to", to, range, "K"],
    ["poisson", given.poisson ?? 0, { min: 0, max: 0.49 }, "1"],
    ["pitch", given.pitch ?? 0.001, { min: 0.0001, max: 0.02 }, "m"],
  ]);
  if (refused) return refused;
  if (boxMaterial !== undefined && !Object.hasOwn(boxExpansion, boxMaterial)) {
    return refuse({
      kind: "not-known",
      input: "boxMaterial",
      given: boxMaterial,
      allowed: boxMaterials,
      says: { id: "box-material-unknown" },
    });
  }
  const work = begin();
  const strain =
    packing === "ptfe"
      ? work.step(rules.ptfeRule, [from, to], ptfe.strainAt(to) - ptfe.strainAt(from))
      : work.step(rules.graphiteRule, [from, to], graphiteExpansion * (to - from));
  const volumeStrain = work.step(rules.volumeRule, [strain], (1 + strain) ** 3 - 1);
  const alpha = boxMaterial === undefined ? work.assume(rules.boxExpansionTaken, 11.5e-6) : boxExpansion[boxMaterial];
  const wall = work.step(rules.boxRule, [alpha, from, to], alpha * (to - from));
  const free = work.step(rules.freeRule, [packedLength, strain, wall], (packedLength * (strain - wall)) as Length);
  const { pitch } = given;
  const flats = pitch === undefined ? {} : { freeFlats: work.step(rules.flatsFreeRule, [free, pitch], free / (pitch / 6)) };
  if (packing !== "ptfe") {
    work.warn({ kind: "note", input: "packing", says: { id: "graphite-grows-at-most" }, citation: rules.graphiteRule.citation });
    return work.found({ strain, volumeStrain, free, ...flats });
  }
  const nu = given.poisson ?? work.assume(rules.poissonTaken, 0.46);
  const confined = work.step(rules.confinedRule, [packedLength, strain, wall, nu], ((free * (1 + nu)) / (1 - nu)) as Length);
  const held = pitch === undefined ? {} : { confinedFlats: work.step(rules.flatsConfinedRule, [confined, pitch], confined / (pitch / 6)) };
  if (confined > 0) work.warn({ kind: "note", says: { id: "ptfe-tightens-itself" }, citation: { source: "common-practice" } });
  return work.found({ strain, volumeStrain, free, confined, ...flats, ...held });
}
