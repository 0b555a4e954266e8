import type { Length } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { Part, Stack } from "./part.ts";

/**
 * Friction on both walls eats the axial stress: A dσ/dx = −π K (μ_s d + μ_b D) σ.
 * Validity is what is known of packings: K 0.3 to 0.9, friction to 0.25.
 */
const decayRule = rule({
  id: "wall-friction-decay",
  symbol: "b",
  expression: "4 K (μ_s d + μ_b D) / (D² − d²)",
  unit: "1/m",
  inputs: [
    { symbol: "K", name: "stress-ratio", unit: "1", valid: { min: 0.3, max: 0.9 } },
    { symbol: "μ_s", name: "axial-friction-shaft", unit: "1", valid: { max: 0.25 } },
    { symbol: "d", name: "shaft", unit: "m" },
    { symbol: "μ_b", name: "friction-bore", unit: "1", valid: { max: 0.25 } },
    { symbol: "D", name: "bore", unit: "m" },
  ],
  citation: {
    source: "mechanics",
    at: "force balance on a slice of packing; same form in Ochonski 1988 and Diany and Bouzid 2009, from memory",
  },
});

/**
 * How fast the axial stress falls in each part, per metre. A part equal to the
 * one before is not written down again. On a turning shaft the friction vector
 * points around, so its axial part is nought.
 */
export function decayOf(work: Workings, { shaft, bore, parts, turning }: Stack): readonly number[] {
  const rates: number[] = [];
  let last: Part | undefined;
  let rate = 0;
  for (let i = 0; i < parts.length; i++) {
    const part = parts[i];
    if (!part || part.ratio === 0) {
      rates.push(0);
      continue;
    }
    const { ratio, frictionShaft, frictionBore } = part;
    if (!last || last.ratio !== ratio || last.frictionShaft !== frictionShaft || last.frictionBore !== frictionBore) {
      const along = turning ? 0 : frictionShaft;
      rate = work.step(decayRule, [ratio, along, shaft, frictionBore, bore], decayRate(ratio, along, shaft, frictionBore, bore));
      last = part;
    }
    rates.push(rate);
  }
  return rates;
}

function decayRate(ratio: number, frictionShaft: number, shaft: Length, frictionBore: number, bore: Length): number {
  return (4 * ratio * (frictionShaft * shaft + frictionBore * bore)) / ((bore - shaft) * (bore + shaft));
}

/**
 * Mean of e^(t x) for x from 0 to 1: (e^t − 1) / t. Near 0 that is nought over
 * nought, so two terms of its series stand in; what they leave out is below
 * the last digit.
 */
export function meanOver(t: number): number {
  return Math.abs(t) < 1e-8 ? 1 + t / 2 : Math.expm1(t) / t;
}
