import { rule } from "../workings/index.ts";

export const sectionRule = rule({
  id: "section",
  symbol: "s",
  expression: "(D - d) / 2",
  unit: "m",
  inputs: [
    { symbol: "D", name: "bore", unit: "m" },
    { symbol: "d", name: "shaft", unit: "m" },
  ],
  citation: { source: "mobley-1999", at: "ch. 18, p. 226" },
});

export const braidToleranceRule = (assumed: { readonly low: number; readonly high: number }) =>
  rule({
    id: "braid-tolerance",
    symbol: "t",
    expression: "half-width of the braid, as a share of the gap",
    unit: "1",
    inputs: [],
    citation: { source: "common-practice" },
    assumed: { min: assumed.low, max: assumed.high },
  });

export const rollingRule = (assumed: { readonly low: number; readonly high: number }) =>
  rule({
    id: "rolling-share",
    symbol: "w",
    expression: "how far above the gap a braid may be rolled down, as a share of it",
    unit: "1",
    inputs: [],
    citation: { source: "own-proposal" },
    assumed: { min: assumed.low, max: assumed.high },
  });

export const misfitRule = rule({
  id: "misfit",
  symbol: "Δ",
  expression: "a - s",
  unit: "m",
  inputs: [
    { symbol: "a", name: "stock-size", unit: "m" },
    { symbol: "s", name: "section", unit: "m" },
  ],
  citation: { source: "definition", at: "stock size less the gap; positive when the packing is too big" },
});

export const probabilityRule = rule({
  id: "nearest-probability",
  symbol: "P",
  expression: "Φ((b₂ - s)/u) - Φ((b₁ - s)/u)",
  unit: "1",
  inputs: [
    { symbol: "b₁", name: "halfway-to-next-smaller", unit: "m" },
    { symbol: "b₂", name: "halfway-to-next-larger", unit: "m" },
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "u", name: "standard-uncertainty", unit: "m" },
  ],
  citation: { source: "jcgm-100-2008", at: "normal distribution, 4.3.4", seen: "memory" },
});

export const probabilityOfSmallestRule = rule({
  ...probabilityRule,
  expression: "Φ((b₂ - s)/u)",
  inputs: probabilityRule.inputs.slice(1),
});

export const probabilityOfLargestRule = rule({
  ...probabilityRule,
  expression: "1 - Φ((b₁ - s)/u)",
  inputs: probabilityRule.inputs.filter((input) => input.symbol !== "b₂"),
});

export const fillRule = rule({
  id: "fill-probability",
  symbol: "P_f",
  expression: "Φ((a/(1 - t) - s)/u) - Φ((a/(1 + w) - s)/u)",
  unit: "1",
  inputs: [
    { symbol: "a", name: "stock-size", unit: "m" },
    { symbol: "t", name: "braid-tolerance", unit: "1" },
    { symbol: "w", name: "rolling-share", unit: "1" },
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "u", name: "standard-uncertainty", unit: "m" },
  ],
  citation: { source: "geometry", at: "gaps that this size fills, as it is or rolled" },
});
