import { findUnit, toSi } from "@ringwright/core/units";

/**
 * Facts are written in the units they are printed in, as `[0.002, "in"]`, so
 * that a reader can compare them with their source. Here they become SI.
 */
export function inSi(fact: unknown): unknown {
  if (Array.isArray(fact)) {
    const [value, unit] = fact as readonly unknown[];
    if (fact.length === 2 && typeof value === "number" && typeof unit === "string") {
      const found = findUnit(unit);
      const kind = found?.kinds[0];
      if (!found || !kind) throw new RangeError(`data/ holds ${value} ${unit}, which is no unit of the program`);
      return toSi(kind, value, found);
    }
    return fact.map(inSi);
  }
  if (typeof fact !== "object" || fact === null) return fact;
  return Object.fromEntries(Object.entries(fact).map(([name, entry]) => [name, inSi(entry)]));
}
