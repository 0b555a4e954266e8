import type { Force, GaugePressure, Length, TemperatureDifference } from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import type { RodFacts } from "./rod-facts.ts";
import { frictionOf, type SlideGiven } from "./rod-friction.ts";
import { type RodService, type Undersize, undersizeOf } from "./undersize.ts";

const sectionRule = rule({
  id: "rod-section",
  symbol: "s",
  name: "section",
  expression: "(D − d) / 2",
  unit: "m",
  inputs: [
    { symbol: "D", name: "bore", unit: "m" },
    { symbol: "d", name: "rod-smallest", unit: "m" },
  ],
  citation: { source: "mobley-1999", at: "p. 226" },
});

const stackRule = rule({
  id: "rod-stack-height",
  symbol: "H",
  name: "stack-height",
  expression: "n h + h_L",
  unit: "m",
  inputs: [
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "h", name: "ring-height", unit: "m" },
    { symbol: "h_L", name: "lantern-height", unit: "m" },
  ],
  citation: { source: "geometry", at: "rings and lantern ring on top of each other" },
});

const ratioInputs = [
  { symbol: "H", name: "stack-height", unit: "m" },
  { symbol: "x", name: "divisor", unit: "m" },
] as const;

const sectionsRule = rule({
  id: "stack-in-sections",
  symbol: "H/s",
  expression: "H / s",
  unit: "1",
  inputs: ratioInputs,
  citation: { source: "power-plant-packing-training", at: "3 to 5 sections for rods, rams and plungers" },
});

const strokeRule = rule({
  id: "stack-over-stroke",
  symbol: "H/S",
  expression: "H / S",
  unit: "1",
  inputs: ratioInputs,
  citation: { source: "bloch-geitner-maintenance", at: "pp. 127-129, unlubricated set not taller than the stroke" },
});

export interface RodSetGiven extends SlideGiven {
  /** Rod or plunger, its size when new. */
  readonly rod: Length;
  /** The smallest diameter found along the stroke; as new when not given. */
  readonly rodSmallest?: Length;
  readonly bore: Length;
  readonly stroke: Length;
  readonly rings: number;
  /** Height of one seated ring; the section when not given. */
  readonly ringHeight?: Length;
  readonly lanternHeight?: Length;
  /** Whether a lubricator or flush feeds the set. */
  readonly lubricated: boolean;
  readonly service: RodService;
  readonly pressure?: GaugePressure;
}

export interface RodSet extends Partial<Undersize> {
  readonly section: Length;
  readonly stackHeight: Length;
  /** Height of the set in sections. */
  readonly sections: number;
  readonly stackOverStroke: number;
  /** False where an unlubricated set is taller than the stroke. */
  readonly withinStroke: boolean;
  readonly friction?: Force;
  /** How much warmer than the liquid the box is often found. */
  readonly warmth: TemperatureDifference;
}

/**
 * The set of a plunger or rod that strokes: its height against section and
 * stroke, wear of the rod, and the force to slide it.
 *
 *   s = (D − d)/2,   H = n h + h_L,   F = π d L μ_r K σ_m
 *
 * More rings are not longer life. A set without a lubricator that is taller
 * than the stroke keeps a stretch of rod dry.
 *
 * Units: lengths m, pressure (gauge) and stress Pa, force N.
 * Range: 0 < rod < bore ≤ 6 m, stroke to 20 m, 1 to 40 rings, smallest diameter not above the rod; refused outside.
 * Taller than 5 sections, lower than 3, taller than the stroke and worn past the printed limit are flagged.
 * Source: power-plant training text (sections), Bloch and Geitner pp. 127-129 (stroke), compressor page on undersize rods, force balance.
 * @example rodSet({ rod, bore, stroke, rings: 4, lubricated: true, service: "liquid" }, facts)
 */
export function rodSet(given: RodSetGiven, facts: RodFacts): Answer<RodSet> {
  const { rod, bore, stroke, rings, rodSmallest = rod, lanternHeight = 0 as Length } = given;
  const refused = noRodSet(given, rodSmallest, lanternHeight);
  if (refused) return refused;
  const work = begin();
  const section = work.step(sectionRule, [bore, rodSmallest], ((bore - rodSmallest) / 2) as Length);
  const ringHeight = given.ringHeight ?? section;
  const stackHeight = work.step(stackRule, [rings, ringHeight, lanternHeight], (rings * ringHeight + lanternHeight) as Length);
  const sections = work.step(sectionsRule, [stackHeight, section], stackHeight / section);
  const stackOverStroke = work.step(strokeRule, [stackHeight, stroke], stackHeight / stroke);
  warnOfHeight(work, given, { sections, stackOverStroke }, facts);
  const worn = given.rodSmallest === undefined ? {} : undersizeOf(work, { ...given, rodSmallest }, facts);
  const slides = frictionOf(work, { ...given, packed: (rings * ringHeight) as Length });
  if (slides && !slides.ok) return slides;
  const found = { section, stackHeight, sections, stackOverStroke, withinStroke: given.lubricated || stackOverStroke <= 1 };
  const warmth = work.step(facts.warmth.rule, [], facts.warmth.value);
  return work.found({ ...found, ...worn, ...(slides ? { friction: slides.value } : {}), warmth });
}

function noRodSet(given: RodSetGiven, rodSmallest: Length, lanternHeight: Length): Refused | undefined {
  const { rod, bore, stroke, rings, pressure = 0, ringHeight = 1 } = given;
  const sizes = { min: Number.MIN_VALUE, max: 6 };
  const refused = outside([
    ["rod", rod, sizes, "m"],
    ["bore", bore, sizes, "m"],
    ["stroke", stroke, { min: Number.MIN_VALUE, max: 20 }, "m"],
    ["rings", rings, { min: 1, max: 40 }, "1"],
    ["ringHeight", ringHeight, { min: Number.MIN_VALUE, max: 2 }, "m"],
    ["lanternHeight", lanternHeight, { min: 0, max: 2 }, "m"],
    ["pressure", pressure, { min: 0, max: 1e9 }, "Pa"],
    ["rodSmallest", rodSmallest, { min: Number.MIN_VALUE, max: rod }, "m"],
  ]);
  if (refused) return refused;
  if (rod < bore) return undefined;
  return refuse({
    kind: "impossible",
    input: "bore",
    given: bore,
    allowed: { min: rod, unit: "m" },
    says: { id: "rod-bore-not-larger", with: { rod: { value: rod, kind: "length" }, bore: { value: bore, kind: "length" } } },
  });
}

function warnOfHeight(
  work: Workings,
  { lubricated }: RodSetGiven,
  { sections, stackOverStroke }: { readonly sections: number; readonly stackOverStroke: number },
  facts: RodFacts,
): void {
  const { low, high, citation } = facts.sections;
  // Half a section of slack: a set is a whole number of rings.
  if (sections > high + 0.5) work.warn({ kind: "limit", input: "rings", says: { id: "rod-set-tall", with: { sections, high } }, citation });
  if (sections < low - 0.5) work.warn({ kind: "limit", input: "rings", says: { id: "rod-set-low", with: { sections, low } }, citation });
  if (!lubricated && stackOverStroke > 1) {
    work.warn({ kind: "limit", input: "stroke", says: { id: "rod-set-over-stroke" }, citation: facts.stroke });
  }
}
