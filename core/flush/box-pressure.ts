import type { SourceId } from "../sources/index.ts";
import { type GaugePressure, type PressureDifference, quantity } from "../units/index.ts";
import { type Answer, type Band, band, begin, outside, refuse, type Workings } from "../workings/index.ts";
import {
  type BoxDesign,
  type BoxDesignFacts,
  type BoxPressureFacts,
  type BoxPressureFigure,
  boxDesigns,
  factsOf,
  type ImpellerDiameter,
} from "./box-designs.ts";
import * as rules from "./box-pressure-rules.ts";

/** The box pressure that one source leads to. */
interface BoxPressureOpinion {
  readonly source: SourceId;
  readonly pressure: GaugePressure;
  /** Share of the differential; none where the source gives a fixed pressure above suction. */
  readonly factor?: number;
}

export interface BoxPressure {
  readonly band: Band<GaugePressure>;
  readonly typical: GaugePressure;
  /** What the answer rests on. */
  readonly basis: "gauge" | "design";
  /** Beside a gauge reading: what the design would give. */
  readonly byDesign?: Band<GaugePressure>;
  readonly published: readonly BoxPressureOpinion[];
}

export interface BoxPressureGiven {
  readonly suction?: GaugePressure;
  readonly discharge?: GaugePressure;
  readonly design: BoxDesign;
  readonly impellerDiameter?: ImpellerDiameter;
  readonly measuredGauge?: GaugePressure;
  readonly gaugeError?: PressureDifference;
}

const lowestGauge = quantity("pressure", -1.1, "bar");
const highestGauge = quantity("pressure", 1000, "bar");
const range = { min: lowestGauge, max: highestGauge };

/**
 * Pressure at the bottom of the box, as a band. A gauge at the flush tee wins;
 * else suction plus a share of the differential by the design of the pump,
 * half to one and a half times the usual figure, widened to every published
 * one and never outside suction to discharge.
 *
 *   p_b = p_s + C (p_d − p_s)
 *
 * Units: gauge pressures Pa.
 * Range: −1.1 to 1000 bar; gauge error 0.001 to 10 bar. Discharge below suction is refused as
 * impossible; neither gauge nor both pressures is refused as not known.
 * Source: Buck, seal-chamber pressures, eqs. 1, 3, 5; others in data/limits/box-pressure.json.
 * @example boxPressure({ suction, discharge, design: "balance-holes-back-rings" }, facts) // 10 and 200 psi: 38.5 psi
 */
export function boxPressure(given: BoxPressureGiven, facts: BoxPressureFacts): Answer<BoxPressure> {
  const { suction, discharge, design, measuredGauge, gaugeError } = given;
  const refused = outside([
    ["suction", suction ?? 0, range, "Pa"],
    ["discharge", discharge ?? 0, range, "Pa"],
    ["measuredGauge", measuredGauge ?? 0, range, "Pa"],
    ["gaugeError", gaugeError ?? rules.gaugeErrorUsual, { min: 100, max: 1e6 }, "Pa"],
  ]);
  if (refused) return refused;
  const known = factsOf(facts, design, given.impellerDiameter);
  if (!known) {
    return refuse({
      kind: "not-known",
      input: "design",
      given: design,
      allowed: boxDesigns,
      says: { id: "design-not-known", with: { given: design } },
    });
  }
  if (suction !== undefined && discharge !== undefined && discharge < suction) {
    return refuse({
      kind: "impossible",
      input: "discharge",
      given: discharge,
      allowed: { min: suction, unit: "Pa" },
      says: { id: "discharge-below-suction", with: { suction: { value: suction, kind: "pressure" } } },
    });
  }
  const work = begin();
  const computed = suction !== undefined && discharge !== undefined ? byDesign(work, suction, discharge, known) : undefined;
  if (measuredGauge !== undefined) return byGauge(work, measuredGauge, gaugeError, computed);
  if (!computed) {
    const input = suction === undefined ? "suction" : "discharge";
    return refuse({ kind: "not-known", input, says: { id: "box-pressure-not-known" } });
  }
  work.warn({ kind: "note", input: "design", says: { id: "box-pressure-estimate" }, citation: { source: "own-proposal" } });
  if (design === "unknown" || design === "overhung-unknown") {
    work.warn({ kind: "gap", input: "design", says: { id: "design-unknown" } });
  }
  if (design === "back-vanes" && given.impellerDiameter === undefined) {
    work.warn({ kind: "gap", input: "impellerDiameter", says: { id: "impeller-diameter-unknown" }, citation: known.typical.citation });
  }
  if (design === "balance-holes-back-rings") {
    work.warn({ kind: "note", input: "design", says: { id: "worn-rings-raise-box-pressure" }, citation: { source: "common-practice" } });
  }
  if (discharge === suction) work.warn({ kind: "note", input: "discharge", says: { id: "pump-makes-no-pressure" } });
  const { typical, band: likely, published } = computed;
  return work.found({ typical, band: likely, published, basis: "design" as const });
}

function byDesign(work: Workings, suction: GaugePressure, discharge: GaugePressure, facts: BoxDesignFacts) {
  const differential = work.step(rules.differentialRule, [discharge, suction], discharge - suction);
  const riseBy = ({ factor, above, citation }: BoxPressureFigure): number => {
    if (factor !== undefined) return work.step(rules.riseByFactor(citation), [factor, differential], factor * differential);
    const printed = above ?? Number.NaN;
    return work.step(rules.riseFixed(citation), [printed, differential], Math.min(printed, differential));
  };
  const rise = riseBy(facts.typical);
  const rises = facts.published.map(riseBy);
  let least = rise;
  let most = rise;
  for (const one of rises) {
    least = Math.min(least, one);
    most = Math.max(most, one);
  }
  const low = work.step(rules.lowestRise, [rise, least], Math.max(0, Math.min(rise / 2, least)));
  const high = work.step(rules.highestRise, [rise, most, differential], Math.min(differential, Math.max(1.5 * rise, most)));
  return {
    typical: work.step(rules.typicalPressure, [suction, rise], (suction + rise) as GaugePressure),
    band: band(
      work.step(rules.lowestPressure, [suction, low], (suction + low) as GaugePressure),
      work.step(rules.highestPressure, [suction, high], (suction + high) as GaugePressure),
    ),
    published: facts.published.map(({ factor, citation }, index) => ({
      source: citation.source,
      pressure: work.step(
        rules.publishedPressure(citation),
        [suction, rises[index] ?? Number.NaN],
        (suction + (rises[index] ?? Number.NaN)) as GaugePressure,
      ),
      ...(factor === undefined ? {} : { factor }),
    })),
  };
}

function byGauge(
  work: Workings,
  reading: GaugePressure,
  error: PressureDifference | undefined,
  design: { readonly band: Band<GaugePressure>; readonly published: readonly BoxPressureOpinion[] } | undefined,
): Answer<BoxPressure> {
  const by = error ?? work.assume(rules.gaugeErrorTaken, rules.gaugeErrorUsual);
  const typical = work.step(rules.gaugeTaken, [reading], reading);
  const low = work.step(rules.gaugeLowest, [reading, by], (reading - by) as GaugePressure);
  const high = work.step(rules.gaugeHighest, [reading, by], (reading + by) as GaugePressure);
  work.warn({ kind: "note", input: "measuredGauge", says: { id: "tee-reads-the-lantern" }, citation: { source: "own-proposal" } });
  if (design && (high < design.band.low || low > design.band.high)) {
    work.warn({
      kind: "note",
      input: "measuredGauge",
      given: reading,
      says: {
        id: "gauge-outside-design",
        with: { low: { value: design.band.low, kind: "pressure" }, high: { value: design.band.high, kind: "pressure" } },
      },
    });
  }
  return work.found({
    band: band(low, high),
    typical,
    basis: "gauge" as const,
    published: design?.published ?? [],
    ...(design ? { byDesign: design.band } : {}),
  });
}
