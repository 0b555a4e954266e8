import type { Density, Length, PressureDifference, Viscosity, VolumeFlow } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import { waterDensity } from "./film-water.ts";

/** The gap between shaft and packing, taken as an annulus that is thin against its diameter. */
export interface Annulus {
  /** Of the shaft or sleeve. */
  readonly diameter: Length;
  readonly length: Length;
  readonly pressureDrop: PressureDifference;
  readonly viscosity: Viscosity;
  /** Offset of the shaft over the clearance: 0 centred, 1 touching. */
  readonly eccentricity: number;
  /** For the Reynolds number only; water at 20 °C when left out. */
  readonly density?: Density;
}

export const annulusRanges = {
  diameter: { min: 0.0005, max: 5 },
  clearance: { min: 0, max: 0.05 },
  length: { min: 0.0001, max: 10 },
  pressureDrop: { min: 0, max: 2e8 },
  viscosity: { min: 1e-6, max: 1e4 },
  eccentricity: { min: 0, max: 1 },
  flow: { min: 0, max: 1 },
  density: { min: 0.01, max: 25000 },
} as const;

/** The range checks of what every annulus question has. */
export function annulusChecks(given: Annulus) {
  const { diameter, length, pressureDrop, viscosity, eccentricity, density } = given;
  return [
    ["diameter", diameter, annulusRanges.diameter, "m"],
    ["length", length, annulusRanges.length, "m"],
    ["pressureDrop", pressureDrop, annulusRanges.pressureDrop, "Pa"],
    ["viscosity", viscosity, annulusRanges.viscosity, "Pa*s"],
    ["eccentricity", eccentricity, annulusRanges.eccentricity, "1"],
    ["density", density ?? annulusRanges.density.max, annulusRanges.density, "kg/m3"],
  ] as const;
}

/** π d (1 + 1.5 e²) Δp / (12 η L): the flow is this times the cube of the clearance. */
export function flowPerCube({ diameter, length, pressureDrop, viscosity, eccentricity }: Annulus): number {
  return (Math.PI * diameter * pressureDrop * (1 + 1.5 * eccentricity * eccentricity)) / (12 * viscosity * length);
}

const reynoldsRule = rule({
  id: "gap-reynolds",
  symbol: "Re",
  expression: "2 c V ρ / η = 2 ρ Q / (π d η), V = Q / (π d c)",
  unit: "1",
  inputs: [
    { symbol: "ρ", name: "density", unit: "kg/m3" },
    { symbol: "Q", name: "leak", unit: "m3/s" },
    { symbol: "d", name: "diameter", unit: "m" },
    { symbol: "η", name: "viscosity", unit: "Pa*s" },
  ],
  citation: { source: "definition", at: "on the hydraulic diameter of a thin gap, twice its height" },
});

const thinGapRule = rule({
  id: "thin-gap-shortfall",
  symbol: "δ",
  expression: "c / d",
  unit: "1",
  inputs: [
    { symbol: "c", name: "clearance", unit: "m" },
    { symbol: "d", name: "diameter", unit: "m" },
  ],
  citation: { source: "piercy-hooper-winny-1933", at: "exact series against the thin gap on the shaft's diameter" },
});

const assumedDensityRule = rule({
  id: "leak-density-assumed",
  name: "density",
  symbol: "ρ",
  expression: "water at 20 °C",
  unit: "kg/m3",
  inputs: [],
  citation: { source: "iapws-r7-97", at: "region 1" },
  assumed: { min: 700, max: 1300 },
});

/** Below this the flow in the gap is laminar and the formula holds. */
const laminarTo = 2000;
/** Share of the diameter from which a clearance is called wide: the thin-gap formula is then this much low. */
const thinTo = 0.02;

/** Notes Reynolds number and how far the thin-gap formula is off, and flags both where they pass what it holds for. */
export function checkValidity(work: Workings, given: Annulus, clearance: Length, flow: VolumeFlow): number {
  const { diameter, viscosity } = given;
  const density = given.density ?? work.assume(assumedDensityRule, waterDensity);
  const reynolds = work.step(reynoldsRule, [density, flow, diameter, viscosity], (2 * density * flow) / (Math.PI * diameter * viscosity));
  const shortfall = work.step(thinGapRule, [clearance, diameter], clearance / diameter);
  if (reynolds > laminarTo) {
    work.warn({
      kind: "outside-validity",
      input: "reynolds",
      given: reynolds,
      says: { id: "leak-not-laminar", with: { reynolds, limit: laminarTo } },
      citation: { source: "white-viscous-fluid-flow", at: "transition in channels and annuli", seen: "memory" },
    });
  }
  if (shortfall > thinTo) {
    work.warn({
      kind: "outside-validity",
      input: "clearance",
      given: clearance,
      says: { id: "leak-gap-not-thin", with: { percent: shortfall * 100 } },
      citation: thinGapRule.citation,
    });
  }
  return reynolds;
}
