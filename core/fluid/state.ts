import type { AbsolutePressure, Density, HeatCapacity, Temperature, Viscosity } from "../units/index.ts";
import { liquidWater } from "./liquid-water.ts";
import { waterPhase } from "./regions.ts";
import { steam } from "./steam.ts";
import { viscosityAt } from "./viscosity.ts";

/** What a flow or heat calculation needs of water at one point. */
export interface WaterState {
  readonly phase: "liquid" | "steam";
  readonly density: Density;
  readonly viscosity: Viscosity;
  readonly heatCapacity: HeatCapacity;
}

/**
 * Density, viscosity and heat capacity of water or steam, without workings,
 * for calculations that need them many times over; `water` gives the same
 * figures with workings.
 *
 *   ρ = p / (π γπ R T), cp = -R τ² γττ, η(T, ρ)
 *
 * Units: ρ kg/m3, η Pa·s, cp J/(kg K); T K, p Pa absolute.
 * Range: 0 to 800 °C, 1 Pa to 100 MPa, less the region near and above the critical point; `undefined` outside.
 * Source: IAPWS R7-97(2012) regions 1, 2 and 4; IAPWS R12-08.
 * @example waterState(quantity("temperature", 20, "degC"), quantity("absolute-pressure", 1, "bar"))?.density // 998.2 kg/m3
 */
export function waterState(temperature: Temperature, pressure: AbsolutePressure): WaterState | undefined {
  const phase = waterPhase(temperature, pressure);
  if (phase === undefined) return undefined;
  const { density, heatCapacity } = phase === "liquid" ? liquidWater(temperature, pressure) : steam(temperature, pressure);
  return { phase, density, viscosity: viscosityAt(temperature, density), heatCapacity };
}
