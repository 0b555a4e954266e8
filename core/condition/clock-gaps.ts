import type { Length } from "../units/index.ts";
import { rule, type Uncertain, type Workings } from "../workings/index.ts";

const eastRule = rule({
  id: "offset-towards-three",
  symbol: "x",
  expression: "(g₉ - g₃) / 2",
  unit: "m",
  inputs: [
    { symbol: "g₃", name: "gap-at-3", unit: "m" },
    { symbol: "g₉", name: "gap-at-9", unit: "m" },
  ],
  citation: { source: "geometry", at: "two circles: the gap is s - e cos(θ - φ)" },
});
const northRule = rule({
  ...eastRule,
  id: "offset-towards-twelve",
  symbol: "y",
  expression: "(g₆ - g₁₂) / 2",
  inputs: [
    { symbol: "g₁₂", name: "gap-at-12", unit: "m" },
    { symbol: "g₆", name: "gap-at-6", unit: "m" },
  ],
});
const offsetRule = rule({
  id: "box-offset",
  symbol: "e",
  expression: "√(x² + y²)",
  unit: "m",
  inputs: [
    { symbol: "x", name: "offset-towards-three", unit: "m" },
    { symbol: "y", name: "offset-towards-twelve", unit: "m" },
  ],
  citation: { source: "geometry" },
});
const directionRule = rule({
  id: "offset-direction",
  symbol: "h",
  expression: "12 atan2(x, y) / 2π",
  unit: "1",
  inputs: offsetRule.inputs,
  citation: { source: "geometry", at: "clock hour the shaft lies towards, 12 for 0" },
});
const meanGapRule = rule({
  id: "mean-gap",
  symbol: "ḡ",
  expression: "(g₁₂ + g₃ + g₆ + g₉) / 4",
  unit: "m",
  inputs: [
    { symbol: "g₁₂", name: "gap-at-12", unit: "m" },
    { symbol: "g₃", name: "gap-at-3", unit: "m" },
    { symbol: "g₆", name: "gap-at-6", unit: "m" },
    { symbol: "g₉", name: "gap-at-9", unit: "m" },
  ],
  citation: { source: "geometry" },
});

/** Gaps between shaft and bore at 12, 3, 6 and 9 o'clock. */
export type FourGaps = readonly [Length, Length, Length, Length];

export interface BoxOffset {
  /** How far the shaft lies off the middle of the bore. */
  readonly offset: Uncertain<Length>;
  /** Clock hour it lies towards; left out where the offset drowns in its uncertainty. */
  readonly direction?: number;
  /** Standard uncertainty of the direction, in hours. */
  readonly directionUncertainty?: number;
  readonly meanGap: Uncertain<Length>;
}

/** Where the shaft lies in the bore, from the gap at four clocks, each known to `u`. */
export function boxOffset(work: Workings, [g12, g3, g6, g9]: FourGaps, u: number): BoxOffset {
  const each = u / Math.SQRT2;
  const x = work.step(eastRule, [g3, g9], (g9 - g3) / 2, each);
  const y = work.step(northRule, [g12, g6], (g6 - g12) / 2, each);
  const offset: Uncertain<Length> = { mean: work.step(offsetRule, [x, y], Math.hypot(x, y) as Length, each), u: each as Length };
  const meanGap: Uncertain<Length> = {
    mean: work.step(meanGapRule, [g12, g3, g6, g9], ((g12 + g3 + g6 + g9) / 4) as Length, u / 2),
    u: (u / 2) as Length,
  };
  if (offset.mean <= 2 * each) return { offset, meanGap };
  const hour = (6 * Math.atan2(x, y)) / Math.PI;
  const directionUncertainty = (6 * each) / (Math.PI * offset.mean);
  const direction = work.step(directionRule, [x, y], hour <= 0 ? hour + 12 : hour, directionUncertainty);
  return { offset, meanGap, direction, directionUncertainty };
}
