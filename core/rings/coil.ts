import { type Length, quantity } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";
import { type CutQuestion, cutGeometry, refuseCut } from "./ring-cut.ts";
import { refuseSpace } from "./ring-section.ts";

export interface Coil {
  /** Strip to take for all rings, trim in it. */
  readonly length: Length;
  /** Up to the next whole centimetre. */
  readonly lengthRounded: Length;
  /** What is lost to trim on each ring. */
  readonly trim: Length;
  readonly ringLength: Length;
  readonly cutLength: Length;
}

const trimAssumed = rule({
  id: "coil-trim",
  symbol: "t",
  name: "trim",
  expression: "",
  unit: "m",
  inputs: [],
  citation: { source: "common-practice", at: "3 to 6 mm a ring" },
  assumed: { min: quantity("length", 3, "mm"), max: quantity("length", 6, "mm") },
});

const coilRule = rule({
  id: "coil-length",
  symbol: "L_k",
  expression: "n · (L + t) + e",
  unit: "m",
  inputs: [
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "L", name: "ring-length", unit: "m" },
    { symbol: "t", name: "trim", unit: "m" },
    { symbol: "e", name: "ring-bevel", unit: "m" },
  ],
  citation: { source: "geometry", at: "neighbouring rings share a cut face, so the slant is lost once" },
});

const roundedUpRule = rule({
  id: "coil-length-rounded",
  symbol: "L_r",
  expression: "L_k, up to the whole centimetre",
  unit: "m",
  inputs: [{ symbol: "L_k", name: "coil-length", unit: "m" }],
  citation: { source: "own-proposal", at: "a coil is taken from the shelf generously" },
});

const centimetre = quantity("length", 1, "cm");

/**
 * How much strip to take from the coil for a set of rings. Parallel slanting
 * cuts are shared by neighbours, so the slant is lost once for the whole strip
 * and not once a ring.
 *
 *   L_k = n · (L + t) + s / tan α
 *
 * Units: lengths m.
 * Range: rings 1 to 1000, trim 0 to 0.1 m a ring, else as `ringCut`; refused outside. Trim left out: 5 mm a ring taken, 3 to 6 mm shown.
 * Source: geometry; trim is common practice.
 * @example coil({ shaft: quantity("length", 50, "mm"), bore: quantity("length", 75, "mm"), cut: "butt", rings: 5 }) // 1.007 m
 */
export function coil(given: CutQuestion & { readonly rings: number; readonly trim?: Length }): Answer<Coil> {
  const { rings } = given;
  const refused =
    outside([
      ["rings", rings, { min: 1, max: 1000 }, "1"],
      ["trim", given.trim ?? 0, { min: 0, max: 0.1 }, "m"],
    ]) ??
    refuseSpace(given) ??
    refuseCut(given);
  if (refused) return refused;
  const work = begin();
  const { length, bevel, cutLength } = cutGeometry(work, given);
  const trim = given.trim ?? work.assume(trimAssumed, quantity("length", 5, "mm"));
  const total = work.step(coilRule, [rings, length.mean, trim, bevel], (rings * (length.mean + trim) + bevel) as Length);
  return work.found({
    length: total,
    lengthRounded: work.step(roundedUpRule, [total], quantity("length", Math.ceil(total / centimetre - 1e-9), "cm")),
    trim,
    ringLength: length.mean,
    cutLength,
  });
}
