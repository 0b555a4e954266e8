import { rule } from "../workings/index.ts";

const temperatures = [
  { symbol: "T_1", name: "from", unit: "K" },
  { symbol: "T_2", name: "to", unit: "K" },
] as const;
const length = { symbol: "L", name: "packedLength", unit: "m" };
const packingStrain = { symbol: "ε_p", name: "packing-strain", unit: "1" };
const boxStrain = { symbol: "ε_b", name: "box-strain", unit: "1" };

export const ptfeRule = rule({
  id: "ptfe-strain",
  name: "packing-strain",
  symbol: "ε_p",
  expression: "∫ α(T) dT from T_1 to T_2, straight lines between the table's values",
  unit: "1",
  inputs: temperatures,
  citation: {
    source: "martienssen-warlimont-2005",
    at: "Table 3.3-13, ten values under eleven temperatures, assigned so that known mean values come out",
  },
});
export const graphiteRule = rule({
  id: "graphite-strain",
  name: "packing-strain",
  symbol: "ε_p",
  expression: "33e-6 · (T_2 − T_1), the most across the layers",
  unit: "1",
  inputs: temperatures,
  citation: { source: "cermak-2020", at: "up to 33e-6 per K through the sheet; low and negative in its plane" },
});
export const boxRule = rule({
  id: "box-strain",
  symbol: "ε_b",
  expression: "α_b · (T_2 − T_1)",
  unit: "1",
  inputs: [{ symbol: "α_b", name: "boxMaterial", unit: "1/K" }, ...temperatures],
  citation: { source: "memory", at: "steel 11 to 12, austenitic steel 16 to 17, in 1e-6 per K" },
});
export const boxExpansionTaken = rule({
  id: "box-expansion-taken",
  name: "boxMaterial",
  symbol: "α_b",
  expression: "carbon steel, taken for lack of word of the box",
  unit: "1/K",
  inputs: [],
  citation: { source: "memory", at: "steel 11 to 12, austenitic steel 16 to 17, in 1e-6 per K" },
  assumed: { min: 11e-6, max: 17e-6 },
});
export const volumeRule = rule({
  id: "packing-volume-strain",
  symbol: "ΔV/V",
  expression: "(1 + ε_p)³ − 1",
  unit: "1",
  inputs: [packingStrain],
  citation: { source: "geometry" },
});
export const freeRule = rule({
  id: "growth-free",
  symbol: "ΔL_free",
  expression: "L · (ε_p − ε_b)",
  unit: "m",
  inputs: [length, packingStrain, boxStrain],
  citation: { source: "geometry" },
});
export const poissonTaken = rule({
  id: "poisson-taken",
  name: "poisson",
  symbol: "ν",
  expression: "taken for solid PTFE at room temperature",
  unit: "1",
  inputs: [],
  citation: { source: "zappe-1999", at: "pp. 20-21, 0.46 at 23 °C and 0.36 at 100 °C" },
  assumed: { min: 0.36, max: 0.46 },
});
export const confinedRule = rule({
  id: "growth-confined",
  symbol: "ΔL",
  expression: "L · (ε_p − ε_b) · (1 + ν) / (1 − ν)",
  unit: "m",
  inputs: [length, packingStrain, boxStrain, { symbol: "ν", name: "poisson", unit: "1" }],
  citation: {
    source: "mechanics",
    at: "elastic ring between walls that keep it from growing sideways; all of it comes out along the shaft",
  },
});
export const flatsFreeRule = rule({
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
export const flatsConfinedRule = rule({
  ...flatsFreeRule,
  id: "growth-confined-flats",
  symbol: "flats",
  expression: "ΔL / (P / 6)",
  inputs: [
    { symbol: "ΔL", name: "growth-confined", unit: "m" },
    { symbol: "P", name: "pitch", unit: "m" },
  ],
});
