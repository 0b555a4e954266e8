/**
 * When something applies: every named side of the case must have one of the
 * listed values. An empty condition always applies.
 */
export type When = Readonly<Record<string, readonly string[]>>;

/** The sides of a case, by name: how the shaft moves, whether product is toxic, what the old packing is. */
export type Sides = Readonly<Record<string, string>>;

/**
 * Whether any of several conditions holds. No condition at all holds always.
 *
 * Units: none.
 * Range: a side that the case does not have never holds.
 * Source: definition.
 * @example holds([{ motion: ["turning"] }], { motion: "turning" }) // true
 */
export function holds(when: readonly When[] | undefined, sides: Sides): boolean {
  if (when === undefined || when.length === 0) return true;
  for (const one of when) if (all(one, sides)) return true;
  return false;
}

function all(one: When, sides: Sides): boolean {
  for (const name in one) {
    const value = sides[name];
    if (value === undefined || !one[name]?.includes(value)) return false;
  }
  return true;
}
