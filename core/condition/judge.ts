import type { Motion } from "../box/index.ts";
import type { Length } from "../units/index.ts";
import { type Filling, rule, type Uncertain, type Workings } from "../workings/index.ts";
import type { Item, Limit } from "./limits.ts";
import type { Decider, HouseLimit, HouseVerdict, LimitVerdict, Outcome, Verdict, VerdictWord } from "./verdict.ts";

/** What a limit may be scaled by or depend on. */
export interface Basis {
  readonly motion: Motion;
  readonly shaft?: Length;
  readonly section?: Length;
  readonly lantern?: boolean;
}

const houseRule = rule({
  id: "house-limit",
  symbol: "L_h",
  expression: "set by the site",
  unit: "m",
  inputs: [],
  citation: { source: "definition", at: "a site's own limit, with who set it" },
});
const houseNumberRule = rule({ ...houseRule, unit: "1" });

/** Coverage factor of the interval within which a reading cannot be told from a limit. */
const coverage = 2;

/** Whether a reading keeps a limit, breaks it, or is too close to say. */
function outcomeOf(reading: Uncertain, limit: number, sense: "at-most" | "at-least"): Outcome {
  const spare = sense === "at-most" ? limit - reading.mean : reading.mean - limit;
  if (Math.abs(spare) <= coverage * reading.u) return spare === 0 && reading.u === 0 ? "pass" : "close";
  return spare > 0 ? "pass" : "fail";
}

/** Judges one reading by the site's own limit, or else by all that is published, saying how they split. */
export function judge(
  work: Workings,
  item: Item,
  reading: Uncertain,
  basis: Basis,
  house: HouseLimit | undefined,
  required: boolean,
): Verdict {
  const sense = item.sense ?? "at-most";
  const limits: LimitVerdict[] = [];
  let missing = false;
  let passes = 0;
  let fails = 0;
  let of = 0;
  for (const limit of item.limits) {
    const value = limitFor(limit, basis);
    if (value === "not-for-this") continue;
    if (value === undefined) {
      missing ||= limit.beside !== true;
      continue;
    }
    const outcome = outcomeOf(reading, value, sense);
    limits.push(held(work, item, limit, value, basis, outcome));
    if (limit.beside) continue;
    of++;
    if (outcome === "pass") passes++;
    else if (outcome === "fail") fails++;
  }
  const measured = { value: reading.mean, unit: item.unit, standardUncertainty: reading.u };
  const own = house && byHouse(work, item, reading, house, sense);
  const [verdict, decidedBy] = own ? [own.verdict, "house-limit" as const] : weigh(passes, fails, of, missing, item.fail);
  const advice = adviceFor(item, verdict, decidedBy);
  const { id } = item;
  return own
    ? { id, verdict, required, measured, limits, houseLimit: own.limit, decidedBy, passes, of, advice }
    : { id, verdict, required, measured, limits, decidedBy, passes, of, advice };
}

function byHouse(
  work: Workings,
  item: Item,
  reading: Uncertain,
  house: HouseLimit,
  sense: "at-most" | "at-least",
): { readonly verdict: VerdictWord; readonly limit: HouseVerdict } | undefined {
  const { setBy, why } = house;
  const value = item.unit === "m" ? house.value : house.number;
  if (value === undefined) return undefined;
  work.step(item.unit === "m" ? houseRule : houseNumberRule, [], value);
  const outcome = outcomeOf(reading, value, sense);
  const verdict = outcome === "pass" ? "good" : outcome === "fail" ? item.fail : "cannot-tell";
  const limit = { value, unit: item.unit, setBy, outcome };
  return { verdict, limit: why === undefined ? limit : { ...limit, why } };
}

/** The verdict that every way of settling the close ones would leave standing; else it cannot be told. */
function weigh(passes: number, fails: number, of: number, missing: boolean, fail: "attend" | "renew"): readonly [VerdictWord, Decider] {
  if (of === 0) return ["cannot-tell", missing ? "basis-missing" : "no-limit"];
  if (passes === of) return ["good", "all-limits"];
  if (fails === of) return [fail, "all-limits"];
  if (passes > 0 && fails > 0) return ["attend", "split-limits"];
  return ["cannot-tell", "too-close"];
}

function adviceFor(item: Item, verdict: VerdictWord, decidedBy: Decider): readonly string[] {
  switch (decidedBy) {
    case "too-close":
      return ["condition-measure-finer"];
    case "no-limit":
      return ["condition-set-house-limit"];
    case "basis-missing":
      return ["condition-needs-diameters"];
    case "split-limits":
      return [`${item.id}-attend`, "condition-set-house-limit"];
    default:
      if (verdict === "cannot-tell") return ["condition-measure-finer"];
      return verdict === "good" ? [] : [`${item.id}-${verdict}`];
  }
}

function held(work: Workings, item: Item, limit: Limit, value: number, basis: Basis, outcome: Outcome): LimitVerdict {
  const { id, source, at, seen, beside = false } = limit;
  const by = limit.value !== undefined ? [] : [(limit.perShaft === undefined ? basis.section : basis.shaft) ?? Number.NaN];
  work.step(limit.rule, by, value);
  const { unit } = item;
  const verdict: Filling<LimitVerdict> = { id, value, unit, source, outcome, beside };
  if (at !== undefined) verdict.at = at;
  if (seen !== undefined) verdict.seen = seen;
  return verdict;
}

/** The limit for this box; `undefined` when a diameter it needs is not known. */
function limitFor(limit: Limit, basis: Basis): number | undefined | "not-for-this" {
  if (limit.motions && !limit.motions.includes(basis.motion)) return "not-for-this";
  if (limit.lantern !== undefined && limit.lantern !== (basis.lantern ?? false)) return "not-for-this";
  if (limit.shaft) {
    if (basis.shaft === undefined) return undefined;
    const { below = Infinity, from = 0, to = Infinity, over = -1 } = limit.shaft;
    if (basis.shaft >= below || basis.shaft < from || basis.shaft > to || basis.shaft <= over) return "not-for-this";
  }
  if (limit.value !== undefined) return limit.value;
  if (limit.perShaft !== undefined) return basis.shaft === undefined ? undefined : limit.perShaft * basis.shaft;
  return basis.section === undefined || limit.perSection === undefined ? undefined : limit.perSection * basis.section;
}
