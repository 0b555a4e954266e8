import { outside, type Refused, refuse } from "../workings/index.ts";
import type { ConditionFacts } from "./limits.ts";
import { type ConditionQuestion, conditionReadings } from "./question.ts";

/** What in a survey cannot be worked with, by name. */
export function unusable(given: ConditionQuestion, items: ConditionFacts): Refused | undefined {
  const length = { min: 0, max: 5 };
  const positive = { min: Number.MIN_VALUE, max: 5 };
  const named = conditionReadings.flatMap((name) => (given[name] === undefined ? [] : [[name, given[name], length, "m"] as const]));
  const sizes = (["shaft", "bore", "section"] as const).flatMap((name) =>
    given[name] === undefined ? [] : [[name, given[name], positive, "m"] as const],
  );
  const gaps = (given.clockGaps ?? []).map((gap, i) => [`clockGaps[${i}]`, gap, length, "m"] as const);
  const spreads = Object.entries(given.uncertainties ?? {}).map(([name, u]) => [`uncertainties.${name}`, u, length, "m"] as const);
  const hardness = given.hardness === undefined ? [] : [["hardness", given.hardness, { min: 0, max: 1500 }, "1"] as const];
  const refused = outside([...sizes, ...named, ...gaps, ...spreads, ...hardness]);
  if (refused) return refused;
  if (given.clockGaps && given.clockGaps.length !== 4) {
    return refuse({ kind: "impossible", input: "clockGaps", given: given.clockGaps.length, says: { id: "condition-four-gaps" } });
  }
  return notLarger(given) ?? unusableHouseLimit(given, items);
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
  for (const [i, house] of (given.houseLimits ?? []).entries()) {
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
