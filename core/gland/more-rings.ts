import type { Length } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";
import { noAnnulus } from "./annulus.ts";
import { noStack, type Part } from "./part.ts";
import { decayOf } from "./wall-friction.ts";

const reachesRule = rule({
  id: "share-after-rings",
  symbol: "r",
  expression: "e^(−b n h)",
  unit: "1",
  inputs: [
    { symbol: "b", name: "wall-friction-decay", unit: "1/m" },
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "h", name: "ring-height", unit: "m" },
  ],
  citation: { source: "mechanics", at: "the decay law over n equal rings" },
});

const neededRule = rule({
  id: "gland-stress-for-same-bottom",
  symbol: "f",
  expression: "r_n / r_m",
  unit: "1",
  inputs: [
    { symbol: "r_n", name: "share-after-rings", unit: "1" },
    { symbol: "r_m", name: "share-after-other-rings", unit: "1" },
  ],
  citation: { source: "mechanics", at: "gland stress that leaves the same at the bottom" },
});

export interface MoreRings {
  /** Share of the gland stress that reaches the bottom with `rings`. */
  readonly share: number;
  readonly otherRings: number;
  readonly otherShare: number;
  /** Gland stress with the other count over gland stress now, for the same stress at the bottom. */
  readonly needed: number;
}

/**
 * What another count of rings does to the stress at the bottom: by default one more.
 *
 *   r = e^(−b n h)
 *
 * Units: lengths m, shares plain numbers.
 * Range: as `stressAlongBox`; 1 to 100 rings; refused outside.
 * Source: force balance on a slice; the trade's own remark that dropping from 7 to 5 rings may halve the needed stress holds only where K times friction is 0.173 or more.
 * @example moreRings({ shaft, bore, rings: 5, ringHeight: section, ratio: 0.5, frictionShaft: 0.1, frictionBore: 0.1 })
 */
export function moreRings(
  given: Omit<Part, "height"> & {
    readonly shaft: Length;
    readonly bore: Length;
    readonly rings: number;
    readonly otherRings?: number;
    readonly ringHeight: Length;
    readonly turning?: boolean;
  },
): Answer<MoreRings> {
  const { shaft, bore, rings, ringHeight, otherRings = rings + 1 } = given;
  const ring: Part = { height: ringHeight, ratio: given.ratio, frictionShaft: given.frictionShaft, frictionBore: given.frictionBore };
  const counts = { min: 1, max: 100 };
  const refused =
    noAnnulus(shaft, bore) ??
    outside([
      ["rings", rings, counts, "1"],
      ["otherRings", otherRings, { min: 1, max: 101 }, "1"],
      ["ringHeight", ringHeight, { min: Number.MIN_VALUE, max: 2 }, "m"],
      ["ratio", ring.ratio, { min: 0, max: 1 }, "1"],
      ["frictionShaft", ring.frictionShaft, { min: 0, max: 1 }, "1"],
      ["frictionBore", ring.frictionBore, { min: 0, max: 1 }, "1"],
    ]) ??
    noStack([ring]);
  if (refused) return refused;
  const work = begin();
  const [rate = 0] = decayOf(work, { shaft, bore, parts: [ring], turning: given.turning ?? false });
  const reaches = (n: number) => work.step(reachesRule, [rate, n, ringHeight], Math.exp(-rate * n * ringHeight));
  const share = reaches(rings);
  const otherShare = reaches(otherRings);
  const needed = work.step(neededRule, [share, otherShare], Math.exp(rate * (otherRings - rings) * ringHeight));
  const citation = { source: "bloch-geitner-maintenance", at: "p. 127" } as const;
  if (otherRings > rings) work.warn({ kind: "note", input: "otherRings", says: { id: "more-rings-not-tighter" }, citation });
  return work.found({ share, otherRings, otherShare, needed });
}
