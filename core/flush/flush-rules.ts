import type { Citation } from "../sources/index.ts";
import type { PressureDifference } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";
import type { BoxPressureFacts } from "./box-designs.ts";

export const flushServices = ["clean", "slurry", "vacuum", "hot"] as const;
export type FlushService = (typeof flushServices)[number];

export const flushReferences = ["box", "suction", "discharge", "atmosphere"] as const;
/** What a rule measures the flush pressure from. */
export type FlushReference = (typeof flushReferences)[number];

/** One printed rule for flush pressure. Lives in data/limits/flush-pressure.json. */
export interface FlushPressureRule {
  readonly id: string;
  readonly services: readonly FlushService[];
  readonly above: FlushReference;
  readonly low: PressureDifference;
  readonly high: PressureDifference;
  /** Whether the setting is worked out from it, or it is only shown beside. */
  readonly use: "set" | "compare";
  readonly citation: Citation;
}

/** Facts of this topic, read from data/limits/ and already in SI. */
export interface FlushFacts {
  readonly boxPressure: BoxPressureFacts;
  readonly flushPressure: FlushPressureFacts;
}

export interface FlushPressureFacts {
  readonly rules: readonly FlushPressureRule[];
}

const margin = { symbol: "m", name: "flush-margin", unit: "Pa" };

const referenceNames: Readonly<Record<FlushReference, string>> = {
  box: "boxHighestGauge",
  suction: "suctionGauge",
  discharge: "dischargeGauge",
  atmosphere: "atmosphere",
};

/** A pressure plus the margin that a source prints. */
export function aboveRule(above: FlushReference, citation: Citation): Rule {
  return rule({
    id: "flush-by-source",
    symbol: "p_f",
    expression: "p_ref + m",
    unit: "Pa",
    inputs: [{ symbol: "p_ref", name: referenceNames[above], unit: "Pa" }, margin],
    citation,
  });
}

function extreme(id: string, symbol: string, expression: string): Rule {
  return rule({
    id,
    symbol,
    expression,
    unit: "Pa",
    inputs: [
      { symbol: "p_f,box", name: "flush-over-box", unit: "Pa" },
      { symbol: "p_f,atm", name: "flush-over-atmosphere", unit: "Pa" },
    ],
    citation: { source: "definition", at: "the flush must beat the box and, in vacuum service, the atmosphere" },
  });
}
export const settingLow = extreme("flush-setting-lowest", "p_f,low", "the greater of p_f,box and p_f,atm, each with its least margin");
export const settingHigh = extreme(
  "flush-setting-highest",
  "p_f,high",
  "the greater of p_f,box and p_f,atm, each with its greatest margin",
);

export const marginRule = rule({
  id: "flush-margin",
  symbol: "m",
  expression: "p_f − p_b,high",
  unit: "Pa",
  inputs: [
    { symbol: "p_f", name: "flush-setting", unit: "Pa" },
    { symbol: "p_b,high", name: "boxHighestGauge", unit: "Pa" },
  ],
  citation: { source: "definition" },
});
