import { rule } from "../workings/index.ts";

const gum = "jcgm-100-2008";

export const repeatability = rule({
  id: "repeatability",
  symbol: "u_s",
  expression: "s / √n",
  unit: "m",
  inputs: [
    { symbol: "s", name: "standard-deviation", unit: "m" },
    { symbol: "n", name: "number-of-readings", unit: "1" },
  ],
  citation: { source: gum, at: "4.2.3, equation (5)", seen: "memory" },
});

export const usualResolution = rule({
  id: "usual-resolution",
  symbol: "r",
  expression: "the usual step of this way of measuring",
  unit: "m",
  inputs: [],
  citation: { source: "common-practice" },
});

export const resolution = rule({
  id: "resolution-uncertainty",
  symbol: "u_r",
  expression: "r / √12",
  unit: "m",
  inputs: [{ symbol: "r", name: "resolution", unit: "m" }],
  citation: { source: gum, at: "F.2.2.1", seen: "memory" },
});

export const limitOfError = rule({
  id: "limit-of-error",
  symbol: "a",
  expression: "half-width for this way of measuring",
  unit: "m",
  inputs: [],
  citation: { source: "own-proposal", at: "typical reading error in the field, tool and hand together" },
});

export const method = rule({
  id: "method-uncertainty",
  symbol: "u_a",
  expression: "a / √3",
  unit: "m",
  inputs: [{ symbol: "a", name: "limit-of-error", unit: "m" }],
  citation: { source: gum, at: "4.3.7, equation (7)", seen: "memory" },
});

export const combined = rule({
  id: "standard-uncertainty",
  symbol: "u",
  expression: "√(u_s² + u_r² + u_a²)",
  unit: "m",
  inputs: [
    { symbol: "u_s", name: "repeatability", unit: "m" },
    { symbol: "u_r", name: "resolution-uncertainty", unit: "m" },
    { symbol: "u_a", name: "method-uncertainty", unit: "m" },
  ],
  citation: { source: gum, at: "5.1.2, equation (10)", seen: "memory" },
});

export const mean = rule({
  id: "mean-of-readings",
  symbol: "x̄",
  expression: "Σx / n",
  unit: "m",
  inputs: [
    { symbol: "Σx", name: "sum-of-readings", unit: "m" },
    { symbol: "n", name: "number-of-readings", unit: "1" },
  ],
  citation: { source: gum, at: "4.2.1, equation (3)", seen: "memory" },
});

export const spread = rule({
  id: "spread-of-readings",
  symbol: "R",
  expression: "x_max - x_min",
  unit: "m",
  inputs: [
    { symbol: "x_max", name: "largest-reading", unit: "m" },
    { symbol: "x_min", name: "smallest-reading", unit: "m" },
  ],
  citation: { source: "definition" },
});

export const expanded = rule({
  id: "expanded-uncertainty",
  symbol: "U",
  expression: "k u",
  unit: "m",
  inputs: [
    { symbol: "k", name: "coverage-factor", unit: "1" },
    { symbol: "u", name: "standard-uncertainty", unit: "m" },
  ],
  citation: { source: gum, at: "6.2.1, equation (18); k from table G.2 for 95 %", seen: "memory" },
});

export const outOfRound = rule({
  id: "out-of-round",
  symbol: "O",
  expression: "largest of (d_max - d_min) in one plane",
  unit: "m",
  inputs: [{ symbol: "p", name: "number-of-planes", unit: "1" }],
  citation: { source: "definition", at: "difference of diameters in one plane" },
});

export const taper = rule({
  id: "taper",
  symbol: "T",
  expression: "largest plane mean - smallest plane mean",
  unit: "m",
  inputs: [
    { symbol: "d_max", name: "largest-plane-mean", unit: "m" },
    { symbol: "d_min", name: "smallest-plane-mean", unit: "m" },
  ],
  citation: { source: "definition", at: "difference of mean diameters between planes" },
});
