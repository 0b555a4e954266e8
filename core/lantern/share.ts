import type { Length } from "../units/index.ts";
import { notWithin, type Range, type Refused, refuse, rule, type Workings } from "../workings/index.ts";

const shareRule = rule({
  id: "lantern-share",
  symbol: "f",
  expression: "n_t / (n_t + n_g)",
  unit: "1",
  inputs: [
    { symbol: "n_t", name: "ringsThroatSide", unit: "1" },
    { symbol: "n_g", name: "ringsGlandSide", unit: "1" },
  ],
  citation: { source: "mechanics", at: "all rings shorten alike; the lantern ring moves by what the rings on its throat side lose" },
});

/** Share of the gland's movement that the lantern ring makes when all rings shorten alike. Refused when there are no rings. */
export function uniformShare(work: Workings, given: { readonly ringsThroatSide: number; readonly ringsGlandSide: number }): number {
  const { ringsThroatSide, ringsGlandSide } = given;
  return work.step(shareRule, [ringsThroatSide, ringsGlandSide], ringsThroatSide / (ringsThroatSide + ringsGlandSide));
}

export function refuseNoRings(given: { readonly ringsThroatSide: number; readonly ringsGlandSide: number }): Refused | undefined {
  if (given.ringsThroatSide + given.ringsGlandSide > 0) return undefined;
  return refuse({ kind: "impossible", input: "ringsThroatSide", given: given.ringsThroatSide, says: { id: "lantern-no-rings" } });
}

/** What is needed to weight the shortening of each ring by the stress it gets from a further push. */
export interface FurtherPush {
  readonly shaft?: Length;
  readonly bore?: Length;
  /** Radial over axial stress, K. */
  readonly ratio?: number;
  readonly frictionShaft?: number;
  readonly frictionBore?: number;
  readonly turning?: boolean;
}

const ratioAssumed = rule({
  id: "lantern-ratio-assumed",
  symbol: "K",
  name: "ratio",
  expression: "",
  unit: "1",
  inputs: [],
  citation: { source: "drago-evans-2017", at: "0.50 commonly taken; the range from memory" },
  assumed: { min: 0.3, max: 0.9 },
});

const frictionAssumed = rule({
  id: "lantern-friction-assumed",
  symbol: "μ",
  name: "friction",
  expression: "",
  unit: "1",
  inputs: [],
  citation: { source: "memory", at: "friction of packing on steel, standing" },
  assumed: { min: 0.05, max: 0.25 },
});

const frictionTurning = rule({
  id: "lantern-friction-turning",
  symbol: "μ_i",
  name: "frictionShaft",
  expression: "0",
  unit: "1",
  inputs: [],
  citation: { source: "mechanics", at: "on a turning shaft the friction points around it, so its part along the shaft is about zero" },
});

const decayRule = rule({
  id: "lantern-ring-decay",
  symbol: "βh",
  expression: "4 · K · (μ_i · d + μ_o · D) · h / (D² − d²)",
  unit: "1",
  inputs: [
    { symbol: "K", name: "ratio", unit: "1" },
    { symbol: "μ_i", name: "frictionShaft", unit: "1" },
    { symbol: "d", name: "shaft", unit: "m" },
    { symbol: "μ_o", name: "frictionBore", unit: "1" },
    { symbol: "D", name: "bore", unit: "m" },
    { symbol: "h", name: "ringHeight", unit: "m" },
  ],
  citation: { source: "ochonski-1988", at: "balance of one slice of packing; derived again here" },
});

const weightedRule = rule({
  id: "lantern-share-weighted",
  symbol: "f_σ",
  expression: "(exp(−n_g · βh) − exp(−(n_g + n_t) · βh)) / (1 − exp(−(n_g + n_t) · βh))",
  unit: "1",
  inputs: [
    { symbol: "n_g", name: "ringsGlandSide", unit: "1" },
    { symbol: "n_t", name: "ringsThroatSide", unit: "1" },
    { symbol: "βh", name: "lantern-ring-decay", unit: "1" },
  ],
  citation: {
    source: "mechanics",
    at: "each ring shortens with its mean stress from a further push; the lantern ring carries no wall friction",
  },
});

const shafts: Range = { min: Number.MIN_VALUE, max: 5 };
const bores: Range = { min: Number.MIN_VALUE, max: 10 };
const parts: Range = { min: 0, max: 1 };

export function refusePush({ shaft, bore, ratio, frictionShaft, frictionBore }: FurtherPush): Refused | undefined {
  const refused =
    notWithin("shaft", shaft ?? 1, shafts, "m") ??
    notWithin("bore", bore ?? 1, bores, "m") ??
    notWithin("ratio", ratio ?? 0.5, parts, "1") ??
    notWithin("frictionShaft", frictionShaft ?? 0, parts, "1") ??
    notWithin("frictionBore", frictionBore ?? 0, parts, "1");
  if (refused || shaft === undefined || bore === undefined || bore > shaft) return refused;
  return refuse({
    kind: "impossible",
    input: "bore",
    given: bore,
    allowed: { min: shaft, unit: "m" },
    says: { id: "lantern-bore-not-above-shaft" },
  });
}

/**
 * Share of the gland's movement that the lantern ring makes when each ring
 * shortens in proportion to what it feels of a further push. Undefined when
 * shaft or bore is not given: then nothing is known about the walls.
 */
export function weightedShare(
  work: Workings,
  rings: { readonly ringsThroatSide: number; readonly ringsGlandSide: number; readonly ringHeight: Length },
  push: FurtherPush,
): number | undefined {
  const { shaft, bore, turning = false } = push;
  if (shaft === undefined || bore === undefined) return undefined;
  const { ringsThroatSide, ringsGlandSide, ringHeight } = rings;
  const ratio = push.ratio ?? work.assume(ratioAssumed, 0.5);
  const frictionBore = push.frictionBore ?? work.assume(frictionAssumed, 0.1);
  const frictionShaft = turning ? work.step(frictionTurning, [], 0) : (push.frictionShaft ?? frictionBore);
  const decay = work.step(
    decayRule,
    [ratio, frictionShaft, shaft, frictionBore, bore, ringHeight],
    (4 * ratio * (frictionShaft * shaft + frictionBore * bore) * ringHeight) / (bore * bore - shaft * shaft),
  );
  const all = ringsThroatSide + ringsGlandSide;
  // expm1 keeps the digits when the walls are nearly without friction; without any, all rings shorten alike.
  const share =
    decay === 0
      ? ringsThroatSide / all
      : (Math.exp(-ringsGlandSide * decay) * Math.expm1(-ringsThroatSide * decay)) / Math.expm1(-all * decay);
  return work.step(weightedRule, [ringsGlandSide, ringsThroatSide, decay], share);
}
