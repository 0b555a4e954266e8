import { type Answer, begin, type Filling, type Found, notWithin, type Refused, type Warning } from "../workings/index.ts";
import { type Chosen, choosePacking } from "./choose.ts";
import { surveyField } from "./field-names.ts";
import { type Heat, heatOf } from "./heat.ts";
import { type Load, loadOf } from "./load.ts";
import { type MeasuredBox, measureBox } from "./measure.ts";
import { answerOf, isRefused, type Part } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import { type Pressures, pressuresOf } from "./pressures.ts";
import { type RingsPlan, ringsOf } from "./set.ts";
import { type Steps, stepsOf } from "./steps.ts";
import type { Survey } from "./survey.ts";

/** Something that was not known, and the parts of the plan that wait for it. */
export interface Gap {
  /** Field of the survey, by name. */
  readonly field: string;
  readonly parts: readonly PartName[];
}

/** A part of the plan that has no answer, and why. */
export interface NoAnswer {
  readonly part: PartName;
  readonly refusal: Refused["refusal"];
}

export interface Plan {
  readonly survey: Survey;
  readonly box: MeasuredBox;
  readonly pressures: Pressures;
  readonly chosen: Chosen;
  readonly rings: RingsPlan;
  readonly load: Load;
  readonly heat: Heat;
  readonly steps: Steps;
  readonly gaps: readonly Gap[];
  readonly refused: readonly NoAnswer[];
}

/** Every part of a plan by its name, in the order of the work. */
export const partNames = [
  "shaft",
  "bore",
  "depth",
  "condition",
  "section",
  "box-pressure",
  "flush-pressure",
  "vapour-margin",
  "air-ingress",
  "surface-speed",
  "materials",
  "material",
  "ring-set",
  "lantern-track",
  "ring-cut",
  "coil",
  "settings",
  "stress-standing",
  "stress-turning",
  "seal-stress",
  "gland-load",
  "stem-load",
  "friction-power",
  "flush-flow",
  "thermal-growth",
  "drip-guideline",
  "cautions",
  "fit-steps",
  "run-in-plan",
] as const;
export type PartName = (typeof partNames)[number];

const glandStresses = { min: 0, max: 1e9 };

/**
 * The parts of a plan by name, those that do not concern this box left out.
 *
 * Units: as each part's. Range: any plan; nothing is refused. Source: definition.
 * @example partsOf(plan)["ring-set"]
 */
export function partsOf({
  box,
  pressures,
  chosen,
  rings,
  load,
  heat,
  steps,
}: Omit<Plan, "survey" | "gaps" | "refused">): Readonly<Partial<Record<PartName, Part<unknown>>>> {
  const all: Record<PartName, Part<unknown> | undefined> = {
    shaft: box.shaft,
    bore: box.bore,
    depth: box.depth,
    condition: box.condition,
    section: box.section,
    "box-pressure": pressures.box,
    "flush-pressure": pressures.flush,
    "vapour-margin": pressures.vapour,
    "air-ingress": pressures.air,
    "surface-speed": chosen.speed,
    materials: chosen.materials,
    material: chosen.style,
    "ring-set": rings.set,
    "lantern-track": rings.track,
    "ring-cut": rings.cut,
    coil: rings.coil,
    settings: load.settings,
    "stress-standing": load.standing,
    "stress-turning": load.turning,
    "seal-stress": load.seal,
    "gland-load": load.nuts,
    "stem-load": load.stem,
    "friction-power": heat.power,
    "flush-flow": heat.flush,
    "thermal-growth": heat.growth,
    "drip-guideline": heat.drip,
    cautions: steps.cautions,
    "fit-steps": steps.fit,
    "run-in-plan": steps.runIn,
  };
  return all as Readonly<Partial<Record<PartName, Part<unknown>>>>;
}

/**
 * The whole plan for one surveyed box: what its dimensions and condition say,
 * section, ring set, cuts, lantern ring, joints, load and stress, pressures,
 * heat, packings in rank, cautions, and the steps of fitting and running in.
 * What was not measured is a named gap; what cannot be is refused by its part,
 * and the rest is still planned.
 *
 * Units: SI throughout.
 * Range: as each part; only a shaft that is not smaller than its bore, with no reading that looks mistyped, is refused as a whole.
 * Source: as each part, in its workings.
 * @example plan({ motion: "turning", shaft: { readings: [quantity("length", 50, "mm")] }, bore: { readings: [quantity("length", 75, "mm")] } }, facts)
 */
export function plan(survey: Survey, facts: PlanFacts): Answer<Plan> {
  const box = measureBox(survey, facts);
  const refusedBox = isRefused(box.section) ? box.section : undefined;
  if (refusedBox?.refusal.kind === "impossible" && !slipped(box)) return refusedBox;
  const glandStress = survey.set?.glandStress;
  const odd = glandStress === undefined ? undefined : notWithin("set.glandStress", glandStress, glandStresses, "Pa");
  if (odd) return odd;

  const pressures = pressuresOf(survey, facts);
  const chosen = choosePacking(survey, box, pressures.atSet, facts);
  const style = answerOf(chosen.style);
  const rings = ringsOf(survey, box, style, pressures.atSet, facts);
  const set = answerOf(rings.set);
  const load = loadOf(survey, box, set, style, pressures.atSet, facts);
  const settings = load.settings.ok ? load.settings.value : undefined;
  const heat = heatOf(survey, box, set, style, settings, pressures.atSet, facts);
  const steps = stepsOf(survey, box, set, answerOf(rings.cut), style, answerOf(load.stem), pressures.atSet, facts);
  return gather(survey, { box, pressures, chosen, rings, load, heat, steps });
}

/** Whether a reading of shaft or bore looks mistyped: then that is asked about, and the box is not turned away for it. */
function slipped({ shaft, bore }: MeasuredBox): boolean {
  return [shaft, bore].some((part) => part.ok && part.warnings.some((warning) => warning.kind === "slip"));
}

/** Joins the workings of every part, and names what is missing or refused. */
function gather(survey: Survey, parts: Omit<Plan, "survey" | "gaps" | "refused">): Answer<Plan> {
  const work = begin();
  const refused: NoAnswer[] = [];
  const gaps = new Map<string, PartName[]>();
  const said: Warning[] = [];
  const all = partsOf(parts);
  for (const name of partNames) {
    const part = all[name];
    if (part === undefined) continue;
    if (part.ok) work.take(withoutRepeats(part, said));
    else if ("refusal" in part) refused.push({ part: name, refusal: { ...part.refusal, input: surveyField(part.refusal.input) } });
    else {
      for (const field of part.needs) {
        const waiting = gaps.get(field);
        if (waiting) waiting.push(name);
        // A part that waits for another part waits, in the end, for a field of the survey.
        else if (field !== "set" && field !== "section") gaps.set(field, [name]);
      }
    }
  }
  const fields: Gap[] = [];
  for (const [field, names] of gaps) fields.push({ field, parts: names });
  const { box, pressures, chosen, rings, load, heat, steps } = parts;
  return work.found({ survey, box, pressures, chosen, rings, load, heat, steps, gaps: fields, refused });
}

/** The same thing is said once in a plan, however many parts come upon it. */
function withoutRepeats(part: Found<unknown>, said: Warning[]): Found<unknown> {
  if (part.warnings.length === 0) return part;
  const warnings: Warning[] = [];
  for (const warning of part.warnings) {
    if (isSaid(warning, said)) continue;
    said.push(warning);
    warnings.push(ofSurvey(warning));
  }
  return { ok: true, value: part.value, workings: part.workings, warnings };
}

function isSaid({ says, input }: Warning, said: readonly Warning[]): boolean {
  for (const before of said) if (before.says.id === says.id && before.input === input) return true;
  return false;
}

/** A warning with its input by the survey's name for it. */
function ofSurvey(warning: Warning): Warning {
  const { kind, given, suggestion, says, citation } = warning;
  const input = warning.input === undefined ? undefined : surveyField(warning.input);
  if (input === undefined || input === warning.input) return warning;
  const renamed: Filling<Partial<Warning>> & Pick<Warning, "kind"> = { kind, input };
  if (given !== undefined) renamed.given = given;
  if (suggestion !== undefined) renamed.suggestion = suggestion;
  renamed.says = says;
  if (citation !== undefined) renamed.citation = citation;
  return renamed as Warning;
}
