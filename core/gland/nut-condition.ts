import type { Citation } from "../sources/index.ts";
import type { Force } from "../units/index.ts";
import { type Band, type Refused, type Rule, refuse, rule, type Workings } from "../workings/index.ts";

/** How thread and nut face are lubricated. */
export const nutConditions = ["as-received", "oiled", "anti-seize"] as const;
export type NutCondition = (typeof nutConditions)[number];

/** data/limits/nut-factor.json. */
export interface NutFactorFile {
  readonly scatter: { readonly value: number; readonly citation: Citation };
  readonly conditions: readonly {
    readonly condition: string;
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly citation: Citation;
  }[];
}

export interface NutFactorFacts {
  readonly scatter: number;
  readonly scatterRule: Rule;
  readonly byCondition: ReadonlyMap<string, { readonly value: number; readonly rule: Rule }>;
}

/** Turns the nut factors, as printed, into rules that carry their own spread and source. */
export function readNutFactors(file: NutFactorFile): NutFactorFacts {
  return {
    scatter: file.scatter.value,
    scatterRule: rule({
      id: "torque-scatter",
      symbol: "s",
      expression: "s",
      unit: "1",
      inputs: [],
      citation: file.scatter.citation,
    }),
    byCondition: new Map(
      file.conditions.map((row) => [
        row.condition,
        {
          value: row.value,
          rule: rule({
            id: `nut-factor-${row.condition}`,
            symbol: "K_n",
            name: "nut-factor",
            expression: `K_n(${row.condition})`,
            unit: "1",
            inputs: [],
            citation: row.citation,
            assumed: { min: row.low, max: row.high },
          }),
        },
      ]),
    ),
  };
}

export interface NutFactorGiven {
  /** K_n in T = K_n F d. */
  readonly nutFactor?: number;
  /** Instead of a factor: how the nuts are lubricated. */
  readonly nutCondition?: NutCondition;
}

/** The nut factor as received, with the spread from anti-seize to dry: for a torque that no one will set. */
export function assumedNutFactor(work: Workings, facts: NutFactorFacts): { readonly ok: true; readonly value: number } | undefined {
  const found = facts.byCondition.get("unknown");
  if (!found) return undefined;
  work.warn({ kind: "gap", input: "nutFactor", says: { id: "nut-factor-assumed", with: { value: found.value } } });
  return { ok: true, value: work.assume(found.rule, found.value) };
}

/** The nut factor as given, or the one that stands for how the nuts are lubricated; without either there is no torque to set. */
export function nutFactorOf(
  work: Workings,
  { nutFactor, nutCondition }: NutFactorGiven,
  facts: NutFactorFacts,
): Refused | { readonly ok: true; readonly value: number } {
  if (nutFactor !== undefined) return { ok: true, value: nutFactor };
  const found = nutCondition === undefined ? undefined : facts.byCondition.get(nutCondition);
  if (found) return { ok: true, value: work.assume(found.rule, found.value) };
  return refuse({
    kind: "not-known",
    input: "nutFactor",
    allowed: nutConditions,
    says: { id: "nut-factor-not-known" },
  });
}

const scatterInputs = [
  { symbol: "F", name: "load-per-nut", unit: "N" },
  { symbol: "s", name: "torque-scatter", unit: "1" },
] as const;

const lowRule = rule({
  id: "nut-load-low",
  symbol: "F_lo",
  expression: "F (1 − s)",
  unit: "N",
  inputs: scatterInputs,
  citation: { source: "definition" },
});

const highRule = rule({
  id: "nut-load-high",
  symbol: "F_hi",
  expression: "F (1 + s)",
  unit: "N",
  inputs: scatterInputs,
  citation: { source: "definition" },
});

/** The load that a set torque may really give, by the scatter of torque tightening. */
export function scattered(work: Workings, load: Force, facts: NutFactorFacts): Band<Force> {
  const s = work.assume(facts.scatterRule, facts.scatter);
  const low = work.step(lowRule, [load, s], (load * (1 - s)) as Force);
  return { low, high: work.step(highRule, [load, s], (load * (1 + s)) as Force) };
}
