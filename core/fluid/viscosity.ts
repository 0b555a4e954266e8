import type { Density, Temperature, Viscosity } from "../units/index.ts";
import { criticalTemperature } from "./saturation.ts";

/** IAPWS R12-08, table 1: H0 to H3 of eq. 11. */
export const diluteTerms = [1.67752, 2.20462, 0.6366564, -0.241605] as const;

/** IAPWS R12-08, table 2: H[i][j] of eq. 12, i the power of 1/T - 1, j that of density - 1, both reduced. */
export const denseTerms = [
  [0.520094, 0.222531, -0.281378, 0.161913, -0.325372e-1, 0, 0],
  [0.850895e-1, 0.999115, -0.906851, 0.257399, 0, 0, 0],
  [-1.08374, 1.88797, -0.772479, 0, 0, 0, 0],
  [-0.289555, 1.26613, -0.489837, 0, 0.698452e-1, 0, -0.435673e-2],
  [0, 0, -0.25704, 0, 0, 0.872102e-2, 0],
  [0, 0.120573, 0, 0, 0, 0, -0.593264e-3],
] as const;

const criticalDensity = 322;

/**
 * Viscosity of water and steam from temperature and density, without the
 * enhancement at the critical point, which is nil for liquid in a stuffing box.
 *
 *   η = μ0(T) · exp(ρr Σ Hij (1/Tr - 1)^i (ρr - 1)^j) µPa·s
 *
 * Units: η Pa·s, T K, ρ kg/m3.
 * Range: liquid and steam, 273.15 to 1173.15 K; not checked here.
 * Source: IAPWS R12-08, eqs. 10 to 12, tables 1 and 2.
 */
export function viscosityAt(temperature: Temperature, density: Density): Viscosity {
  const reduced = temperature / criticalTemperature;
  const inverse = 1 / reduced;
  const [h0, h1, h2, h3] = diluteTerms;
  const dilute = (100 * Math.sqrt(reduced)) / (h0 + inverse * (h1 + inverse * (h2 + inverse * h3)));
  const x = inverse - 1;
  const thin = density / criticalDensity;
  const y = thin - 1;
  let sum = 0;
  for (let i = denseTerms.length - 1; i >= 0; i--) {
    const row = denseTerms[i] as (typeof denseTerms)[number];
    sum = sum * x + (row[0] + y * (row[1] + y * (row[2] + y * (row[3] + y * (row[4] + y * (row[5] + y * row[6]))))));
  }
  return (dilute * Math.exp(thin * sum) * 1e-6) as Viscosity;
}
