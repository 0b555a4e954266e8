import { type AbsolutePressure, type GaugePressure, quantity } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";

const standardAtmosphere = quantity("absolute-pressure", 101.325, "kPa");

const atmosphereTaken = rule({
  id: "atmosphere-taken",
  name: "atmosphereAbsolute",
  symbol: "p_atm",
  expression: "one standard atmosphere, taken for lack of a barometer",
  unit: "Pa",
  inputs: [],
  citation: { source: "definition", at: "standard atmosphere; the low end of the spread is at 3000 m, from memory" },
  assumed: { min: quantity("absolute-pressure", 70, "kPa"), max: quantity("absolute-pressure", 105, "kPa") },
});

const absoluteRule = rule({
  id: "absolute-pressure",
  symbol: "p_abs",
  expression: "p + p_atm",
  unit: "Pa",
  inputs: [
    { symbol: "p", name: "boxPressureGauge", unit: "Pa" },
    { symbol: "p_atm", name: "atmosphereAbsolute", unit: "Pa" },
  ],
  citation: { source: "definition" },
});

/** Where an atmosphere can lie on land: from above the highest mine to above the highest peak. */
export const atmosphereRange = { min: quantity("absolute-pressure", 30, "kPa"), max: quantity("absolute-pressure", 130, "kPa") };

/**
 * A gauge pressure above vacuum, noted in the workings; without a barometer
 * one standard atmosphere is taken.
 *
 *   p_abs = p + p_atm
 *
 * Units: Pa.
 * Range: any; the caller refuses a result of zero or less and an atmosphere outside 30 to 130 kPa.
 * Source: definition.
 * @example absolutePressure(begin(), quantity("pressure", 0, "bar")) // 101325 Pa
 */
export function absolutePressure(work: Workings, gauge: GaugePressure, atmosphere?: AbsolutePressure): AbsolutePressure {
  const around = atmosphere ?? work.assume(atmosphereTaken, standardAtmosphere);
  return work.step(absoluteRule, [gauge, around], (gauge + around) as AbsolutePressure);
}
