import type { GaugePressure, Length } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { RodFacts } from "./rod-facts.ts";

const undersizeRule = rule({
  id: "rod-undersize",
  symbol: "w",
  expression: "d − d_w",
  unit: "m",
  inputs: [
    { symbol: "d", name: "rod", unit: "m" },
    { symbol: "d_w", name: "rod-smallest", unit: "m" },
  ],
  citation: { source: "geometry", at: "size when new less the smallest found along the stroke" },
});

/** What the rod holds back: liquid past a plunger, or gas past a rod. */
export const rodServices = ["liquid", "gas"] as const;
export type RodService = (typeof rodServices)[number];

export interface Undersize {
  readonly undersize: Length;
  readonly undersizeLimit: Length;
}

/** How far a rod is worn below its size, and the printed limit for its service; passing it is a warning. */
export function undersizeOf(
  work: Workings,
  given: { readonly rod: Length; readonly rodSmallest: Length; readonly service: RodService; readonly pressure?: GaugePressure },
  { gasRod, plunger }: RodFacts,
): Undersize {
  const { rod, rodSmallest, service, pressure } = given;
  const undersize = work.step(undersizeRule, [rod, rodSmallest], (rod - rodSmallest) as Length);
  const byDiameter = gasRod.perDiameter * rod;
  // Pressure not said counts as high: the tighter limit is the careful one.
  const cap = pressure === undefined || pressure > gasRod.mostAbove ? gasRod.most : byDiameter;
  const undersizeLimit =
    service === "gas"
      ? work.step(gasRod.rule, [gasRod.perDiameter, rod, cap], Math.min(byDiameter, cap) as Length)
      : work.step(plunger.rule, [], plunger.most);
  const citation = service === "gas" ? gasRod.rule.citation : plunger.rule.citation;
  if (undersize > undersizeLimit) {
    const shown = { worn: { value: undersize, kind: "length" }, limit: { value: undersizeLimit, kind: "length" } };
    work.warn({ kind: "limit", input: "rodSmallest", given: rodSmallest, says: { id: "rod-too-thin", with: shown }, citation });
  }
  if (service === "liquid") work.warn({ kind: "note", input: "rodSmallest", says: { id: "plunger-limit-one-pump" }, citation });
  return { undersize, undersizeLimit };
}
