import type { Conductance, Length } from "../units/index.ts";
import { type Band, rule, type Workings } from "../workings/index.ts";

export const shaftMaterials = ["steel", "stainless"] as const;
export type ShaftMaterial = (typeof shaftMaterials)[number];

const fromMemory = { source: "memory", at: "any text on heat transfer" } as const;

const conductivities = {
  steel: rule({
    id: "shaft-steel",
    name: "shaft-conductivity",
    symbol: "k",
    expression: "taken for carbon steel",
    unit: "W/(m*K)",
    inputs: [],
    citation: fromMemory,
    assumed: { min: 45, max: 60 },
  }),
  stainless: rule({
    id: "shaft-stainless",
    name: "shaft-conductivity",
    symbol: "k",
    expression: "taken for austenitic stainless steel",
    unit: "W/(m*K)",
    inputs: [],
    citation: fromMemory,
    assumed: { min: 14, max: 17 },
  }),
} as const;
const usualConductivity = { steel: 50, stainless: 16 } as const;

const airTaken = rule({
  id: "air-film-taken",
  symbol: "h_a",
  expression: "taken for a turning shaft in air",
  unit: "W/(m2*K)",
  inputs: [],
  citation: fromMemory,
  assumed: { min: 5, max: 30 },
});
const wetTaken = rule({
  id: "wet-film-taken",
  symbol: "h_w",
  expression: "taken for a turning shaft in liquid",
  unit: "W/(m2*K)",
  inputs: [],
  citation: fromMemory,
  assumed: { min: 500, max: 5000 },
});

function fin(id: string, symbol: string, h: string, name: string) {
  return rule({
    id,
    symbol,
    expression: `√(${h} · π · d · k · π · d² / 4)`,
    unit: "W/K",
    inputs: [
      { symbol: h, name, unit: "W/(m2*K)" },
      { symbol: "d", name: "shaft", unit: "m" },
      { symbol: "k", name: "shaft-conductivity", unit: "W/(m*K)" },
    ],
    citation: { source: "memory", at: "long fin, any text on heat transfer" },
  });
}
const airFin = fin("shaft-fin-air", "G_a", "h_a", "air-film-taken");
const wetFin = fin("shaft-fin-wet", "G_w", "h_w", "wet-film-taken");

const ends = {
  usual: sum("shaft-conductance", "G"),
  min: sum("shaft-conductance-lowest", "G_low"),
  max: sum("shaft-conductance-highest", "G_high"),
};
function sum(id: string, symbol: string) {
  return rule({
    id,
    symbol,
    expression: "G_a + G_w",
    unit: "W/K",
    inputs: [
      { symbol: "G_a", name: "shaft-fin-air", unit: "W/K" },
      { symbol: "G_w", name: "shaft-fin-wet", unit: "W/K" },
    ],
    citation: { source: "definition", at: "one way out along the shaft to the air, one into the liquid" },
  });
}

/** What the shaft alone leads away for each kelvin that the packing is warmer: to the air on one side, into the liquid on the other. */
export function shaftConductance(
  work: Workings,
  shaft: Length,
  material: ShaftMaterial | undefined,
): { readonly usual: Conductance; readonly band: Band<Conductance> } {
  const known = material ?? "steel";
  const k = work.assume(conductivities[known], usualConductivity[known]);
  const air = work.assume(airTaken, 15);
  const wet = work.assume(wetTaken, 2000);
  const along = (h: number, conductivity: number) => Math.sqrt((h * Math.PI * shaft * conductivity * Math.PI * shaft * shaft) / 4);
  const intoAir = work.step(airFin, [air, shaft, k], along(air, k));
  const intoLiquid = work.step(wetFin, [wet, shaft, k], along(wet, k));
  const end = (at: "min" | "max") => {
    const conductivity = conductivities[known].assumed?.[at] ?? k;
    const parts = [along(airTaken.assumed?.[at] ?? air, conductivity), along(wetTaken.assumed?.[at] ?? wet, conductivity)] as const;
    return work.step(ends[at], parts, (parts[0] + parts[1]) as Conductance);
  };
  return {
    usual: work.step(ends.usual, [intoAir, intoLiquid], (intoAir + intoLiquid) as Conductance),
    band: { low: end("min"), high: end("max") },
  };
}
