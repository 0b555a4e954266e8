import type { Motion } from "../box/index.ts";
import type { Family } from "../materials/index.ts";
import type { Citation } from "../sources/index.ts";
import { type GaugePressure, type Length, quantity } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";

/** How hard rings are seated: eased home, tamped home, or with the full gland load ring by ring. */
export const seatings = ["light", "firm", "full"] as const;
export type Seating = (typeof seatings)[number];

/** What someone prints: from, to (open when left out), and where. */
export interface Opinion {
  readonly low: number;
  readonly high?: number;
  readonly citation: Citation;
}

type InUnit<T> = T & { readonly unit: string };

/** What data/limits/rings.json holds: values in the unit in which they were printed. */
export interface RingFile {
  readonly ringCount: readonly {
    /** The branch of the trade, for the names of the limits. */
    readonly branch: string;
    readonly motions: readonly Motion[];
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
    /** Those of which nothing is known are left out. */
    readonly rows: readonly InUnit<{
      readonly families: readonly Family[];
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

/** Facts about rings in SI, each with its rule. */
export interface RingFacts {
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

/**
 * Reads what is known of ring counts, seating, entry and gaps: SI values, each
 * with the rule that the workings point at.
 *
 * Units: lengths m, pressures Pa gauge; counts and losses plain numbers.
 * Range: any file of this shape; a unit that does not fit is a mistake in the file and throws.
 * Source: named beside each value in the file.
 * @example readRingFacts(file).seating.get("firm") // { low: 0.05, high: 0.15, rule }
 */
export function readRingFacts({ ringCount, oneRingPressure, seating, entry, buttGap }: RingFile): RingFacts {
  const length = (value: number, unit: string) => quantity("length", value, unit);
  return {
    counts: new Map(
      ringCount.flatMap((of) => {
        const counts = {
          fewest: { value: of.fewest, rule: limit(`rings-fewest-${of.branch}`, "n_min", "rings-fewest", "1", of.fewestFrom) },
          usual: of.usual,
          most: { value: of.most, rule: limit(`rings-most-${of.branch}`, "n_max", "rings-most", "1", of.mostFrom) },
          opinions: of.opinions,
        };
        return of.motions.map((motion) => [motion, counts] as const);
      }),
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
      buttGap.rows.flatMap(({ families, low, high, unit, citation }) =>
        families.map((family) => [
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
