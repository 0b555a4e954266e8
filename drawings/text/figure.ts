import { formatNumber, inUnit, type Length, type UnitSystem } from "@ringwright/core/units";

/**
 * A length as a dimension prints it, without its unit: in millimetres a whole
 * number when it is one, else with one decimal; in inches with three decimals,
 * which is what a caliper shows.
 */
export function figure(length: Length, system: UnitSystem, diameter: boolean): string {
  const value = inUnit("length", length, system === "metric" ? "mm" : "in");
  const whole = Math.abs(value - Math.round(value)) < 1e-6;
  const decimals = system === "inch" ? 3 : diameter || !whole ? 1 : 0;
  return `${diameter ? "Ø" : ""}${formatNumber(value, decimals)}`;
}
