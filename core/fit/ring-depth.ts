import type { Length } from "../units/index.ts";
import { type Answer, begin, outside, rule, type Says } from "../workings/index.ts";

const offRule = rule({
  id: "ring-off",
  symbol: "Δ",
  expression: "x − x_k",
  unit: "m",
  inputs: [
    { symbol: "x", name: "found", unit: "m" },
    { symbol: "x_k", name: "predicted", unit: "m" },
  ],
  citation: { source: "geometry", at: "depth found less depth foretold; a face nearer the gland is negative" },
});

const stopRule = rule({
  id: "ring-off-stop",
  symbol: "δ",
  expression: "h / 2",
  unit: "m",
  inputs: [{ symbol: "h", name: "ringHeight", unit: "m" }],
  citation: { source: "common-practice", at: "off by half a ring: one is missing, doubled or not home" },
});

export interface RingDepth {
  /** Found less foretold; negative when the face lies nearer the gland. */
  readonly off: Length;
  readonly verdict: "go-on" | "stop";
  readonly says: Says;
}

/**
 * Whether a ring came home: its face found against its face foretold.
 *
 *   Δ = x − x_k, stop when |Δ| ≥ h / 2
 *
 * Units: m, depths from the face of the box inwards.
 * Range: depths 0 to 10 m, ring height above 0 to 1 m; refused outside.
 * Source: geometry; half a ring as the limit is common practice.
 * @example ringDepth({ found: quantity("length", 48, "mm"), predicted: quantity("length", 50, "mm"), ringHeight: quantity("length", 9, "mm") })
 */
export function ringDepth(given: { readonly found: Length; readonly predicted: Length; readonly ringHeight: Length }): Answer<RingDepth> {
  const { found, predicted, ringHeight } = given;
  const refused = outside([
    ["found", found, { min: 0, max: 10 }, "m"],
    ["predicted", predicted, { min: 0, max: 10 }, "m"],
    ["ringHeight", ringHeight, { min: Number.MIN_VALUE, max: 1 }, "m"],
  ]);
  if (refused) return refused;
  const work = begin();
  const off = work.step(offRule, [found, predicted], (found - predicted) as Length);
  // A reading that is exactly half a ring off stops, whatever the last binary digit says.
  const stop = Math.abs(off) >= work.step(stopRule, [ringHeight], ringHeight / 2) * (1 - 1e-9);
  return work.found({
    off,
    verdict: stop ? "stop" : "go-on",
    says: stop ? { id: "fit-ring-off", with: { off: { value: Math.abs(off), kind: "length", decimals: 1 } } } : { id: "fit-ring-home" },
  });
}
