import { type AbsolutePressure, quantity, type Temperature } from "../units/index.ts";

export const megapascal = quantity("absolute-pressure", 1, "MPa");
export const freezing = quantity("temperature", 0, "degC");
/** Critical point, IAPWS R7-97 eqs. 2 and 3. */
export const criticalTemperature = 647.096;
const criticalPressure = quantity("absolute-pressure", 22.064, "MPa");
/** Saturation pressure at 0 °C, where eq. 31 begins. */
const lowestSaturationPressure = quantity("absolute-pressure", 611.213, "Pa");

/** IAPWS R7-97, table 34: n1 to n10. */
export const saturationTerms = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7, 0.1491510861353e2,
  -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = saturationTerms;

/**
 * Pressure at which water boils at a temperature.
 *
 *   p = (2 C / (-B + √(B² - 4 A C)))⁴ MPa, with A, B, C quadratic in ϑ = T + n9 / (T - n10)
 *
 * Units: p Pa absolute, T K.
 * Range: 273.15 to 647.096 K; NaN outside.
 * Source: IAPWS R7-97(2012), region 4, eq. 30 and table 34.
 * @example saturationPressure(quantity("temperature", 100, "degC")) // 101418 Pa
 */
export function saturationPressure(temperature: Temperature): AbsolutePressure {
  if (!(temperature >= freezing && temperature <= criticalTemperature)) return Number.NaN as AbsolutePressure;
  const theta = temperature + n9 / (temperature - n10);
  const a = (theta + n1) * theta + n2;
  const b = (n3 * theta + n4) * theta + n5;
  const c = (n6 * theta + n7) * theta + n8;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  const square = root * root;
  return (square * square * megapascal) as AbsolutePressure;
}

/**
 * Temperature at which water boils at an absolute pressure.
 *
 *   T = (n10 + D - √((n10 + D)² - 4 (n9 + n10 D))) / 2, with D from β = (p / 1 MPa)^¼
 *
 * Units: T K, p Pa absolute.
 * Range: 611.213 Pa to 22.064 MPa; NaN outside.
 * Source: IAPWS R7-97(2012), region 4, eq. 31 and table 34.
 * @example saturationTemperature(quantity("absolute-pressure", 1, "MPa")) // 453.0356 K
 */
export function saturationTemperature(pressure: AbsolutePressure): Temperature {
  if (!(pressure >= lowestSaturationPressure && pressure <= criticalPressure)) return Number.NaN as Temperature;
  const beta = Math.sqrt(Math.sqrt(pressure / megapascal));
  const e = (beta + n3) * beta + n6;
  const f = (n1 * beta + n4) * beta + n7;
  const g = (n2 * beta + n5) * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n10 + d;
  return ((sum - Math.sqrt(sum * sum - 4 * (n9 + n10 * d))) / 2) as Temperature;
}
