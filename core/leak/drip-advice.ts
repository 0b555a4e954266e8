import type { Citation } from "../sources/index.ts";
import type { Length, Volume, VolumeFlow } from "../units/index.ts";
import { type Band, type Rule, rule, type Workings } from "../workings/index.ts";
import type { DripGuideline, DripStage } from "./drip-facts.ts";
import { dropsAsFlow, flowAsDrops } from "./drops.ts";

export const dripVerdicts = ["below", "within", "above"] as const;
export type DripVerdict = (typeof dripVerdicts)[number];

/** One published figure for this shaft, and the counted drip beside it. */
export interface DripAdvice {
  readonly id: string;
  readonly stage: DripStage;
  readonly drops?: Band;
  readonly flow?: Band<VolumeFlow>;
  readonly saying?: string;
  readonly verdict?: DripVerdict;
  readonly citation: Citation;
}

interface GuidelineRules {
  readonly low: Rule;
  readonly high: Rule;
  readonly flowLow: Rule;
  readonly flowHigh: Rule;
}

function rulesFor({ id, flow, perShaft, citation }: DripGuideline): GuidelineRules {
  const printed = flow ? "Q · 1 min / V" : perShaft ? "n d / d1" : "as printed";
  const inputs = flow
    ? [
        { symbol: "Q", name: "leak", unit: "m3/s" },
        { symbol: "V", name: "drop-volume", unit: "m3" },
      ]
    : perShaft
      ? [
          { symbol: "n", name: "drop-rate", unit: "1/min" },
          { symbol: "d", name: "shaft", unit: "m" },
          { symbol: "d1", name: "per-shaft", unit: "m" },
        ]
      : [{ symbol: "n", name: "drop-rate", unit: "1/min" }];
  const drops = (end: string) =>
    rule({ id: `drip-${id}-${end}`, name: `drip-guideline-${end}`, symbol: "n", expression: printed, unit: "1/min", inputs, citation });
  const asFlow = (end: string) =>
    rule({
      id: `drip-${id}-flow-${end}`,
      name: `drip-guideline-flow-${end}`,
      symbol: "Q",
      expression: flow ? "as printed" : "n V / 1 min",
      unit: "m3/s",
      inputs: flow
        ? [{ symbol: "Q", name: "leak", unit: "m3/s" }]
        : [
            { symbol: "n", name: "drop-rate", unit: "1/min" },
            { symbol: "V", name: "drop-volume", unit: "m3" },
          ],
      citation,
    });
  return { low: drops("low"), high: drops("high"), flowLow: asFlow("low"), flowHigh: asFlow("high") };
}

/** Rules belong to the facts; they are made once for each guideline. */
const rulesOf = new WeakMap<DripGuideline, GuidelineRules>();

function rulesOnce(guideline: DripGuideline): GuidelineRules {
  const known = rulesOf.get(guideline);
  if (known) return known;
  const made = rulesFor(guideline);
  rulesOf.set(guideline, made);
  return made;
}

export function verdictOn(rate: number | undefined, { low, high }: Band): { readonly verdict?: DripVerdict } {
  if (rate === undefined) return {};
  return { verdict: rate < low ? "below" : rate > high ? "above" : "within" };
}

/** One figure as drops and as a flow. The flow of a count has the drop volume's spread in it, unless that was measured. */
export function advise(
  work: Workings,
  guideline: DripGuideline,
  shaft: Length,
  volume: Volume,
  spread: Band<Volume>,
  rate?: number,
): DripAdvice {
  const { id, stage, saying, citation, drops, flow, perShaft } = guideline;
  const rules = rulesOnce(guideline);
  if (drops) {
    const times = perShaft ? shaft / perShaft : 1;
    const count = (rule: Rule, n: number) => work.step(rule, perShaft ? [n, shaft, perShaft] : [n], n * times);
    const band = { low: count(rules.low, drops.low), high: count(rules.high, drops.high) };
    const low = work.step(rules.flowLow, [band.low, spread.low], dropsAsFlow(band.low, spread.low));
    const high = work.step(rules.flowHigh, [band.high, spread.high], dropsAsFlow(band.high, spread.high));
    return { id, stage, drops: band, flow: { low, high }, ...verdictOn(rate, band), citation };
  }
  if (flow) {
    const low = work.step(rules.flowLow, [flow.low], flow.low);
    const high = work.step(rules.flowHigh, [flow.high], flow.high);
    const band = {
      low: work.step(rules.low, [low, volume], flowAsDrops(low, volume)),
      high: work.step(rules.high, [high, volume], flowAsDrops(high, volume)),
    };
    return { id, stage, drops: band, flow: { low, high }, ...verdictOn(rate, band), citation };
  }
  return { id, stage, ...(saying === undefined ? {} : { saying }), citation };
}
