import type { AbsolutePressure, Density, HeatCapacity, Temperature } from "../units/index.ts";
import { gibbsDerivatives, gibbsTerms } from "./gibbs-terms.ts";
import { gasConstant } from "./regions.ts";
import { megapascal } from "./saturation.ts";

/** IAPWS R7-97, table 10, ideal-gas part: J, n. */
export const idealSteamTerms = [
  [0, -9.6927686500217],
  [1, 10.086655968018],
  [-5, -0.5608791128302e-2],
  [-4, 0.71452738081455e-1],
  [-3, -0.40710498223928],
  [-2, 1.4240819171444],
  [-1, -4.383951131945],
  [2, -0.28408632460772],
  [3, 0.21268463753307e-1],
] as const;

/** IAPWS R7-97, table 11, residual part: I, J, n. */
export const steamTerms = gibbsTerms([
  [1, 0, -0.0017731742473213],
  [1, 1, -0.017834862292358],
  [1, 2, -0.045996013696365],
  [1, 3, -0.057581259083432],
  [1, 6, -0.05032527872793],
  [2, 1, -0.33032641670203e-4],
  [2, 2, -0.00018948987516315],
  [2, 4, -0.0039392777243355],
  [2, 7, -0.043797295650573],
  [2, 36, -0.26674547914087e-4],
  [3, 0, 0.20481737692309e-7],
  [3, 1, 0.43870667284435e-6],
  [3, 3, -0.3227767723857e-4],
  [3, 6, -0.0015033924542148],
  [3, 35, -0.040668253562649],
  [4, 1, -0.78847309559367e-9],
  [4, 2, 0.12790717852285e-7],
  [4, 3, 0.48225372718507e-6],
  [5, 7, 0.22922076337661e-5],
  [6, 3, -0.16714766451061e-10],
  [6, 16, -0.0021171472321355],
  [6, 35, -23.895741934104],
  [7, 0, -0.5905956432427e-17],
  [7, 11, -0.12621808899101e-5],
  [7, 25, -0.038946842435739],
  [8, 8, 0.11256211360459e-10],
  [8, 36, -8.2311340897998],
  [9, 13, 0.19809712802088e-7],
  [10, 4, 0.10406965210174e-18],
  [10, 10, -0.10234747095929e-12],
  [10, 14, -0.10018179379511e-8],
  [16, 29, -0.80882908646985e-10],
  [16, 50, 0.10693031879409],
  [18, 57, -0.33662250574171],
  [20, 20, 0.89185845355421e-24],
  [20, 35, 0.30629316876232e-12],
  [20, 48, -0.42002467698208e-5],
  [21, 21, -0.59056029685639e-25],
  [22, 53, 0.37826947613457e-5],
  [23, 39, -0.12768608934681e-14],
  [24, 26, 0.73087610595061e-28],
  [24, 40, 0.55414715350778e-16],
  [24, 58, -0.9436970724121e-6],
]);

const pressureScale = megapascal;
const temperatureScale = 540;

/** n J (J - 1) of the ideal-gas part, with its powers of tau one by one: J - 2 runs from -7 to 1. */
function idealSecondDerivative(tau: number): number {
  const t = 1 / tau;
  const [, , m5, m4, m3, m2, m1, two, three] = idealSteamTerms;
  const low = t * t * t * (2 * m1[1] + t * (6 * m2[1] + t * (12 * m3[1] + t * (20 * m4[1] + t * 30 * m5[1]))));
  return low + 2 * two[1] + 6 * three[1] * tau;
}

/** Density and heat capacity of steam, IAPWS R7-97 region 2, eqs. 15 to 17 and table 12. The caller has checked the region. */
export function steam(
  temperature: Temperature,
  pressure: AbsolutePressure,
): { readonly density: Density; readonly heatCapacity: HeatCapacity } {
  const tau = temperatureScale / temperature;
  const pi = pressure / pressureScale;
  const by = gibbsDerivatives(steamTerms, pi, tau - 0.5);
  return {
    density: (pressure / (gasConstant * temperature * (1 + pi * by.x))) as Density,
    heatCapacity: (-gasConstant * tau * tau * (idealSecondDerivative(tau) + by.yy)) as HeatCapacity,
  };
}
