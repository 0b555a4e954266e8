import { type Rule, rule } from "../workings/index.ts";

const temperature = { symbol: "T", name: "temperature", unit: "K" } as const;
const pressure = { symbol: "p", name: "pressure", unit: "Pa" } as const;
const density = { symbol: "ρ", name: "density", unit: "kg/m3" } as const;
const viscosity = { symbol: "η", name: "viscosity", unit: "Pa*s" } as const;

type PhaseRules = Readonly<Record<"liquid" | "steam", Rule>>;

export const densityRules: PhaseRules = {
  liquid: rule({
    id: "liquid-water-density",
    name: "density",
    symbol: "ρ",
    expression: "p / (π γπ(π, τ) R T), π = p / 16.53 MPa, τ = 1386 K / T",
    unit: "kg/m3",
    inputs: [temperature, pressure],
    citation: { source: "iapws-r7-97", at: "region 1, eq. 7, tables 2 and 3" },
  }),
  steam: rule({
    id: "steam-density",
    name: "density",
    symbol: "ρ",
    expression: "p / (π γπ(π, τ) R T), π = p / 1 MPa, τ = 540 K / T",
    unit: "kg/m3",
    inputs: [temperature, pressure],
    citation: { source: "iapws-r7-97", at: "region 2, eqs. 15 to 17, tables 10 to 14" },
  }),
};

export const heatCapacityRules: PhaseRules = {
  liquid: rule({
    id: "liquid-water-heat-capacity",
    name: "heat-capacity",
    symbol: "cp",
    expression: "-R τ² γττ(π, τ), π = p / 16.53 MPa, τ = 1386 K / T",
    unit: "J/(kg*K)",
    inputs: [temperature, pressure],
    citation: { source: "iapws-r7-97", at: "region 1, eq. 7, tables 2 and 3" },
  }),
  steam: rule({
    id: "steam-heat-capacity",
    name: "heat-capacity",
    symbol: "cp",
    expression: "-R τ² γττ(π, τ), π = p / 1 MPa, τ = 540 K / T",
    unit: "J/(kg*K)",
    inputs: [temperature, pressure],
    citation: { source: "iapws-r7-97", at: "region 2, eqs. 15 to 17, tables 10 to 14" },
  }),
};

export const viscosityRule = rule({
  id: "water-viscosity",
  name: "viscosity",
  symbol: "η",
  expression: "μ0(T) · μ1(T, ρ) · 1 µPa·s, no critical enhancement",
  unit: "Pa*s",
  inputs: [temperature, density],
  citation: { source: "iapws-r12-08", at: "eqs. 10 to 12, tables 1 and 2" },
});

export const kinematicRule = rule({
  id: "kinematic-viscosity",
  symbol: "ν",
  expression: "η / ρ",
  unit: "m2/s",
  inputs: [viscosity, density],
  citation: { source: "definition" },
});

export const surfaceTensionRule = rule({
  id: "surface-tension",
  symbol: "σ",
  expression: "0.2358 τ^1.256 (1 - 0.625 τ), τ = 1 - T / 647.096 K",
  unit: "N/m",
  inputs: [temperature],
  citation: { source: "iapws-r1-76" },
});

export const saturationPressureRule = rule({
  id: "saturation-pressure",
  symbol: "ps",
  expression: "(2 C / (-B + √(B² - 4 A C)))⁴ · 1 MPa; A, B, C quadratic in ϑ = T + n9 / (T - n10)",
  unit: "Pa",
  inputs: [temperature],
  citation: { source: "iapws-r7-97", at: "region 4, eq. 30, table 34" },
});

export const saturationTemperatureRule = rule({
  id: "saturation-temperature",
  symbol: "Ts",
  expression: "(n10 + D - √((n10 + D)² - 4 (n9 + n10 D))) / 2; D from β = (p / 1 MPa)^¼",
  unit: "K",
  inputs: [pressure],
  citation: { source: "iapws-r7-97", at: "region 4, eq. 31, table 34" },
});
