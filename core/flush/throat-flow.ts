import { water } from "../fluid/index.ts";
import {
  type AbsolutePressure,
  type Density,
  type Length,
  type PressureDifference,
  quantity,
  type Speed,
  type Temperature,
  type Viscosity,
  type Volume,
  type VolumeFlow,
} from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse, type Workings } from "../workings/index.ts";
import * as rules from "./throat-rules.ts";

export const flowRegimes = ["laminar", "between", "turbulent"] as const;

export interface ThroatFlow {
  readonly flow: VolumeFlow;
  /** What a box of the weep kind would take. */
  readonly weep: VolumeFlow;
  readonly clearance: Length;
  readonly length: Length;
  readonly velocity: Speed;
  readonly reynolds: number;
  readonly regime: (typeof flowRegimes)[number];
  /** Running all the year. */
  readonly year: Volume;
}

/** Of all that is worked out of water, what is used here. */
const used: ReadonlySet<string> = new Set(["density", "viscosity"]);

const laminarTo = 2000;
const turbulentFrom = 3000;
const year = quantity("time", 8760, "h");
const standardAtmosphere = quantity("absolute-pressure", 101.325, "kPa");

/**
 * Flush that passes a throat restriction into a slurry pump: radial gap 0.007
 * of the sleeve and one packing width long unless given. An order of
 * magnitude; the printed chart was not seen.
 *
 *   laminar V = c² Δp / (12 η L); turbulent Δp = ρ V² / 2 (1.5 + f L / (2 c)), f = 0.316 Re^-0.25
 *
 * Units: lengths m, Δp Pa, V m/s, Q m3/s.
 * Range: shaft 1 mm to 5 m, section 1 to 100 mm, clearance 1 µm to 50 mm, length 0.5 mm to 1 m,
 * pressure drop 1 Pa to 100 MPa; refused outside. Between Re 2000 and 3000 neither law holds: flagged.
 * Source: Lobanoff and Ross, pp. 237-238; flow laws from memory; water by IAPWS.
 * @example throatFlow({ shaft: quantity("length", 2, "in"), section: quantity("length", 0.375, "in") }) // about 9 gal/min
 */
export function throatFlow(given: {
  readonly shaft: Length;
  readonly section: Length;
  readonly clearance?: Length;
  readonly length?: Length;
  readonly pressureDrop?: PressureDifference;
  readonly temperature?: Temperature;
  readonly viscosity?: Viscosity;
  readonly density?: Density;
}): Answer<ThroatFlow> {
  const { shaft, section } = given;
  const refused = outside([
    ["shaft", shaft, { min: 0.001, max: 5 }, "m"],
    ["section", section, { min: 0.001, max: 0.1 }, "m"],
    ["clearance", given.clearance ?? 0.001, { min: 1e-6, max: 0.05 }, "m"],
    ["length", given.length ?? 0.01, { min: 0.0005, max: 1 }, "m"],
    ["pressureDrop", given.pressureDrop ?? 1, { min: 1, max: 1e8 }, "Pa"],
    ["viscosity", given.viscosity ?? 1, { min: 1e-6, max: 1000 }, "Pa*s"],
    ["density", given.density ?? 1000, { min: 1, max: 20000 }, "kg/m3"],
  ]);
  if (refused) return refused;
  const work = begin();
  const c = given.clearance ?? work.step(rules.clearanceRule, [shaft], (0.007 * shaft) as Length);
  const length = given.length ?? work.step(rules.lengthRule, [section], section);
  const drop = given.pressureDrop ?? work.assume(rules.dropTaken, rules.dropUsual);
  const liquid = liquidOf(work, given);
  if ("ok" in liquid) return liquid;
  const { density, viscosity } = liquid;

  const laminar = ((c * c * drop) / (12 * viscosity * length)) as Speed;
  const reynoldsAt = (v: number) => (2 * c * v * density) / viscosity;
  const isLaminar = reynoldsAt(laminar) <= laminarTo;
  const velocity = isLaminar
    ? work.step(rules.laminarRule, [c, drop, viscosity, length], laminar)
    : work.step(rules.turbulentRule, [drop, density, length, c, viscosity], turbulentVelocity(drop, density, length, c, viscosity));
  const reynolds = work.step(rules.reynoldsRule, [c, velocity, density, viscosity], reynoldsAt(velocity));
  const regime = isLaminar ? "laminar" : reynolds < turbulentFrom ? "between" : "turbulent";
  const flow = work.step(rules.flowRule, [shaft, c, velocity], (Math.PI * shaft * c * velocity) as VolumeFlow);
  const weep = work.step(rules.weepRule, [flow], (0.05 * flow) as VolumeFlow);
  const perYear = work.step(rules.yearRule, [flow], (flow * year) as Volume);
  if (regime === "between")
    work.warn({ kind: "outside-validity", input: "reynolds", given: reynolds, says: { id: "throat-flow-between" } });
  work.warn({ kind: "note", says: { id: "throat-flow-order-only" }, citation: rules.clearanceRule.citation });
  return work.found<ThroatFlow>({ flow, weep, clearance: c, length, velocity, reynolds, regime, year: perYear });
}

function liquidOf(
  work: Workings,
  given: { readonly temperature?: Temperature; readonly viscosity?: Viscosity; readonly density?: Density },
): { readonly density: Density; readonly viscosity: Viscosity } | Refused {
  const { density, viscosity } = given;
  if (density !== undefined && viscosity !== undefined) return { density, viscosity };
  if (density !== undefined || viscosity !== undefined) {
    return refuse({ kind: "not-known", input: density === undefined ? "density" : "viscosity", says: { id: "density-and-viscosity" } });
  }
  const temperature = given.temperature ?? work.assume(rules.temperatureTaken, rules.temperatureUsual);
  const found = water({ temperature, pressure: standardAtmosphere as AbsolutePressure });
  if (!found.ok) return found;
  const liquid = work.take(found, ([{ id, name }]) => used.has(name ?? id));
  if (liquid.phase === "liquid") return liquid;
  return refuse({ kind: "impossible", input: "temperature", given: temperature, says: { id: "throat-water-boils" } });
}

/**
 * Velocity at which entry, exit and friction use up the pressure drop. The
 * right-hand side rises ever faster with V, so Newton's method from the
 * frictionless velocity comes down to the root and never passes it.
 */
function turbulentVelocity(drop: number, density: number, length: number, c: number, viscosity: number): Speed {
  const friction = (0.316 * length * ((2 * c * density) / viscosity) ** -0.25) / (2 * c);
  const target = (2 * drop) / density;
  let v = Math.sqrt(target / 1.5);
  for (let i = 0; i < 30; i++) {
    const excess = 1.5 * v * v + friction * v ** 1.75 - target;
    const next = v - excess / (3 * v + 1.75 * friction * v ** 0.75);
    if (Math.abs(next - v) <= 1e-14 * v) return next as Speed;
    v = next;
  }
  return v as Speed;
}
