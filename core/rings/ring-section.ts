import type { Length } from "../units/index.ts";
import { notWithin, type Range, type Refused, refuse, rule, type Workings } from "../workings/index.ts";

/** The space a ring fills: worn sleeve or shaft, and either the bore or the section. When both are given the bore counts. */
export interface RingSpace {
  readonly shaft: Length;
  readonly bore?: Length;
  readonly section?: Length;
  /** Standard uncertainty of the shaft, when known. */
  readonly shaftUncertainty?: Length;
  /** Standard uncertainty of the bore, when known. */
  readonly boreUncertainty?: Length;
}

const ringSectionRule = rule({
  id: "ring-section",
  symbol: "s",
  name: "section",
  expression: "(D − d) / 2",
  unit: "m",
  inputs: [
    { symbol: "D", name: "bore", unit: "m" },
    { symbol: "d", name: "shaft", unit: "m" },
  ],
  citation: { source: "mobley-1999", at: "p. 226" },
});

const shafts: Range = { min: Number.MIN_VALUE, max: 5 };
const bores: Range = { min: Number.MIN_VALUE, max: 10 };
const sections: Range = { min: Number.MIN_VALUE, max: 1 };
const errors: Range = { min: 0, max: 0.1 };

/** Refuses what is no space for a ring: no shaft, a bore not above it, no section. */
export function refuseSpace({ shaft, bore, section, shaftUncertainty, boreUncertainty }: RingSpace): Refused | undefined {
  const refused =
    notWithin("shaft", shaft, shafts, "m") ??
    notWithin("bore", bore ?? 1, bores, "m") ??
    notWithin("section", section ?? 1, sections, "m") ??
    notWithin("shaftUncertainty", shaftUncertainty ?? 0, errors, "m") ??
    notWithin("boreUncertainty", boreUncertainty ?? 0, errors, "m");
  if (refused) return refused;
  if (bore === undefined)
    return section === undefined ? refuse({ kind: "not-known", input: "section", says: { id: "rings-no-section" } }) : undefined;
  if (bore > shaft) return undefined;
  return refuse({
    kind: "impossible",
    input: "bore",
    given: bore,
    allowed: { min: shaft, unit: "m" },
    says: { id: "rings-bore-not-above-shaft", with: { bore: length(bore), shaft: length(shaft) } },
  });
}

/** The section of the ring as it lies in the box. A section thicker than the shaft is asked about. */
export function ringSection(work: Workings, space: RingSpace): Length {
  const { shaft, bore, section: given, shaftUncertainty, boreUncertainty } = space;
  const u = uncertaintyOf(0.5, shaftUncertainty, boreUncertainty);
  const section = bore === undefined ? given : work.step(ringSectionRule, [bore, shaft], ((bore - shaft) / 2) as Length, u);
  const found = section ?? (0 as Length);
  if (found > shaft) {
    work.warn({
      kind: "slip",
      input: bore === undefined ? "section" : "bore",
      given: bore ?? found,
      says: { id: "rings-section-above-shaft", with: { section: length(found), shaft: length(shaft) } },
    });
  }
  return found;
}

/** Standard uncertainty of `factor` times the sum or difference of shaft and bore; undefined when neither is known. */
export function uncertaintyOf(factor: number, shaft?: Length, bore?: Length): Length | undefined {
  return shaft === undefined && bore === undefined ? undefined : ((factor * Math.hypot(shaft ?? 0, bore ?? 0)) as Length);
}

/** A length as a sentence shows it, in millimetres to one decimal. */
export function length(value: number, decimals = 1): { value: number; kind: string; decimals: number } {
  return { value, kind: "length", decimals };
}
