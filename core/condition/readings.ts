import type { Instrument, Instruments } from "../uncertainty/index.ts";
import { rule, type Uncertain, type Workings } from "../workings/index.ts";
import type { BoxOffset } from "./clock-gaps.ts";
import type { Item } from "./limits.ts";
import type { ConditionQuestion, ConditionReading, ConditionSighting } from "./question.ts";
import type { Verdict } from "./verdict.ts";

const readingRule = rule({
  id: "reading-uncertainty",
  symbol: "u",
  expression: "√(r²/12 + a²/3)",
  unit: "m",
  inputs: [
    { symbol: "r", name: "resolution", unit: "m" },
    { symbol: "a", name: "limit-of-error", unit: "m" },
  ],
  citation: { source: "jcgm-100-2008", at: "F.2.2.1 and 4.3.7; r and a as usual for this way of measuring", seen: "memory" },
});
const shareRule = rule({
  id: "reading-uncertainty-share",
  symbol: "u",
  expression: "w x / √3",
  unit: "1",
  inputs: [
    { symbol: "w", name: "relative-error", unit: "1" },
    { symbol: "x", name: "reading", unit: "1" },
  ],
  citation: { source: "own-proposal", at: "a comparator or a portable tester, read in the field" },
});
const lengthShareRule = rule({
  ...shareRule,
  unit: "m",
  inputs: shareRule.inputs.map((input) => (input.symbol === "x" ? { ...input, unit: "m" } : input)),
});
/** The usual uncertainty of one reading taken so, noted in the workings. */
export function usual(work: Workings, { resolution, limitOfError }: Instrument): number {
  const u = Math.sqrt(resolution ** 2 / 12 + limitOfError ** 2 / 3);
  return work.step(readingRule, [resolution, limitOfError], u);
}

/** The reading for one point of the survey with its uncertainty, or nothing when it was not taken. */
export function readingOf(
  work: Workings,
  item: Item,
  given: ConditionQuestion,
  offset: BoxOffset | undefined,
  instruments: Instruments,
): Uncertain | undefined {
  const { field } = item;
  if (field === undefined) return undefined;
  if (field === "boxOffset") return offset?.offset;
  const value = given[field as ConditionReading | "hardness"];
  if (value === undefined) return undefined;
  const known = given.uncertainties?.[field as ConditionReading];
  if (known !== undefined) return { mean: value, u: known };
  if (item.relativeError !== undefined) {
    return {
      mean: value,
      u: work.step(
        item.unit === "m" ? lengthShareRule : shareRule,
        [item.relativeError, value],
        (item.relativeError * value) / Math.sqrt(3),
      ),
    };
  }
  return { mean: value, u: usual(work, instruments[item.how ?? "unknown"]) };
}

/** A verdict by what was seen, or that it was not looked at. */
export function seenVerdict(item: Item, given: ConditionQuestion, required: boolean): Verdict | undefined {
  const seen = item.seenField === undefined ? undefined : given.sightings?.[item.seenField as ConditionSighting];
  const verdicts = required ? item.bySight.required : item.bySight.optional;
  return verdicts.get(seen) ?? verdicts.get(undefined);
}
