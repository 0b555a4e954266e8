import { type Instruments, propagate } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { BoxOffset } from "./clock-gaps.ts";
import type { ConditionQuestion } from "./question.ts";
import { usual } from "./readings.ts";
import type { Verdict } from "./verdict.ts";

const disagreementRule = rule({
  id: "gap-agreement",
  symbol: "δ",
  expression: "|ḡ - s|",
  unit: "m",
  inputs: [
    { symbol: "ḡ", name: "mean-gap", unit: "m" },
    { symbol: "s", name: "section", unit: "m" },
  ],
  citation: { source: "geometry", at: "the mean of four gaps is half of bore less shaft" },
});

/** Four gaps and two diameters measure the same section; where they do not agree, one of them is wrong. */
export function agreement(work: Workings, given: ConditionQuestion, offset: BoxOffset, section: Length, instruments: Instruments): Verdict {
  const known = given.uncertainties?.section;
  const uSection = known ?? usual(work, instruments.caliper) / Math.SQRT2;
  const u = propagate([
    { sensitivity: 1, u: offset.meanGap.u },
    { sensitivity: -1, u: uSection },
  ]);
  const difference = work.step(disagreementRule, [offset.meanGap.mean, section], Math.abs(offset.meanGap.mean - section), u);
  const agrees = difference <= 2 * u;
  return {
    id: "gap-agreement",
    verdict: agrees ? "good" : "attend",
    required: false,
    measured: { value: difference, unit: "m", standardUncertainty: u },
    limits: [],
    decidedBy: "own-check",
    passes: 0,
    of: 0,
    advice: agrees ? [] : ["gap-agreement-attend"],
  };
}
