import { answerOf, type Plan } from "@ringwright/core/plan";
import { formatNumber, inUnit, type Length, quantity, type UnitSystem } from "@ringwright/core/units";
import { type BoxState, type FieldValue, type Measured, standing } from "@ringwright/logbook";

/** One field that a person settles otherwise. */
export interface Change {
  readonly field: string;
  readonly value: FieldValue;
}

/** Rings as they lie: those between throat and lantern ring, and those behind it. Without a lantern ring all are behind. */
export interface Counts {
  readonly below: number;
  readonly above: number;
  readonly lantern: boolean;
}

const mostRings = 40;

/** How many rings a plan has on each side of its lantern ring; none where the set is not known. */
export function countsOf(plan: Plan): Counts | undefined {
  const set = answerOf(plan.rings.set);
  if (!set) return undefined;
  const below = set.lantern?.afterRing ?? 0;
  return { below, above: set.rings.length - below, lantern: set.lantern !== undefined };
}

/** Other counts of rings as the fields that say them; none when there would be no ring left, or too many. */
export function ringsChanged(
  { below, above, lantern }: Counts,
  by: { readonly below?: number; readonly above?: number },
): readonly Change[] {
  const [under, over] = [below + (by.below ?? 0), above + (by.above ?? 0)];
  if (under < 0 || over < 0 || under + over < 1 || under + over > mostRings) return [];
  const rings: Change = { field: "set.rings", value: under + over };
  // The ring that comes or goes is on the side that was asked for: both counts are settled with it.
  return lantern ? [rings, { field: "lantern.ringsThroatSide", value: under }] : [rings];
}

/** Steps of a length that a person sets by eye: a millimetre, a sixteenth of an inch. */
const steps = { metric: quantity("length", 1, "mm"), inch: quantity("length", 1 / 16, "in") } as const;

/** A length one step longer or shorter, on whole steps, and never below nothing. */
export function lengthStepped(now: Length | undefined, by: 1 | -1, system: UnitSystem): Measured {
  const step = steps[system];
  const at = (now ?? 0) / step;
  const whole = by > 0 ? Math.floor(at + 1e-6) + 1 : Math.ceil(at - 1e-6) - 1;
  return lengthAs(Math.max(0, whole) * step, system);
}

/** A length as a person would have written it. */
export function lengthAs(metres: number, system: UnitSystem): Measured {
  if (system === "metric") return { value: metres, unit: "m", typed: `${trimmed(inUnit("length", metres as Length, "mm"))} mm` };
  const sixteenths = Math.round(inUnit("length", metres as Length, "in") * 16);
  const whole = Math.floor(sixteenths / 16);
  let [over, under] = [sixteenths % 16, 16];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const part = over === 0 ? "" : `${over}/${under}`;
  return { value: metres, unit: "m", typed: `${[whole > 0 || part === "" ? String(whole) : "", part].filter(Boolean).join(" ")} in` };
}

function trimmed(value: number): string {
  return formatNumber(value, 3).replace(/\.?0+$/u, "");
}

/** An angle of the cut as a person would have written it. */
export function angleAs(degrees: number): Measured {
  return { value: quantity("angle", degrees, "deg"), unit: "rad", typed: `${degrees}°` };
}

/** What stood before a change, so that it can be chosen again. */
export function before({ fields }: BoxState, changes: readonly Change[]): readonly Change[] {
  return changes.map(({ field }) => ({ field, value: standing(fields.get(field)) ?? null }));
}

/** Whether a person settled a field, rather than leaving it to be worked out. */
export function isSettled({ fields }: BoxState, field: string): boolean {
  const value = standing(fields.get(field));
  return value !== undefined && value !== null;
}
