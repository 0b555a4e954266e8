import type { Area, Length } from "../units/index.ts";
import { notWithin, type Range, type Refused, refuse, rule, type Workings } from "../workings/index.ts";

const annulusRule = rule({
  id: "packing-area",
  symbol: "A",
  expression: "π/4 · (D² − d²)",
  unit: "m2",
  inputs: [
    { symbol: "D", name: "bore", unit: "m" },
    { symbol: "d", name: "shaft", unit: "m" },
  ],
  citation: { source: "geometry", at: "area of the ring between shaft and bore" },
});

/** What a shaft or bore may measure; beyond it nobody packs a box. */
const diameters: Range = { min: Number.MIN_VALUE, max: 6 };

/** Refuses a shaft or bore that is no size, or a shaft that does not go into its bore. */
export function noAnnulus(shaft: Length, bore: Length, shaftName = "shaft"): Refused | undefined {
  const refused = notWithin(shaftName, shaft, diameters, "m") ?? notWithin("bore", bore, diameters, "m");
  if (refused) return refused;
  if (shaft < bore) return undefined;
  return refuse({
    kind: "impossible",
    input: "bore",
    given: bore,
    allowed: { min: shaft, unit: "m" },
    says: { id: "gland-bore-not-larger", with: { shaft: { value: shaft, kind: "length" }, bore: { value: bore, kind: "length" } } },
  });
}

/** Area of packing that the follower presses on. */
export function packingArea(work: Workings, shaft: Length, bore: Length): Area {
  return work.step(annulusRule, [bore, shaft], ((Math.PI / 4) * (bore - shaft) * (bore + shaft)) as Area);
}
