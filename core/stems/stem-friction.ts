import { type Seating, stressAlongBox } from "../gland/index.ts";
import type { Force, Length, Stress } from "../units/index.ts";
import { type Answer, type Band, begin, outside, rule } from "../workings/index.ts";

const ratioRule = rule({
  id: "stem-stress-ratio",
  symbol: "Y",
  name: "stress-ratio",
  expression: "Y",
  unit: "1",
  inputs: [],
  citation: { source: "drago-evans-2017", at: "0.50 is commonly taken" },
  assumed: { min: 0.3, max: 0.9 },
});

const frictionRule = rule({
  id: "stem-friction",
  symbol: "F_s",
  expression: "π d H σ_g μ Y",
  unit: "N",
  inputs: [
    { symbol: "d", name: "stem", unit: "m" },
    { symbol: "H", name: "packed-length", unit: "m" },
    { symbol: "σ_g", name: "gland-stress", unit: "Pa" },
    { symbol: "μ", name: "friction", unit: "1", valid: { min: 0.02, max: 0.25 } },
    { symbol: "Y", name: "stress-ratio", unit: "1" },
  ],
  citation: { source: "drago-evans-2017", at: "stem friction, the gland stress counted over the whole length" },
});

const decayedRule = rule({
  id: "stem-friction-decayed",
  symbol: "F_s,lo",
  expression: "π d H σ_m μ Y",
  unit: "N",
  inputs: [
    { symbol: "d", name: "stem", unit: "m" },
    { symbol: "H", name: "packed-length", unit: "m" },
    { symbol: "σ_m", name: "mean-axial-stress", unit: "Pa" },
    { symbol: "μ", name: "friction", unit: "1" },
    { symbol: "Y", name: "stress-ratio", unit: "1" },
  ],
  citation: { source: "mechanics", at: "with the stress falling along the box; walls equally rough" },
});

export interface StemFrictionGiven {
  readonly stem: Length;
  readonly bore: Length;
  /** Height of all rings together. */
  readonly packedLength: Length;
  readonly glandStress: Stress;
  /** Coefficient of friction of packing on stem. */
  readonly friction: number;
  /** Radial over axial stress; 0.5 when not given, and said. */
  readonly ratio?: number;
  readonly seating?: Seating;
}

export interface StemFriction {
  /** With the gland stress over the whole length: the most. */
  readonly stemFriction: Force;
  /** From the stress falling along the box to the gland stress all along. */
  readonly frictionBand: Band<Force>;
}

/**
 * Force to slide a stem through its packing.
 *
 *   F_s = π d H σ_g μ Y
 *
 * It counts the gland stress over the whole length; where rings were pushed in
 * by the gland the stress falls along the box, and `frictionBand` begins there.
 *
 * Units: force N, lengths m, stress Pa, friction and Y plain numbers.
 * Range: as `stressAlongBox`; friction outside 0.02 to 0.25 is flagged.
 * Source: Drago and Evans, PVS2017-3518 (formula and Y = 0.5).
 * @example stemFriction({ stem, bore, packedLength, glandStress, friction: 0.1 })
 */
export function stemFriction(given: StemFrictionGiven): Answer<StemFriction> {
  const { stem, bore, packedLength, glandStress, friction, seating } = given;
  const refused = outside([
    ["stem", stem, { min: Number.MIN_VALUE, max: 6 }, "m"],
    ["packedLength", packedLength, { min: Number.MIN_VALUE, max: 2 }, "m"],
    ["friction", friction, { min: 0, max: 1 }, "1"],
    ["ratio", given.ratio ?? 0.5, { min: 0, max: 1 }, "1"],
  ]);
  if (refused) return refused;
  const work = begin();
  const ratio = given.ratio ?? work.assume(ratioRule, 0.5);
  const part = { height: packedLength, ratio, frictionShaft: friction, frictionBore: friction };
  const along = stressAlongBox({ shaft: stem, bore, glandStress, parts: [part], ...(seating ? { seating } : {}) });
  if (!along.ok) return along;
  const { mean } = work.take(along);
  const wall = Math.PI * stem * packedLength * friction * ratio;
  const most = work.step(frictionRule, [stem, packedLength, glandStress, friction, ratio], (wall * glandStress) as Force);
  const least = work.step(decayedRule, [stem, packedLength, mean, friction, ratio], (wall * mean) as Force);
  return work.found({ stemFriction: most, frictionBand: { low: least, high: most } });
}
