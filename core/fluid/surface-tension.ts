import type { SurfaceTension, Temperature } from "../units/index.ts";
import { criticalTemperature } from "./saturation.ts";

/** IAPWS R1-76: B in N/m, exponent, b. */
export const tensionTerms = { scale: 235.8e-3, exponent: 1.256, slope: -0.625 } as const;

/**
 * Surface tension of water against its vapour.
 *
 *   σ = 0.2358 τ^1.256 (1 - 0.625 τ), τ = 1 - T / 647.096 K
 *
 * Units: σ N/m, T K.
 * Range: 273.15 to 647.096 K; not checked here.
 * Source: IAPWS R1-76(2014).
 */
export function surfaceTensionAt(temperature: Temperature): SurfaceTension {
  const tau = 1 - temperature / criticalTemperature;
  return (tensionTerms.scale * tau ** tensionTerms.exponent * (1 + tensionTerms.slope * tau)) as SurfaceTension;
}
