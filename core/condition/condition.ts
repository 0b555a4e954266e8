import type { Motion } from "../box/index.ts";
import { type PlausibleField, slips, type UncertaintyFacts } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import { type Answer, begin, rule, type Workings } from "../workings/index.ts";
import { agreement } from "./agreement.ts";
import { type BoxOffset, boxOffset, type FourGaps } from "./clock-gaps.ts";
import { type Basis, judge } from "./judge.ts";
import type { ConditionFacts, Item } from "./limits.ts";
import type { ConditionQuestion } from "./question.ts";
import { readingOf, seenVerdict, usual } from "./readings.ts";
import { unusable } from "./refusals.ts";
import type { Verdict, VerdictWord } from "./verdict.ts";

export interface Condition {
  readonly verdicts: readonly Verdict[];
  /** The gravest of the verdicts that were reached. */
  readonly overall: VerdictWord;
  /** What has to be looked at before this box is packed, and was not. */
  readonly missing: readonly string[];
  readonly offset?: BoxOffset;
}

const sectionOfBoxRule = rule({
  id: "section-of-box",
  symbol: "s",
  expression: "(D - d) / 2",
  unit: "m",
  inputs: [
    { symbol: "D", name: "bore", unit: "m" },
    { symbol: "d", name: "shaft", unit: "m" },
  ],
  citation: { source: "geometry" },
});
/** Readings that a slip of the pen would carry out of any belief. */
const asked = [
  ["shaft", "shaft"],
  ["bore", "bore"],
  ["section", "section"],
  ["shaftLift", "lift"],
  ["endFloat", "lift"],
  ["runout", "runout"],
  ["followerClearance", "clearance"],
  ["throatClearance", "clearance"],
  ["boxDepth", "depth"],
] as const satisfies readonly (readonly [keyof ConditionQuestion, PlausibleField])[];

/**
 * What state the box is in: a verdict for each point of the survey, with the
 * limits that are published or in use, how they split, what the site has set,
 * and what to do. A reading too close to a limit to be told from it, and one
 * that was not taken, are answers.
 *
 * Units: m; hardness a plain Brinell number; direction in clock hours.
 * Range: readings from 0 to 5 m, hardness 0 to 1500, four gaps; a shaft not smaller than its bore is refused. Points that do not concern this motion are left out.
 * Source: each limit carries its own in data/limits/condition.json.
 * @example condition({ motion: "turning", critical: true, runout: quantity("length", 0.0025, "in") }, facts.condition, facts.uncertainty)
 */
export function condition(given: ConditionQuestion, items: ConditionFacts, uncertainty: UncertaintyFacts): Answer<Condition> {
  const refused = unusable(given, items);
  if (refused) return refused;
  const { instruments, plausible } = uncertainty;
  const work = begin();
  for (const [name, field] of asked) {
    const value = given[name];
    if (value !== undefined) for (const warning of slips({ field, value, input: name }, plausible)) work.warn(warning);
  }
  const motion = given.motion ?? "turning";
  const basis = basisOf(work, given, motion);
  const offset = given.clockGaps && offsetOf(work, given, instruments);
  const verdicts: Verdict[] = [];
  for (const item of items) {
    if (item.motions && !item.motions.includes(motion)) continue;
    const verdict = verdictOf(work, item, given, basis, offset, instruments);
    if (verdict) verdicts.push(verdict);
  }
  if (offset && basis.section !== undefined) verdicts.push(agreement(work, given, offset, basis.section, instruments));
  const missing = verdicts.filter((one) => one.required && one.verdict === "not-measured").map((one) => one.id);
  for (const id of missing) work.warn({ kind: "gap", input: id, says: { id: "condition-not-looked-at", with: { item: id } } });
  return work.found({ verdicts, overall: gravest(verdicts), missing, ...(offset ? { offset } : {}) });
}

function basisOf(work: Workings, given: ConditionQuestion, motion: Motion): Basis {
  const { shaft, bore, lantern } = given;
  const section =
    given.section ??
    (shaft === undefined || bore === undefined ? undefined : work.step(sectionOfBoxRule, [bore, shaft], ((bore - shaft) / 2) as Length));
  return {
    motion,
    ...(shaft === undefined ? {} : { shaft }),
    ...(section === undefined ? {} : { section }),
    ...(lantern === undefined ? {} : { lantern }),
  };
}

function offsetOf(work: Workings, given: ConditionQuestion, instruments: UncertaintyFacts["instruments"]): BoxOffset | undefined {
  const u = given.uncertainties?.clockGaps ?? usual(work, instruments.feeler);
  return boxOffset(work, given.clockGaps as FourGaps, u);
}

function verdictOf(
  work: Workings,
  item: Item,
  given: ConditionQuestion,
  basis: Basis,
  offset: BoxOffset | undefined,
  instruments: UncertaintyFacts["instruments"],
): Verdict | undefined {
  const renewed = (given.renewed?.length ?? 0) > 0;
  if (item.required === "after-renewal" && !renewed) return undefined;
  const required = item.required !== "never" && (item.required !== "critical" || given.critical === true);
  const reading = readingOf(work, item, given, offset, instruments);
  const house = given.houseLimits?.find((one) => one.item === item.id);
  if (reading) return judge(work, item, reading, basis, house, required);
  return seenVerdict(item, given, required);
}

const gravity: readonly VerdictWord[] = ["not-measured", "good", "cannot-tell", "attend", "renew"];

function gravest(all: readonly Verdict[]): VerdictWord {
  let worst: VerdictWord = "not-measured";
  for (const { verdict } of all) if (gravity.indexOf(verdict) > gravity.indexOf(worst)) worst = verdict;
  return worst;
}
