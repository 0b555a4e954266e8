import { rule } from "../workings/index.ts";

const shaft = { symbol: "d", name: "shaft", unit: "m" };
const bore = { symbol: "D", name: "bore", unit: "m" };
const length = { symbol: "L", name: "packedLength", unit: "m" };
const ratio = { symbol: "K", name: "ratio", unit: "1", valid: { min: 0, max: 1 } };
const speed = { symbol: "v", name: "surface-speed", unit: "m/s" };
const drag = { symbol: "F", name: "coulomb-drag", unit: "N" };

export const decayRule = rule({
  id: "running-decay",
  symbol: "b",
  expression: "4 · μ_o · K · D / (D² − d²)",
  unit: "1/m",
  inputs: [{ symbol: "μ_o", name: "frictionBore", unit: "1" }, ratio, bore, shaft],
  citation: { source: "mechanics", at: "axial balance of a slice of packing; on a turning shaft friction points round, not along" },
});

export const dragRule = rule({
  id: "coulomb-drag",
  symbol: "F",
  expression: "μ_d · K · σ_g · π · d · (1 − exp(−b · L)) / b",
  unit: "N",
  inputs: [
    { symbol: "μ_d", name: "frictionRunning", unit: "1" },
    ratio,
    { symbol: "σ_g", name: "glandStress", unit: "Pa" },
    shaft,
    { symbol: "b", name: "running-decay", unit: "1/m" },
    length,
  ],
  citation: { source: "mechanics", at: "friction times radial stress, summed over the shaft under the packing" },
});

export const torqueRule = rule({
  id: "coulomb-torque",
  symbol: "M",
  expression: "F · d / 2",
  unit: "N*m",
  inputs: [drag, shaft],
  citation: { source: "definition" },
});

export const coulombRule = rule({
  id: "coulomb-power",
  symbol: "P_C",
  expression: "F · v",
  unit: "W",
  inputs: [drag, speed],
  citation: { source: "definition" },
});

export const lowestRule = rule({ ...coulombRule, id: "coulomb-power-lowest", symbol: "P_C,low" });
export const highestRule = rule({ ...coulombRule, id: "coulomb-power-highest", symbol: "P_C,high" });

export const filmRule = rule({
  id: "film-power",
  symbol: "P_f",
  expression: "η · π · d · L · v² / c",
  unit: "W",
  inputs: [{ symbol: "η", name: "viscosity", unit: "Pa*s" }, shaft, length, speed, { symbol: "c", name: "clearance", unit: "m" }],
  citation: { source: "memory", at: "Petroff's equation, any text on journal bearings" },
});
