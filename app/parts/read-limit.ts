import type { parseQuantity } from "@ringwright/core/units";
import type { Measured } from "@ringwright/logbook";

/** A limit as typed: a length with its unit, or a plain number; nothing where it is neither, or not above nought. */
export function readLimit(
  typed: string,
  unit: "m" | "1",
  parse: (text: string) => ReturnType<typeof parseQuantity<"length">>,
): Measured | number | undefined {
  if (typed === "") return undefined;
  if (unit === "1") {
    const number = /^\d+(?:[.,]\d+)?$/u.test(typed) ? Number(typed.replace(",", ".")) : Number.NaN;
    return number > 0 ? number : undefined;
  }
  const read = parse(typed);
  if (!read.ok || !(read.quantity.value > 0)) return undefined;
  return { value: read.quantity.value, unit: "m", typed };
}
