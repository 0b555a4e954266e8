import type { Motion } from "../box/index.ts";
import type { Citation, Seen, SourceId } from "../sources/index.ts";
import type { How } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";
import type { LimitUnit, Verdict, VerdictWord } from "./verdict.ts";

/** A limit as it stands in data/: a plain value, or so many shaft diameters or sections. */
interface LimitFact {
  readonly id: string;
  readonly value?: number;
  readonly perShaft?: number;
  readonly perSection?: number;
  /** As the source prints it. */
  readonly printed: string;
  /** Shafts it is for. */
  readonly shaft?: { readonly below?: Length; readonly from?: Length; readonly to?: Length; readonly over?: Length };
  readonly motions?: readonly Motion[];
  readonly lantern?: boolean;
  readonly beside?: true;
  readonly source: SourceId;
  readonly at?: string;
  readonly seen?: Seen;
}

/** One point of the survey as it stands in data/. */
export interface ItemFact {
  readonly id: string;
  /** Where the reading stands in the question. */
  readonly field?: string;
  /** Metres when left out. */
  readonly unit?: LimitUnit;
  /** Where what was seen stands in the question. */
  readonly seenField?: string;
  /** How it is usually taken, which says how sure a reading is. */
  readonly how?: How;
  /** Half-width of a reading as a share of it, where no length describes it. */
  readonly relativeError?: number;
  readonly sense?: "at-most" | "at-least";
  readonly required: "always" | "critical" | "after-renewal" | "never";
  readonly motions?: readonly Motion[];
  /** The verdict when every limit is failed. */
  readonly fail: "attend" | "renew";
  readonly limits?: readonly LimitFact[];
  readonly seen?: Readonly<Record<string, VerdictWord>>;
  readonly seenSource?: Citation;
}

/** A limit with the rule that a step of the workings points at. */
export interface Limit extends LimitFact {
  readonly rule: Rule;
}

export interface Item extends Omit<ItemFact, "limits" | "unit"> {
  readonly unit: LimitUnit;
  readonly limits: readonly Limit[];
  /** The verdict for each thing that may be seen, where it must be looked at and where it need not. */
  readonly bySight: { readonly required: SightVerdicts; readonly optional: SightVerdicts };
}

/** The verdicts that follow from what was seen; under `undefined`, that nobody looked. */
type SightVerdicts = ReadonlyMap<string | undefined, Verdict>;

/** The points of the survey, in the order they are gone through. */
export type ConditionFacts = readonly Item[];

function ruleOf(fact: LimitFact, unit: LimitUnit): Rule {
  const basis = fact.perShaft === undefined ? { symbol: "s", name: "section", unit: "m" } : { symbol: "d", name: "shaft", unit: "m" };
  return rule({
    id: fact.id,
    symbol: "L",
    expression: fact.printed,
    unit,
    inputs: fact.value === undefined ? [basis] : [],
    citation: {
      source: fact.source,
      ...(fact.at === undefined ? {} : { at: fact.at }),
      ...(fact.seen === undefined ? {} : { seen: fact.seen }),
    },
  });
}

function sightVerdicts(item: ItemFact, required: boolean): SightVerdicts {
  const { id } = item;
  const rest = { limits: [], passes: 0, of: 0 };
  const notLooked = { id, verdict: "not-measured", required, ...rest, decidedBy: "not-measured" } as const;
  const verdicts = new Map<string | undefined, Verdict>([[undefined, { ...notLooked, advice: required ? ["condition-look-first"] : [] }]]);
  for (const [seen, verdict] of Object.entries(item.seen ?? {})) {
    const advice = verdict === "good" ? [] : [`${id}-${seen}`];
    verdicts.set(seen, { id, verdict, required, seen, ...rest, decidedBy: "seen", advice });
  }
  return verdicts;
}

/**
 * Makes ready the points of the survey and their limits, as data/ holds them.
 *
 * Units: SI; hardness as a plain number of HB.
 * Range: facts of the shape declared here.
 * Source: each limit carries its own.
 * @example conditionFacts(file.items)
 */
export function conditionFacts(items: readonly ItemFact[]): ConditionFacts {
  return items.map((item) => {
    const unit = item.unit ?? "m";
    const limits = (item.limits ?? []).map((limit): Limit => ({ ...limit, rule: ruleOf(limit, unit) }));
    return { ...item, unit, limits, bySight: { required: sightVerdicts(item, true), optional: sightVerdicts(item, false) } };
  });
}
