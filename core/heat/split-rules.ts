import { rule } from "../workings/index.ts";

const power = { symbol: "P", name: "power", unit: "W" };
const drip = { symbol: "Q", name: "drip", unit: "m3/s" };
const rise = { symbol: "ΔT", name: "rise", unit: "K" };
const perVolume = { symbol: "ρ·cp", name: "heat-capacity-of-volume", unit: "J/(m3*K)" };
const perKelvin = { symbol: "C", name: "drip-per-kelvin", unit: "W/K" };
const metal = { symbol: "G", name: "shaft-conductance", unit: "W/K" };
const balance = { source: "mechanics", at: "heat balance" } as const;

export const perKelvinRule = rule({
  id: "drip-per-kelvin",
  symbol: "C",
  expression: "ρ·cp · Q",
  unit: "W/K",
  inputs: [perVolume, drip],
  citation: balance,
});
export const dripPowerRule = rule({
  id: "drip-power",
  symbol: "P_drip",
  expression: "C · ΔT",
  unit: "W",
  inputs: [perKelvin, rise],
  citation: balance,
});
export const dripShareRule = rule({
  id: "drip-share-at-rise",
  symbol: "P_drip / P",
  expression: "P_drip / P",
  unit: "1",
  inputs: [{ symbol: "P_drip", name: "drip-power", unit: "W" }, power],
  citation: { source: "definition" },
});
export const restRule = rule({
  id: "rest-power",
  symbol: "P_rest",
  expression: "P − P_drip, not below 0",
  unit: "W",
  inputs: [power, { symbol: "P_drip", name: "drip-power", unit: "W" }],
  citation: balance,
});
export const adiabaticRule = rule({
  id: "adiabatic-rise",
  symbol: "ΔT_all",
  expression: "P / C",
  unit: "K",
  inputs: [power, perKelvin],
  citation: balance,
});
export const shareRule = rule({
  id: "drip-share",
  symbol: "x",
  expression: "C / (C + G)",
  unit: "1",
  inputs: [perKelvin, metal],
  citation: { source: "mechanics", at: "drip and shaft warmed by the same rise over the liquid" },
});
export const lowestShareRule = rule({ ...shareRule, id: "drip-share-lowest", symbol: "x_low" });
export const highestShareRule = rule({ ...shareRule, id: "drip-share-highest", symbol: "x_high" });
export const riseRule = rule({
  id: "packing-rise",
  symbol: "ΔT_p",
  expression: "P / (C + G)",
  unit: "K",
  inputs: [power, perKelvin, metal],
  citation: { source: "mechanics", at: "drip and shaft warmed by the same rise over the liquid" },
});
export const lowestRiseRule = rule({ ...riseRule, id: "packing-rise-lowest", symbol: "ΔT_p,low" });
export const highestRiseRule = rule({ ...riseRule, id: "packing-rise-highest", symbol: "ΔT_p,high" });
export const givenConductanceRule = rule({
  id: "given-conductance",
  name: "shaft-conductance",
  symbol: "G",
  expression: "as given",
  unit: "W/K",
  inputs: [metal],
  citation: { source: "definition" },
});
