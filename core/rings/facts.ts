import type { Citation } from "../sources/index.ts";
import { type GaugePressure, type Length, quantity } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";

/** How the shaft moves: the first question about a box. */
export const motions = ["turning", "stroking", "stem", "slow"] as const;
export type Motion = (typeof motions)[number];

/** How hard rings are seated: eased home, tamped home, or with the full gland load ring by ring. */
export const seatings = ["light", "firm", "full"] as const;
export type Seating = (typeof seatings)[number];

export const families = ["plant-fibre", "ptfe", "graphite", "carbon", "aramid", "synthetic", "mineral", "metal"] as const;
export type Family = (typeof families)[number];

/** What someone prints: from, to (open when left out), and where. */
export interface Opinion {
  readonly low: number;
  readonly high?: number;
  readonly citation: Citation;
}

type InUnit<T> = T & { readonly unit: string };

/** Facts about rings, as they stand in data/limits/rings.json: values in the unit in which they were printed. */
export interface RingFacts {
  readonly ringCount: readonly {
    readonly motion: Motion;
    readonly fewest: number;
    readonly usual: number;
    readonly most: number;
    readonly fewestFrom: Citation;
    readonly mostFrom: Citation;
    readonly opinions: readonly Opinion[];
  }[];
  readonly oneRingPressure: { readonly value: number; readonly unit: string; readonly citation: Citation };
  readonly seating: readonly { readonly manner: Seating; readonly low: number; readonly high: number; readonly citation: Citation }[];
  readonly entry: Readonly<Record<"least" | "wanted", { readonly value: number; readonly unit: string; readonly citation: Citation }>>;
  readonly buttGap: {
    readonly families: readonly InUnit<{
      readonly family: Family;
      readonly low: number;
      readonly high: number;
      readonly citation: Citation;
    }>[];
    readonly opinions: readonly InUnit<Opinion>[];
  };
}

/** A limit or setting from the facts in SI, with the rule that the workings point at. */
interface Limit<Q extends number> {
  readonly value: Q;
  readonly rule: Rule;
}

export interface RingLimits {
  readonly counts: ReadonlyMap<
    Motion,
    { readonly fewest: Limit<number>; readonly usual: number; readonly most: Limit<number>; readonly opinions: readonly Opinion[] }
  >;
  readonly oneRingPressure: { readonly value: GaugePressure; readonly citation: Citation };
  readonly seating: ReadonlyMap<Seating, { readonly low: number; readonly high: number; readonly rule: Rule }>;
  readonly leastEntry: Limit<Length>;
  readonly wantedEntry: Limit<Length>;
  readonly gaps: ReadonlyMap<Family, { readonly low: Length; readonly high: Length; readonly rules: readonly [low: Rule, high: Rule] }>;
  readonly gapOpinions: readonly Opinion[];
}

const known = new WeakMap<RingFacts, RingLimits>();

/** The facts in SI with their rules; worked out once for each set of facts. */
export function ringLimits(facts: RingFacts): RingLimits {
  const there = known.get(facts);
  if (there) return there;
  const limits = prepare(facts);
  known.set(facts, limits);
  return limits;
}

function prepare({ ringCount, oneRingPressure, seating, entry, buttGap }: RingFacts): RingLimits {
  const length = (value: number, unit: string) => quantity("length", value, unit);
  return {
    counts: new Map(
      ringCount.map((of) => [
        of.motion,
        {
          fewest: { value: of.fewest, rule: limit(`rings-fewest-${of.motion}`, "n_min", "rings-fewest", "1", of.fewestFrom) },
          usual: of.usual,
          most: { value: of.most, rule: limit(`rings-most-${of.motion}`, "n_max", "rings-most", "1", of.mostFrom) },
          opinions: of.opinions,
        },
      ]),
    ),
    oneRingPressure: {
      value: quantity("pressure", oneRingPressure.value, oneRingPressure.unit),
      citation: oneRingPressure.citation,
    },
    seating: new Map(
      seating.map(({ manner, low, high, citation }) => [
        manner,
        {
          low,
          high,
          rule: rule({ ...limit(`seating-loss-${manner}`, "ε", "seating-loss", "1", citation), assumed: { min: low, max: high } }),
        },
      ]),
    ),
    leastEntry: {
      value: length(entry.least.value, entry.least.unit),
      rule: limit("entry-least", "e_min", "entry-least", "m", entry.least.citation),
    },
    wantedEntry: {
      value: length(entry.wanted.value, entry.wanted.unit),
      rule: limit("entry-wanted", "e_w", "entry-wanted", "m", entry.wanted.citation),
    },
    gaps: new Map(
      buttGap.families.map(({ family, low, high, unit, citation }) => [
        family,
        {
          low: length(low, unit),
          high: length(high, unit),
          rules: [
            limit(`butt-gap-low-${family}`, "g_lo", "butt-gap", "m", citation),
            limit(`butt-gap-high-${family}`, "g_hi", "butt-gap", "m", citation),
          ] as const,
        },
      ]),
    ),
    gapOpinions: buttGap.opinions.map(({ low, high, unit, citation }) => ({
      low: length(low, unit),
      ...(high === undefined ? {} : { high: length(high, unit) }),
      citation,
    })),
  };
}

function limit(id: string, symbol: string, name: string, unit: string, citation: Citation): Rule {
  return rule({ id, symbol, name, expression: "", unit, inputs: [], citation });
}
