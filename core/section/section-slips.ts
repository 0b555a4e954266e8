import { meantInstead, type PlausibleRanges, slips } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import { type Refused, refuse, type Warning } from "../workings/index.ts";

const length = (value: number) => ({ value, kind: "length" });

/** No gap is left: names both diameters, and what the bore may have been meant to be, where boxes are bored so. */
export function notLarger(shaft: Length, bore: Length, { bore: likely }: PlausibleRanges): Refused {
  const shown = { shaft: length(shaft), bore: length(bore) };
  const [meant] = meantInstead("length", bore, (other) => other > shaft && other < 3 * shaft && other <= likely.high);
  return refuse({
    kind: "impossible",
    input: "bore",
    given: bore,
    allowed: { min: shaft, unit: "m" },
    says:
      meant === undefined
        ? { id: "bore-not-larger", with: shown }
        : { id: "bore-not-larger-meant", with: { ...shown, meant: length(meant) } },
  });
}

const none: readonly Warning[] = [];

/**
 * Asks about shaft and bore; and where both look right but the gap does not,
 * about the one that would explain it. Never blocks.
 *
 *   s = (D − d) / 2 between the likely sections
 *
 * Units: lengths m.
 * Range: bore above shaft above 0; inside the likely ranges nothing is said.
 * Source: likely ranges are our own proposal; slips as `slips`.
 * @example slipsOfSection(quantity("length", 50, "mm"), quantity("length", 700, "mm"), quantity("length", 325, "mm"), facts.plausible) // asks whether the bore is 70 mm
 */
export function slipsOfSection(shaft: Length, bore: Length, section: Length, plausible: PlausibleRanges): readonly Warning[] {
  const ofShaft = slips({ field: "shaft", value: shaft }, plausible);
  const ofBore = slips({ field: "bore", value: bore }, plausible);
  if (ofShaft.length > 0 || ofBore.length > 0) return [...ofShaft, ...ofBore];
  const { low, high } = plausible.section;
  return section < low || section > high ? [slipOfGap(shaft, bore, section, low, high)] : none;
}

function slipOfGap(shaft: Length, bore: Length, section: Length, low: number, high: number): Warning {
  const fits = (gap: number) => gap >= low && gap <= high;
  const [boreMeant] = meantInstead("length", bore, (other) => fits((other - shaft) / 2));
  const [shaftMeant] = meantInstead("length", shaft, (other) => fits((bore - other) / 2));
  const shown = { section: length(section), low: length(low), high: length(high) };
  const slip = (input: "shaft" | "bore", value: Length, meant: number): Warning => ({
    kind: "slip",
    input,
    given: value,
    suggestion: meant,
    says: { id: "section-slip", with: { ...shown, input, given: length(value), suggestion: length(meant) } },
  });
  if (boreMeant !== undefined) return slip("bore", bore, boreMeant);
  if (shaftMeant !== undefined) return slip("shaft", shaft, shaftMeant);
  return { kind: "slip", input: "bore", given: bore, says: { id: "section-unlikely", with: shown } };
}

/** The readings are used; where the single value is more than a hundredth off them, that is said. */
export function notAmong(
  input: "shaft" | "bore",
  single: Length,
  readings: readonly Length[] | undefined,
  mean: Length,
): readonly Warning[] {
  if (!readings || Math.abs(single - mean) <= 0.01 * mean) return [];
  return [
    { kind: "note", input, given: single, says: { id: "readings-used", with: { input, single: length(single), mean: length(mean) } } },
  ];
}
