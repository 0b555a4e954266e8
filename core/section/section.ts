import { type How, type Measured, measured, type UncertaintyFacts } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import { type Answer, begin, type Found, outside, refuse, type Uncertain, type Warning, type Workings } from "../workings/index.ts";
import { nearStock, type Stock } from "./near-stock.ts";
import { braidToleranceRule, rollingRule, sectionRule } from "./section-rules.ts";
import { notAmong, notLarger, slipsOfSection } from "./section-slips.ts";
import type { StockFacts, StockSeries } from "./stock.ts";

export interface Section {
  readonly section: Uncertain<Length>;
  readonly shaft: Uncertain<Length>;
  readonly bore: Uncertain<Length>;
  readonly series: StockSeries;
  readonly braidTolerance: number;
  /** Nearest first. */
  readonly stock: readonly Stock[];
  /** Sizes that may be bought for this box, nearest first: those that fit, else those to roll. */
  readonly choice: readonly Length[];
  /** Ids of what to do. */
  readonly advice: readonly string[];
}

/** What a section is worked out from. Measured on the worn sleeve and in the worn bore, never off the nameplate. */
export interface SectionQuestion extends SectionOptions {
  readonly shaft: Length;
  readonly bore: Length;
  readonly shaftReadings?: readonly Length[];
  readonly boreReadings?: readonly Length[];
  readonly resolution?: Length;
  readonly how?: How;
  readonly shaftHow?: How;
  readonly boreHow?: How;
}

/** Two diameters that were measured, with their uncertainty. */
export interface SectionBetween extends SectionOptions {
  readonly shaft: Uncertain<Length>;
  readonly bore: Uncertain<Length>;
}

interface SectionOptions {
  readonly series?: StockSeries;
  /** As a share of the section. */
  readonly braidTolerance?: number;
  /** Die-formed rings: never rolled. */
  readonly preformed?: boolean;
  readonly nameplateSection?: Length;
}

const diameter = { min: Number.MIN_VALUE, max: 5 };

/**
 * The gap that the packing has to fill, how sure it is, and for each near
 * stock size the misfit, the probability that it is the nearest one, and what
 * to do with it.
 *
 *   s = (D - d) / 2,  u(s)² = (u(D)² + u(d)²) / 4
 *
 * Units: m; probabilities and shares plain numbers.
 * Range: shaft and bore above 0 to 5 m, bore larger than shaft, braid tolerance 0 to 0.3; refused otherwise. Readings, where given, are used instead of the single value. Values no box is likely to have are asked about.
 * Source: Mobley, Root Cause Failure Analysis, 1999, p. 226; JCGM 100:2008; braid tolerance is common practice, the rolling limit our own proposal.
 * @example section({ shaft: quantity("length", 50, "mm"), bore: quantity("length", 70, "mm"), how: "caliper" }, facts.section, facts.uncertainty)
 */
export function section(given: SectionQuestion, stock: StockFacts, uncertainty: UncertaintyFacts): Answer<Section> {
  const refused = outside([
    ["shaft", given.shaft, diameter, "m"],
    ["bore", given.bore, diameter, "m"],
    ["braidTolerance", given.braidTolerance ?? 0, { min: 0, max: 0.3 }, "1"],
    ["nameplateSection", given.nameplateSection ?? 1, diameter, "m"],
  ]);
  if (refused) return refused;
  const shaft = dimension("shaft", given, uncertainty);
  if (!shaft.ok) return shaft;
  const bore = dimension("bore", given, uncertainty);
  if (!bore.ok) return bore;
  const work = begin();
  const d = take(work, shaft, "shaft", new Set());
  const D = take(work, bore, "bore", new Set(shaft.warnings.map((warning) => warning.says.id)));
  const offReadings = [
    ...notAmong("shaft", given.shaft, given.shaftReadings, d.mean),
    ...notAmong("bore", given.bore, given.boreReadings, D.mean),
  ];
  for (const warning of offReadings) work.warn(warning);
  const between = sectionBetween({ ...given, shaft: d, bore: D }, stock, uncertainty);
  return between.ok ? work.found(work.take(between)) : between;
}

/**
 * The section between two diameters whose uncertainty is known: what `section`
 * works out once it has the readings.
 *
 *   s = (D - d) / 2,  u(s)² = (u(D)² + u(d)²) / 4
 *
 * Units: m; probabilities and shares plain numbers.
 * Range: as `section`.
 * Source: as `section`.
 * @example sectionBetween({ shaft: uncertain(0.05), bore: uncertain(0.07) }, facts.section.stock, facts.uncertainty)
 */
export function sectionBetween(given: SectionBetween, stock: StockFacts, uncertainty: UncertaintyFacts): Answer<Section> {
  const { shaft: d, bore: D } = given;
  const work = begin();
  const nothing = outside([
    ["shaft", d.mean, diameter, "m"],
    ["bore", D.mean, diameter, "m"],
  ]);
  if (nothing) return nothing;
  if (D.mean <= d.mean) return notLarger(d.mean, D.mean, uncertainty.plausible);

  const u = Math.sqrt(D.u * D.u + d.u * d.u) / 2;
  const gap: Uncertain<Length> = {
    mean: work.step(sectionRule, [D.mean, d.mean], ((D.mean - d.mean) / 2) as Length, u),
    u: u as Length,
  };
  for (const warning of slipsOfSection(d.mean, D.mean, gap.mean, uncertainty.plausible)) work.warn(warning);
  if (given.nameplateSection !== undefined) compareNameplate(work, given.nameplateSection, gap);

  const tolerance = given.braidTolerance ?? work.assume(braidToleranceRule(stock.braidTolerance), stock.braidTolerance.usual);
  const rolling = given.preformed ? tolerance : work.assume(rollingRule(stock.rolling), Math.max(tolerance, stock.rolling.most));
  const limits = { tolerance, rolling };
  const series = given.series ?? "both";
  const listed = nearStock(work, gap, limits, series, stock.sizes);
  const choice = chosen(listed);
  return work.found({
    section: gap,
    shaft: d,
    bore: D,
    series,
    braidTolerance: tolerance,
    stock: listed,
    choice: choice.map((entry) => entry.size),
    advice: advise(listed, choice, given.preformed ?? false),
  });
}

/** One diameter from its readings, or from the single value that was given. */
function dimension(name: "shaft" | "bore", given: SectionQuestion, facts: UncertaintyFacts): Answer<Measured> {
  const readings = given[`${name}Readings`] ?? [given[name]];
  const how = given[`${name}How`] ?? given.how;
  const found = measured(
    {
      readings,
      field: name,
      ...(given.resolution === undefined ? {} : { resolution: given.resolution }),
      ...(how === undefined ? {} : { how }),
    },
    facts,
  );
  return found.ok ? found : refuse({ ...found.refusal, input: renamed(found.refusal.input, name) });
}

function about(warning: Warning, input: string): Warning {
  const { says } = warning;
  return { ...warning, input, says: says.with?.input === undefined ? says : { ...says, with: { ...says.with, input } } };
}

function renamed(input: string, name: "shaft" | "bore"): string {
  return input.replace(/^readings/u, `${name}Readings`);
}

/** Takes over one diameter; what was already said for the other one is not said twice, and its mean is asked about beside the other. */
function take(work: Workings, answer: Found<Measured>, name: "shaft" | "bore", said: ReadonlySet<string>): Uncertain<Length> {
  const warnings = answer.warnings
    .filter((warning) => (warning.input !== "how" || !said.has(warning.says.id)) && warning.input !== "readings")
    .map((warning) => (warning.input === undefined ? warning : about(warning, renamed(warning.input, name))));
  return work.take({ ...answer, warnings }).mean;
}

function compareNameplate(work: Workings, nameplate: Length, gap: Uncertain<Length>): void {
  const differs = Math.abs(nameplate - gap.mean) > 2 * gap.u;
  work.warn({
    kind: "note",
    input: "nameplateSection",
    given: nameplate,
    says: {
      id: differs ? "nameplate-differs" : "nameplate-agrees",
      with: { nameplate: { value: nameplate, kind: "length" }, section: { value: gap.mean, kind: "length" } },
    },
  });
}

function chosen(listed: readonly Stock[]): readonly Stock[] {
  const fitting = listed.filter((entry) => entry.fit === "fits");
  return fitting.length > 0 ? fitting : listed.filter((entry) => entry.fit === "roll");
}

/** Below this chance that the chosen size fills the gap, measuring better is worth the walk. */
const sure = 0.9;

function advise(listed: readonly Stock[], choice: readonly Stock[], preformed: boolean): readonly string[] {
  const [best] = choice;
  const advice: string[] = [];
  if (!best) advice.push(listed.every((entry) => entry.fit === "too-big") ? "section-below-stock" : "section-sleeve-or-bush");
  else if (best.fit === "roll") advice.push("section-roll");
  else advice.push(choice.length > 1 ? "section-either" : "section-fit");
  if (best && best.fills < sure) advice.push("section-measure-again");
  if (preformed) advice.push("section-preformed");
  return advice;
}
