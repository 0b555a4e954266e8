import { type Answer, begin, outside, rule } from "../workings/index.ts";

const solidRule = rule({
  id: "stress-ratio",
  symbol: "K",
  expression: "ν / (1 − ν)",
  unit: "1",
  inputs: [{ symbol: "ν", name: "poisson-ratio", unit: "1" }],
  citation: { source: "zappe-1999", at: "pp. 20-21" },
});

/**
 * Radial over axial stress in a solid elastic filler held all round. Braids
 * give less: they are no solid.
 *
 *   K = ν / (1 − ν)
 *
 * Units: plain numbers.
 * Range: Poisson's ratio 0 to 0.5; refused outside.
 * Source: Zappe, Valve Selection Handbook, pp. 20-21.
 * @example stressRatio({ poissonRatio: 0.46 }) // 0.852
 */
export function stressRatio(given: { readonly poissonRatio: number }): Answer<{ readonly ratio: number }> {
  const { poissonRatio } = given;
  const refused = outside([["poissonRatio", poissonRatio, { min: 0, max: 0.5 }, "1"]]);
  if (refused) return refused;
  const work = begin();
  work.warn({ kind: "note", input: "poissonRatio", says: { id: "stress-ratio-solid-only" } });
  return work.found({ ratio: work.step(solidRule, [poissonRatio], poissonRatio / (1 - poissonRatio)) });
}
