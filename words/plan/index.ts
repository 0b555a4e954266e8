import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import { attentionText, type GapText, gapsSection, gapsText, mindText, notesText } from "./attention.ts";
import { boxText, conditionText, sectionText } from "./box.ts";
import { glandText } from "./gland.ts";
import { packingText } from "./packing.ts";
import { PlanPage, type PlanSection } from "./page.ts";
import { heatText, pressureText } from "./pressure.ts";
import { cutText, lanternText, setText } from "./rings.ts";
import { type SourceText, sourcesText } from "./sources.ts";
import { type StepGroupText, stepGroupsText, stopRulesText } from "./steps.ts";

export { saidElsewhere } from "./attention.ts";
export { type PlanBlock, PlanPage, type PlanRow, type PlanSection } from "./page.ts";
export { type SetRow, setRows } from "./rings.ts";
export { type SourceText, seenText } from "./sources.ts";
export { type StepGroupText, type StepText, stepGroupsText, stopRulesText } from "./steps.ts";

/** A plan in words, before anyone has decided how it stands on a page: the terminal and the card print the same. */
export interface PlanInWords {
  readonly title: string;
  /** How it moves, what may be let out, what may go there. */
  readonly first: readonly string[];
  readonly sections: readonly PlanSection[];
  readonly groups: readonly StepGroupText[];
  readonly stopRules: readonly string[];
  readonly sources: readonly SourceText[];
  readonly gaps: readonly GapText[];
}

/**
 * Everything a plan says, rounded to the tool: what needs a hand first, each
 * part of the plan, the steps under their cautions, what is not known.
 * @example planInWords(found, "metric").sections.map(({ heading }) => heading)
 */
export function planInWords(found: Found<Plan>, system: UnitSystem): PlanInWords {
  const plan = found.value;
  const page = new PlanPage(system);
  attentionText(page, found);
  mindText(page, plan);
  boxText(page, plan);
  conditionText(page, plan);
  sectionText(page, plan);
  setText(page, plan);
  cutText(page, plan);
  lanternText(page, plan);
  glandText(page, plan);
  pressureText(page, plan);
  heatText(page, plan);
  packingText(page, plan);
  notesText(page, found);
  gapsSection(page, plan);
  const { survey } = plan;
  const first = [`plan-motion-${survey.motion}`, `plan-release-${survey.release ?? "unknown"}`, `plan-zone-${survey.zone ?? "unknown"}`];
  return {
    title: [survey.name, survey.place].filter(Boolean).join(" · "),
    first: first.map((id) => page.words(id)),
    sections: page.sections,
    groups: stepGroupsText(page, plan),
    stopRules: stopRulesText(page, plan),
    sources: sourcesText(page, found),
    gaps: gapsText(page, plan),
  };
}
