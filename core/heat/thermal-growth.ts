import { type Length, quantity, type Temperature } from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse, rule } from "../workings/index.ts";
import type { ExpansionCurve } from "./expansion.ts";

export const growingPackings = ["ptfe", "flexible-graphite"] as const;
export const boxMaterials = ["carbon-steel", "austenitic-steel", "rigid"] as const;
export type GrowingPacking = (typeof growingPackings)[number];
export type BoxMaterial = (typeof boxMaterials)[number];

const temperatures = [
  { symbol: "T_1", name: "from", unit: "K" },
  { symbol: "T_2", name: "to", unit: "K" },
] as const;
const length = { symbol: "L", name: "packedLength", unit: "m" };
const packingStrain = { symbol: "ε_p", name: "packing-strain", unit: "1" };
const boxStrain = { symbol: "ε_b", name: "box-strain", unit: "1" };

const ptfeRule = rule({
  id: "ptfe-strain",
  name: "packing-strain",
  symbol: "ε_p",
  expression: "∫ α(T) dT from T_1 to T_2, straight lines between the table's values",
  unit: "1",
  inputs: temperatures,
  citation: { source: "martienssen-warlimont-2005", at: "Table 3.3-13, ten values under eleven temperatures, assigned so that known mean values come out" },
});
const graphiteRule = rule({
  id: "graphite-strain",
  name: "packing-strain",
  symbol: "ε_p",
  expression: "33e-6 · (T_2 − T_1), the most across the layers",
  unit: "1",
  inputs: temperatures,
  citation: { source: "cermak-2020", at: "up to 33e-6 per K through the sheet; low and negative in its plane" },
});
const boxRule = rule({
  id: "box-strain",
  symbol: "ε_b",
  expression: "α_b · (T_2 − T_1)",
  unit: "1",
  inputs: [{ symbol: "α_b", name: "boxMaterial", unit: "1/K" }, ...temperatures],
  citation: { source: "memory", at: "steel 11 to 12, austenitic steel 16 to 17, in 1e-6 per K" },
});
const boxExpansionTaken = rule({
  id: "box-expansion-taken",
  name: "boxMaterial",
  symbol: "α_b",
  expression: "carbon steel, taken for lack of word of the box",
  unit: "1/K",
  inputs: [],
  citation: { source: "memory", at: "steel 11 to 12, austenitic steel 16 to 17, in 1e-6 per K" },
  assumed: { min: 11e-6, max: 17e-6 },
});
const volumeRule = rule({
  id: "packing-volume-strain",
  symbol: "ΔV/V",
  expression: "(1 + ε_p)³ − 1",
  unit: "1",
  inputs: [packingStrain],
  citation: { source: "geometry" },
});
const freeRule = rule({
  id: "growth-free",
  symbol: "ΔL_free",
  expression: "L · (ε_p − ε_b)",
  unit: "m",
  inputs: [length, packingStrain, boxStrain],
  citation: { source: "geometry" },
});
const poissonTaken = rule({
  id: "poisson-taken",
  name: "poisson",
  symbol: "ν",
  expression: "taken for solid PTFE at room temperature",
  unit: "1",
  inputs: [],
  citation: { source: "zappe-1999", at: "p. 20, 0.46 at 23 °C and 0.36 at 100 °C" },
  assumed: { min: 0.36, max: 0.46 },
});
const confinedRule = rule({
  id: "growth-confined",
  symbol: "ΔL",
  expression: "L · (ε_p − ε_b) · (1 + ν) / (1 − ν)",
  unit: "m",
  inputs: [length, packingStrain, boxStrain, { symbol: "ν", name: "poisson", unit: "1" }],
  citation: { source: "mechanics", at: "elastic ring between walls that keep it from growing sideways; all of it comes out along the shaft" },
});
const flatsFreeRule = rule({
  id: "growth-free-flats",
  symbol: "flats_free",
  expression: "ΔL_free / (P / 6)",
  unit: "1",
  inputs: [
    { symbol: "ΔL_free", name: "growth-free", unit: "m" },
    { symbol: "P", name: "pitch", unit: "m" },
  ],
  citation: { source: "geometry", at: "a flat is a sixth of a turn" },
});
const flatsConfinedRule = rule({
  ...flatsFreeRule,
  id: "growth-confined-flats",
  symbol: "flats",
  expression: "ΔL / (P / 6)",
  inputs: [
    { symbol: "ΔL", name: "growth-confined", unit: "m" },
    { symbol: "P", name: "pitch", unit: "m" },
  ],
});

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
 * @example thermalGrowth({ packing: "ptfe", packedLength, from, to, pitch: quantity("length", 1.75, "mm") }, ptfe)
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
  ptfe: ExpansionCurve,
): Answer<ThermalGrowth> {
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
    return refuse({ kind: "not-known", input: "boxMaterial", given: boxMaterial, allowed: boxMaterials, says: { id: "box-material-unknown" } });
  }
  const work = begin();
  const strain =
    packing === "ptfe"
      ? work.step(ptfeRule, [from, to], ptfe.strainAt(to) - ptfe.strainAt(from))
      : work.step(graphiteRule, [from, to], graphiteExpansion * (to - from));
  const volumeStrain = work.step(volumeRule, [strain], (1 + strain) ** 3 - 1);
  const alpha = boxMaterial === undefined ? work.assume(boxExpansionTaken, 11.5e-6) : boxExpansion[boxMaterial];
  const wall = work.step(boxRule, [alpha, from, to], alpha * (to - from));
  const free = work.step(freeRule, [packedLength, strain, wall], (packedLength * (strain - wall)) as Length);
  const { pitch } = given;
  const flats = pitch === undefined ? {} : { freeFlats: work.step(flatsFreeRule, [free, pitch], free / (pitch / 6)) };
  if (packing !== "ptfe") {
    work.warn({ kind: "note", input: "packing", says: { id: "graphite-grows-at-most" }, citation: graphiteRule.citation });
    return work.found({ strain, volumeStrain, free, ...flats });
  }
  const nu = given.poisson ?? work.assume(poissonTaken, 0.46);
  const confined = work.step(confinedRule, [packedLength, strain, wall, nu], ((free * (1 + nu)) / (1 - nu)) as Length);
  const held = pitch === undefined ? {} : { confinedFlats: work.step(flatsConfinedRule, [confined, pitch], confined / (pitch / 6)) };
  if (confined > 0) work.warn({ kind: "note", says: { id: "ptfe-tightens-itself" }, citation: { source: "common-practice" } });
  return work.found({ strain, volumeStrain, free, confined, ...flats, ...held });
}
