import type { GaugePressure, PressureSpeed, Speed } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";

const pressureSpeedRule = rule({
  id: "pressure-speed",
  symbol: "p·v",
  expression: "p · v",
  unit: "Pa*m/s",
  inputs: [
    { symbol: "p", name: "boxPressureGauge", unit: "Pa" },
    { symbol: "v", name: "speed", unit: "m/s" },
  ],
  citation: { source: "pressure-velocity-note", at: "the product as the trade uses it; no limit taken over" },
});

/**
 * Box pressure times surface speed. For information: no published limit for
 * packing with a source was found, so none is compared with.
 *
 *   p·v = p · v
 *
 * Units: p Pa gauge, v m/s, p·v Pa·m/s.
 * Range: box pressure 0 to 100 MPa, speed 0 to 200 m/s; refused outside.
 * Source: trade note on the product of pressure and speed.
 * @example pressureSpeed({ boxPressureGauge: quantity("pressure", 3, "bar"), speed: quantity("speed", 3.8, "m/s") }) // 1.14 MPa·m/s
 */
export function pressureSpeed(given: {
  readonly boxPressureGauge: GaugePressure;
  readonly speed: Speed;
}): Answer<{ readonly pressureSpeed: PressureSpeed }> {
  const { boxPressureGauge, speed } = given;
  const refused = outside([
    ["boxPressureGauge", boxPressureGauge, { min: 0, max: 1e8 }, "Pa"],
    ["speed", speed, { min: 0, max: 200 }, "m/s"],
  ]);
  if (refused) return refused;
  const work = begin();
  const product = work.step(pressureSpeedRule, [boxPressureGauge, speed], (boxPressureGauge * speed) as PressureSpeed);
  work.warn({ kind: "note", says: { id: "no-pressure-speed-limit" }, citation: pressureSpeedRule.citation });
  return work.found({ pressureSpeed: product });
}
