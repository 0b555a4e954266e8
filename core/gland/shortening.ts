import type { Length, Stress } from "../units/index.ts";
import { type Answer, begin, outside, rule, within } from "../workings/index.ts";
import { noAnnulus } from "./annulus.ts";
import { type ElasticPart, noStack, type Stack } from "./part.ts";
import { decayOf, meanOver } from "./wall-friction.ts";

const shorteningRule = rule({
  id: "part-shortening",
  symbol: "Δh",
  expression: "σ_1 (1 − e^(−b h)) / (b E)",
  unit: "m",
  inputs: [
    { symbol: "σ_1", name: "axial-stress-gland-side", unit: "Pa" },
    { symbol: "b", name: "wall-friction-decay", unit: "1/m" },
    { symbol: "h", name: "part-height", unit: "m" },
    { symbol: "E", name: "packing-modulus", unit: "Pa" },
  ],
  citation: { source: "mechanics", at: "mean stress in the part times height over modulus; σ_1 h / E without wall friction" },
});

const totalRule = rule({
  id: "stack-shortening",
  symbol: "Δ",
  expression: "Σ Δh",
  unit: "m",
  inputs: [{ symbol: "Σ Δh", name: "part-shortening", unit: "m" }],
  citation: { source: "geometry", at: "sum over the parts" },
});

export interface Shortening {
  /** Of each part, in the order given. */
  readonly parts: readonly Length[];
  readonly total: Length;
  /** How much of the follower's movement arrives at the gland-side face of each part: 1 at the first. */
  readonly carried: readonly number[];
}

/**
 * How much each part gives under one further push. A part without a modulus
 * (lantern ring, spacer, bush) does not give. With one modulus for all rings
 * `carried` does not depend on it.
 *
 *   Δh = σ_1 (1 − e^(−b h)) / (b E)
 *
 * Units: lengths m, stress and modulus Pa.
 * Range: as `stressAlongBox`; modulus above 0, and no more shortening than half a part's height, beyond which the modulus means nothing; refused.
 * Source: force balance and definition of a secant modulus.
 * @example shortening({ shaft, bore, glandStress, parts: [{ ...ring, modulus }, lantern, { ...ring, modulus }] })
 */
export function shortening(given: Stack<ElasticPart> & { readonly glandStress: Stress }): Answer<Shortening> {
  const { shaft, bore, parts, glandStress } = given;
  const refused = noAnnulus(shaft, bore) ?? noStack(parts) ?? outside([["glandStress", glandStress, { min: 0, max: 1e9 }, "Pa"]]);
  if (refused) return refused;
  const work = begin();
  const rates = decayOf(work, given);
  const each: Length[] = [];
  let axial: number = glandStress;
  let total = 0;
  for (let i = 0; i < parts.length; i++) {
    const { height = 0, modulus } = parts[i] ?? {};
    const rate = rates[i] ?? 0;
    if (modulus === undefined) each.push(0 as Length);
    else {
      const mean = axial * meanOver(-rate * height);
      const moduli = { min: Math.max(2 * mean, Number.MIN_VALUE), max: 1e12 };
      const noModulus = within(moduli, modulus) ? undefined : outside([[`parts[${i}].modulus`, modulus, moduli, "Pa"]]);
      if (noModulus) return noModulus;
      const shorter = work.step(shorteningRule, [axial, rate, height, modulus], ((mean * height) / modulus) as Length);
      each.push(shorter);
      total += shorter;
    }
    axial *= Math.exp(-rate * height);
  }
  let left = total;
  const carried = each.map((part) => {
    const share = total === 0 ? 0 : left / total;
    left = Math.max(0, left - part);
    return share;
  });
  return work.found({ parts: each, total: work.step(totalRule, [total], total as Length), carried });
}
