import type {
  AbsolutePressure,
  Density,
  HeatCapacity,
  KinematicViscosity,
  SurfaceTension,
  Temperature,
  Viscosity,
} from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse } from "../workings/index.ts";
import { highestSteamPressure, pressureRange, temperatureRange } from "./regions.ts";
import * as rules from "./rules.ts";
import { criticalTemperature, saturationPressure, saturationTemperature } from "./saturation.ts";
import { waterState } from "./state.ts";
import { surfaceTensionAt } from "./surface-tension.ts";

/** Water or steam at one temperature and pressure. */
export interface Water {
  readonly phase: "liquid" | "steam";
  readonly density: Density;
  readonly viscosity: Viscosity;
  readonly heatCapacity: HeatCapacity;
  /** Pressure at which it boils at this temperature; none above the critical point. */
  readonly saturationPressure?: AbsolutePressure;
  /** Temperature at which it boils at this pressure; none below the triple or above the critical point. */
  readonly saturationTemperature?: Temperature;
  /** Of the liquid. */
  readonly kinematicViscosity?: KinematicViscosity;
  /** Of the liquid against its vapour. */
  readonly surfaceTension?: SurfaceTension;
}

/** How near to boiling, as a share of the saturation pressure, a person is told that a hair decides the phase. */
const nearBoiling = 0.01;

function nearCritical(temperature: Temperature, pressure: AbsolutePressure): Refused {
  const highest = highestSteamPressure(temperature);
  const shown = { temperature: { value: temperature, kind: "temperature" }, highest: { value: highest, kind: "absolute-pressure" } };
  return refuse({
    kind: "outside-range",
    input: "pressure",
    given: pressure,
    allowed: { min: pressureRange.min, max: highest, unit: "Pa" },
    says: { id: "water-near-critical", with: shown },
    citation: { source: "iapws-r7-97", at: "region 3 and eq. 5" },
  });
}

/**
 * Properties of water or steam at a temperature and an absolute pressure.
 *
 *   ρ = p / (π γπ R T), cp = -R τ² γττ, η(T, ρ), ps(T), Ts(p), σ(T)
 *
 * Units: ρ kg/m3, η Pa·s, ν m2/s, cp J/(kg K), σ N/m; T K, p Pa above vacuum.
 * Range: 0 to 800 °C, 1 Pa to 100 MPa; refused outside, and in the region near and above the critical
 * point (above 350 °C at more than the pressure given in the refusal). On the saturation line: liquid.
 * Source: IAPWS R7-97(2012) regions 1, 2 and 4; IAPWS R12-08 without critical enhancement; IAPWS R1-76(2014).
 * @example water({ temperature: quantity("temperature", 20, "degC"), pressure: quantity("absolute-pressure", 0.101325, "MPa") }) // ρ 998.206, η 1.0016e-3
 */
export function water(given: { readonly temperature: Temperature; readonly pressure: AbsolutePressure }): Answer<Water> {
  const { temperature, pressure } = given;
  const refused = outside([
    ["temperature", temperature, temperatureRange, "K"],
    ["pressure", pressure, pressureRange, "Pa"],
  ]);
  if (refused) return refused;
  const state = waterState(temperature, pressure);
  if (!state) return nearCritical(temperature, pressure);
  const { phase } = state;
  const work = begin();
  const density = work.step(rules.densityRules[phase], [temperature, pressure], state.density);
  const viscosity = work.step(rules.viscosityRule, [temperature, density], state.viscosity);
  const heatCapacity = work.step(rules.heatCapacityRules[phase], [temperature, pressure], state.heatCapacity);
  const found: { -readonly [Name in keyof Water]: Water[Name] } = { phase, density, viscosity, heatCapacity };
  if (temperature <= criticalTemperature) {
    const boils = saturationPressure(temperature);
    found.saturationPressure = work.step(rules.saturationPressureRule, [temperature], boils);
    if (Math.abs(pressure / boils - 1) < nearBoiling) {
      work.warn({ kind: "note", input: "temperature", given: temperature, says: { id: "water-near-boiling", with: { phase } } });
    }
  }
  const boilsAt = saturationTemperature(pressure);
  if (boilsAt > 0) found.saturationTemperature = work.step(rules.saturationTemperatureRule, [pressure], boilsAt);
  if (phase === "liquid") {
    found.kinematicViscosity = work.step(rules.kinematicRule, [viscosity, density], (viscosity / density) as KinematicViscosity);
    found.surfaceTension = work.step(rules.surfaceTensionRule, [temperature], surfaceTensionAt(temperature));
  }
  return work.found<Water>(found);
}
