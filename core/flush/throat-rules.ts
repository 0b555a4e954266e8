import { type PressureDifference, quantity, type Temperature } from "../units/index.ts";
import { rule } from "../workings/index.ts";

const book = (at: string) => ({ source: "lobanoff-ross", at: `pp. 237-238, ${at}` }) as const;
const shaft = { symbol: "d", name: "shaft", unit: "m" };
const clearance = { symbol: "c", name: "restriction-clearance", unit: "m" };
const length = { symbol: "L", name: "restriction-length", unit: "m" };
const drop = { symbol: "Δp", name: "pressureDrop", unit: "Pa" };
const density = { symbol: "ρ", name: "density", unit: "kg/m3" };
const viscosity = { symbol: "η", name: "viscosity", unit: "Pa*s" };
const velocity = { symbol: "V", name: "throat-velocity", unit: "m/s" };
const flow = { symbol: "Q", name: "throat-flow", unit: "m3/s" };

export const clearanceRule = rule({
  id: "throat-clearance",
  name: "restriction-clearance",
  symbol: "c",
  expression: "0.007 · d",
  unit: "m",
  inputs: [shaft],
  citation: book("throat restriction for slurry"),
});
export const lengthRule = rule({
  id: "throat-length",
  name: "restriction-length",
  symbol: "L",
  expression: "one width of packing",
  unit: "m",
  inputs: [{ symbol: "s", name: "section", unit: "m" }],
  citation: book("throat restriction for slurry"),
});
export const dropTaken = rule({
  id: "throat-drop-taken",
  name: "pressureDrop",
  symbol: "Δp",
  expression: "15 psi, as the book's chart is drawn",
  unit: "Pa",
  inputs: [],
  citation: book("fig. 13-6"),
  assumed: { min: quantity("pressure-difference", 0.35, "bar"), max: quantity("pressure-difference", 3.5, "bar") },
});
export const dropUsual: PressureDifference = quantity("pressure-difference", 15, "psi");
export const temperatureTaken = rule({
  id: "throat-temperature-taken",
  name: "temperature",
  symbol: "T",
  expression: "cold flush water, taken for lack of a reading",
  unit: "K",
  inputs: [],
  citation: { source: "own-proposal" },
  assumed: { min: quantity("temperature", 5, "degC"), max: quantity("temperature", 40, "degC") },
});
export const temperatureUsual: Temperature = quantity("temperature", 20, "degC");
export const laminarRule = rule({
  id: "throat-velocity-laminar",
  name: "throat-velocity",
  symbol: "V",
  expression: "c² · Δp / (12 · η · L)",
  unit: "m/s",
  inputs: [clearance, drop, viscosity, length],
  citation: { source: "white-viscous-fluid-flow", at: "narrow concentric gap, laminar", seen: "memory" },
});
export const turbulentRule = rule({
  id: "throat-velocity-turbulent",
  name: "throat-velocity",
  symbol: "V",
  expression: "from Δp = ρ · V² / 2 · (1.5 + f · L / (2 · c)), f = 0.316 · Re^−0.25, Re = 2 · c · V · ρ / η",
  unit: "m/s",
  inputs: [drop, density, length, clearance, viscosity],
  citation: { source: "memory", at: "entry and exit losses with Blasius friction, any text on hydraulics" },
});
export const reynoldsRule = rule({
  id: "throat-reynolds",
  symbol: "Re",
  expression: "2 · c · V · ρ / η",
  unit: "1",
  inputs: [clearance, velocity, density, viscosity],
  citation: { source: "definition" },
});
export const flowRule = rule({
  id: "throat-flow",
  symbol: "Q",
  expression: "π · d · c · V",
  unit: "m3/s",
  inputs: [shaft, clearance, velocity],
  citation: { source: "geometry", at: "velocity times the area of a narrow gap" },
});
export const weepRule = rule({
  id: "throat-weep",
  symbol: "Q_weep",
  expression: "0.05 · Q",
  unit: "m3/s",
  inputs: [flow],
  citation: book("a weep box passes about 5 % of a flush box"),
});
export const yearRule = rule({
  id: "throat-year",
  symbol: "V_year",
  expression: "Q · 8760 h",
  unit: "m3",
  inputs: [flow],
  citation: { source: "definition", at: "running all the year" },
});
