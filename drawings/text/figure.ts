import { formatNumber, inUnit, type Length, type UnitSystem } from "@ringwright/core/units";

/**
 * A length as a dimension prints it, without its unit: in millimetres a whole
 * number when it is one, else with one decimal; in inches with three decimals,
 * which is what a caliper shows. By rule: whole millimetres, hundredths of an inch.
 */
export function figure(
  length: Length,
  system: UnitSystem,
  { diameter = false, byRule = false }: { readonly diameter?: boolean; readonly byRule?: boolean } = {},
): string {
  const value = inUnit("length", length, system === "metric" ? "mm" : "in");
  const whole = Math.abs(value - Math.round(value)) < 1e-6;
  const fine = system === "inch" ? 3 : diameter || !whole ? 1 : 0;
  const decimals = byRule ? (system === "inch" ? 2 : 0) : fine;
  return `${diameter ? "Ø" : ""}${formatNumber(value, decimals)}`;
}
