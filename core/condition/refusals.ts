import { notWithin, outside, type Range, type Refused, refuse, within } from "../workings/index.ts";
import type { ConditionFacts } from "./limits.ts";
import { type ConditionQuestion, type ConditionReading, conditionReadings } from "./question.ts";

const lengths: Range = { min: 0, max: 5 };
const sizes: Range = { min: Number.MIN_VALUE, max: 5 };
const hardnesses: Range = { min: 0, max: 1500 };
const sizeNames = ["shaft", "bore", "section"] as const satisfies readonly (keyof ConditionQuestion)[];

/** What in a survey cannot be worked with, by name. */
export function unusable(given: ConditionQuestion, items: ConditionFacts): Refused | undefined {
  return (
    oneOutside(given, sizeNames, sizes) ??
    oneOutside(given, conditionReadings, lengths) ??
    gapOutside(given) ??
    (given.uncertainties && spreadOutside(given.uncertainties)) ??
    (given.hardness === undefined ? undefined : notWithin("hardness", given.hardness, hardnesses, "1")) ??
    notFour(given) ??
    notLarger(given) ??
    unusableHouseLimit(given, items)
  );
}

function oneOutside(
  given: ConditionQuestion,
  names: readonly (ConditionReading | (typeof sizeNames)[number])[],
  range: Range,
): Refused | undefined {
  for (const name of names) {
    const value = given[name];
    const refused = value === undefined ? undefined : notWithin(name, value, range, "m");
    if (refused) return refused;
  }
  return undefined;
}

function gapOutside({ clockGaps = [] }: ConditionQuestion): Refused | undefined {
  for (let i = 0; i < clockGaps.length; i++) {
    const gap = clockGaps[i] ?? Number.NaN;
    const refused = within(lengths, gap) ? undefined : notWithin(`clockGaps[${i}]`, gap, lengths, "m");
    if (refused) return refused;
  }
  return undefined;
}

function spreadOutside(uncertainties: NonNullable<ConditionQuestion["uncertainties"]>): Refused | undefined {
  return outside(Object.entries(uncertainties).map(([name, u]) => [`uncertainties.${name}`, u, lengths, "m"] as const));
}

function notFour({ clockGaps }: ConditionQuestion): Refused | undefined {
  return clockGaps && clockGaps.length !== 4
    ? refuse({ kind: "impossible", input: "clockGaps", given: clockGaps.length, says: { id: "condition-four-gaps" } })
    : undefined;
}

function notLarger({ shaft, bore }: ConditionQuestion): Refused | undefined {
  if (shaft === undefined || bore === undefined || bore > shaft) return undefined;
  const shown = { shaft: { value: shaft, kind: "length" }, bore: { value: bore, kind: "length" } };
  return refuse({
    kind: "impossible",
    input: "bore",
    given: bore,
    allowed: { min: shaft, unit: "m" },
    says: { id: "bore-not-larger", with: shown },
  });
}

/** A house limit must be for a point that is measured, and say how much. */
function unusableHouseLimit(given: ConditionQuestion, items: ConditionFacts): Refused | undefined {
  const houses = given.houseLimits ?? [];
  for (let i = 0; i < houses.length; i++) {
    const house = houses[i];
    if (!house) continue;
    const item = items.find((one) => one.id === house.item && one.field !== undefined);
    if (!item) {
      const allowed = items.filter((one) => one.field !== undefined).map((one) => one.id);
      return refuse({
        kind: "not-known",
        input: `houseLimits[${i}].item`,
        given: house.item,
        allowed,
        says: { id: "condition-no-such-item", with: { item: house.item } },
      });
    }
    const name = item.unit === "m" ? "value" : "number";
    const value = house[name];
    const input = `houseLimits[${i}].${name}`;
    if (value === undefined)
      return refuse({ kind: "missing", input, says: { id: "condition-house-limit-empty", with: { item: house.item } } });
    const refused = outside([[input, value, { min: 0, max: item.unit === "m" ? 5 : 1500 }, item.unit]]);
    if (refused) return refused;
  }
  return undefined;
}
