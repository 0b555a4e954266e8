import { stressAlongBox } from "../gland/index.ts";
import type { Force, Length, Stress } from "../units/index.ts";
import { outside, type Refused, rule, type Workings } from "../workings/index.ts";

const frictionRule = rule({
  id: "rod-friction",
  symbol: "F",
  expression: "π d L μ_r K σ_m",
  unit: "N",
  inputs: [
    { symbol: "d", name: "rod", unit: "m" },
    { symbol: "L", name: "stack-height", unit: "m" },
    { symbol: "μ_r", name: "friction-running", unit: "1", valid: { min: 0.005, max: 0.25 } },
    { symbol: "K", name: "stress-ratio", unit: "1" },
    { symbol: "σ_m", name: "mean-axial-stress", unit: "Pa" },
  ],
  citation: {
    source: "mechanics",
    at: "jam packing: contact stress times area; rod friction helps on one stroke and hinders on the other, so the bore alone takes stress",
  },
});

/** What it costs to slide the rod: all four, or it is left out. */
export interface SlideGiven {
  readonly glandStress?: Stress;
  readonly ratio?: number;
  readonly frictionRunning?: number;
  readonly frictionBore?: number;
}

/** Force to slide a rod through jam packing; nothing when not all of it is given. */
export function frictionOf(
  work: Workings,
  given: SlideGiven & { readonly rod: Length; readonly bore: Length; readonly packed: Length },
): Refused | { readonly ok: true; readonly value: Force } | undefined {
  const { rod, bore, packed, glandStress, ratio, frictionRunning, frictionBore } = given;
  if (glandStress === undefined || ratio === undefined || frictionRunning === undefined || frictionBore === undefined) return undefined;
  const shares = { min: 0, max: 1 };
  const refused = outside([
    ["frictionRunning", frictionRunning, shares, "1"],
    ["frictionBore", frictionBore, shares, "1"],
    ["ratio", ratio, shares, "1"],
  ]);
  if (refused) return refused;
  const parts = [{ height: packed, ratio, frictionShaft: 0, frictionBore }];
  const along = stressAlongBox({ shaft: rod, bore, glandStress, parts });
  if (!along.ok) return along;
  const { mean } = work.take(along);
  const wall = Math.PI * rod * packed * frictionRunning * ratio;
  return { ok: true, value: work.step(frictionRule, [rod, packed, frictionRunning, ratio, mean], (wall * mean) as Force) };
}
