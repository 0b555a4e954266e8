import { type AbsolutePressure, quantity, type Temperature } from "../units/index.ts";
import { freezing, megapascal, saturationPressure } from "./saturation.ts";

/** Gas constant of water, J/(kg K), IAPWS R7-97 eq. 1. */
export const gasConstant = 461.526;

/** Where regions 1 and 2 together reach, IAPWS R7-97 figure 1. */
export const temperatureRange = { min: freezing, max: quantity("temperature", 800, "degC") } as const;
/** The release starts above zero; below 1 Pa nothing here needs a figure. */
export const pressureRange = { min: quantity("absolute-pressure", 1, "Pa"), max: quantity("absolute-pressure", 100, "MPa") } as const;

/** Above this temperature liquid and steam meet in region 3, which is not covered. */
const region3From = quantity("temperature", 350, "degC");
const region3To = quantity("temperature", 590, "degC");

/** IAPWS R7-97, table 1, the coefficients of eq. 5. */
export const boundaryTerms = [0.34805185628969e3, -0.11671859879975e1, 0.10192970039326e-2] as const;

/** Highest pressure of region 2 at a temperature, IAPWS R7-97 eq. 5 between regions 2 and 3. */
export function highestSteamPressure(temperature: Temperature): AbsolutePressure {
  if (temperature > region3To) return pressureRange.max;
  if (temperature <= region3From) return saturationPressure(temperature);
  const [a, b, c] = boundaryTerms;
  return ((a + temperature * (b + c * temperature)) * megapascal) as AbsolutePressure;
}

/**
 * Liquid or steam, or neither: outside the release, or in its region 3 near
 * and above the critical point. On the saturation line: liquid.
 */
export function waterPhase(temperature: Temperature, pressure: AbsolutePressure): "liquid" | "steam" | undefined {
  if (!(temperature >= temperatureRange.min && temperature <= temperatureRange.max)) return undefined;
  if (!(pressure >= pressureRange.min && pressure <= pressureRange.max)) return undefined;
  if (temperature <= region3From) return pressure >= saturationPressure(temperature) ? "liquid" : "steam";
  return pressure <= highestSteamPressure(temperature) ? "steam" : undefined;
}
