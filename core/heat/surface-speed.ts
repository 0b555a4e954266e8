import type { Length, Rotation, Speed } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";

const surfaceSpeedRule = rule({
  id: "surface-speed",
  symbol: "v",
  expression: "d · ω / 2",
  unit: "m/s",
  inputs: [
    { symbol: "d", name: "shaft", unit: "m" },
    { symbol: "ω", name: "rotation", unit: "rad/s" },
  ],
  citation: { source: "geometry", at: "circumference times turns; π d n / 60 with n per minute" },
});

/**
 * Speed of the shaft surface under the packing.
 *
 *   v = d · ω / 2
 *
 * Units: v m/s, d m, ω rad/s.
 * Range: shaft above 0 to 5 m, rotation 0 to 6000 rad/s; refused outside.
 * Source: geometry.
 * @example surfaceSpeed({ shaft: quantity("length", 50, "mm"), rotation: quantity("rotation", 1450, "rpm") }) // 3.796 m/s
 */
export function surfaceSpeed(given: { readonly shaft: Length; readonly rotation: Rotation }): Answer<{ readonly speed: Speed }> {
  const { shaft, rotation } = given;
  const refused = outside([
    ["shaft", shaft, { min: Number.MIN_VALUE, max: 5 }, "m"],
    ["rotation", rotation, { min: 0, max: 6000 }, "rad/s"],
  ]);
  if (refused) return refused;
  const work = begin();
  return work.found({ speed: work.step(surfaceSpeedRule, [shaft, rotation], ((shaft * rotation) / 2) as Speed) });
}
