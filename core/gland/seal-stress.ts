import { type Motion, turns } from "../box/index.ts";
import type { GaugePressure, Stress } from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse, rule } from "../workings/index.ts";
import { noAnnulus } from "./annulus.ts";
import { noStack, type Stack } from "./part.ts";
import { decayOf } from "./wall-friction.ts";

const inputs = [
  { symbol: "p", name: "box-pressure", unit: "Pa" },
  { symbol: "K", name: "stress-ratio", unit: "1" },
  { symbol: "B", name: "decay-to-ring", unit: "1" },
] as const;

const lowerRule = rule({
  id: "seal-stress-lower",
  symbol: "σ_lo",
  expression: "(p / K) · e^B",
  unit: "Pa",
  inputs,
  citation: {
    source: "mechanics",
    at: "some ring presses on the shaft as hard as the pressure; B = Σ b h of what lies before it, 0 at the gland",
  },
});

const upperRule = rule({
  id: "seal-stress-upper",
  symbol: "σ_hi",
  expression: "(p / K) · e^B",
  unit: "Pa",
  inputs,
  citation: { source: "mechanics", at: "every ring does, to its inner face; B = Σ b h of all parts to there" },
});

export interface SealStress {
  /** Gland stress at which the first ring presses as hard as the pressure. */
  readonly lower: Stress;
  /** Gland stress at which every ring does, the bottom one too. */
  readonly upper: Stress;
}

/**
 * Gland stress at which the packing presses on the shaft as hard as the
 * pressure in the box: between the first ring and the last. With equal rings
 * the first is at the gland and the last at the bottom:
 *
 *   lower = p / K,   upper = (p / K) e^(b L)
 *
 * For a shaft that turns this says where it would be tight at a standstill. It
 * is no setting: a pump runs wet, far below it.
 *
 * Units: pressure (gauge) and stress Pa.
 * Range: as `stressAlongBox`, at least one ring with K above 0; pressure 0 to 100 MPa gauge; refused outside.
 * Source: the trade's criterion, contact pressure above fluid pressure (FSA, Sealing Sense, packing friction), and the decay law.
 * @example sealStress({ shaft, bore, pressure, parts, motion: "rising-stem" })
 */
export function sealStress(given: Stack & { readonly pressure: GaugePressure; readonly motion: Motion }): Answer<SealStress> {
  const { shaft, bore, parts, pressure, motion } = given;
  const refused =
    noAnnulus(shaft, bore) ?? noStack(parts) ?? outside([["pressure", pressure, { min: 0, max: 1e8 }, "Pa"]]) ?? noRing(given);
  if (refused) return refused;
  const work = begin();
  const rates = decayOf(work, given);
  let decay = 0;
  let lower = { stress: Number.POSITIVE_INFINITY, ratio: 0, decay: 0 };
  let upper = { stress: -1, ratio: 0, decay: 0 };
  for (let i = 0; i < parts.length; i++) {
    const { ratio = 0, height = 0 } = parts[i] ?? {};
    if (ratio === 0) continue;
    const before = (pressure / ratio) * Math.exp(decay);
    if (before < lower.stress) lower = { stress: before, ratio, decay };
    decay += (rates[i] ?? 0) * height;
    const after = (pressure / ratio) * Math.exp(decay);
    if (after > upper.stress) upper = { stress: after, ratio, decay };
  }
  if (turns(motion)) work.warn({ kind: "note", input: "motion", given: motion, says: { id: "seal-stress-standstill-only" } });
  const citation = { source: "fsa-packing-friction", at: "contact pressure must exceed the fluid pressure" } as const;
  work.warn({ kind: "note", input: "parts", says: { id: "seal-stress-weak" }, citation });
  return work.found({
    lower: work.step(lowerRule, [pressure, lower.ratio, lower.decay], lower.stress as Stress),
    upper: work.step(upperRule, [pressure, upper.ratio, upper.decay], upper.stress as Stress),
  });
}

function noRing({ parts }: Stack): Refused | undefined {
  if (parts.some((part) => part.ratio > 0)) return undefined;
  return refuse({ kind: "impossible", input: "parts", says: { id: "no-ring-seals" } });
}
