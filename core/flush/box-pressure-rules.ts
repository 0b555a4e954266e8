import type { Citation } from "../sources/index.ts";
import { quantity } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";

const suction = { symbol: "p_s", name: "suction", unit: "Pa" };
const differential = { symbol: "Δp", name: "differential", unit: "Pa" };
const rise = { symbol: "r", name: "box-rise", unit: "Pa" };

export const differentialRule = rule({
  id: "differential",
  symbol: "Δp",
  expression: "p_d − p_s",
  unit: "Pa",
  inputs: [{ symbol: "p_d", name: "discharge", unit: "Pa" }, suction],
  citation: { source: "definition" },
});

/** What the box stands above suction, by one published figure. */
export function riseByFactor(citation: Citation): Rule {
  return rule({
    id: "box-rise",
    symbol: "r",
    expression: "C · Δp",
    unit: "Pa",
    inputs: [{ symbol: "C", name: "box-pressure-factor", unit: "1" }, differential],
    citation,
  });
}

export function riseFixed(citation: Citation): Rule {
  return rule({
    id: "box-rise-fixed",
    name: "box-rise",
    symbol: "r",
    expression: "a, not above Δp",
    unit: "Pa",
    inputs: [{ symbol: "a", name: "box-rise-printed", unit: "Pa" }, differential],
    citation,
  });
}

export const lowestRise = rule({
  id: "box-rise-lowest",
  symbol: "r_low",
  expression: "the lesser of r / 2 and the lowest published, not below 0",
  unit: "Pa",
  inputs: [rise, { symbol: "r_min", name: "box-rise-least-published", unit: "Pa" }],
  citation: { source: "own-proposal", at: "half to one and a half times the usual figure, widened to every published one" },
});

export const highestRise = rule({
  id: "box-rise-highest",
  symbol: "r_high",
  expression: "the greater of 1.5 · r and the highest published, not above Δp",
  unit: "Pa",
  inputs: [rise, { symbol: "r_max", name: "box-rise-most-published", unit: "Pa" }, differential],
  citation: { source: "own-proposal", at: "half to one and a half times the usual figure, widened to every published one" },
});

function pressure(id: string, symbol: string, of: string): Rule {
  return rule({
    id,
    symbol,
    expression: `p_s + ${of}`,
    unit: "Pa",
    inputs: [suction, { symbol: of, name: "box-rise", unit: "Pa" }],
    citation: { source: "buck-seal-chambers", at: "eq. 1" },
  });
}

export const typicalPressure = pressure("box-pressure", "p_b", "r");
export const lowestPressure = pressure("box-pressure-lowest", "p_b,low", "r_low");
export const highestPressure = pressure("box-pressure-highest", "p_b,high", "r_high");

/** The pressure that one published figure leads to. */
export function publishedPressure(citation: Citation): Rule {
  return { ...typicalPressure, id: "box-pressure-published", symbol: "p_b,source", citation };
}

export const gaugeTaken = rule({
  id: "gauge-reading",
  symbol: "p_b",
  expression: "as read at the flush tee",
  unit: "Pa",
  inputs: [{ symbol: "p_b", name: "measuredGauge", unit: "Pa" }],
  citation: { source: "definition" },
});

export const gaugeErrorUsual = quantity("pressure-difference", 0.1, "bar");
export const gaugeErrorTaken = rule({
  id: "gauge-error-taken",
  name: "gaugeError",
  symbol: "±",
  expression: "taken for lack of word of the gauge",
  unit: "Pa",
  inputs: [],
  citation: { source: "own-proposal", at: "about half a division of a workshop gauge" },
  assumed: { min: quantity("pressure-difference", 0.02, "bar"), max: quantity("pressure-difference", 0.25, "bar") },
});

const reading = [
  { symbol: "p_b", name: "measuredGauge", unit: "Pa" },
  { symbol: "±", name: "gaugeError", unit: "Pa" },
];
export const gaugeLowest = rule({
  id: "gauge-reading-lowest",
  symbol: "p_b,low",
  expression: "p_b − ±",
  unit: "Pa",
  inputs: reading,
  citation: { source: "definition" },
});
export const gaugeHighest = rule({ ...gaugeLowest, id: "gauge-reading-highest", symbol: "p_b,high", expression: "p_b + ±" });
