import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Found } from "@ringwright/core/workings";
import { inputName } from "../say.ts";
import type { PlanPage } from "./page.ts";

/** How it moves, and what may not go there: before anyone measures anything. */
export function mindText(page: PlanPage, plan: Plan): void {
  const cautions = answerOf(plan.steps.cautions)?.cautions ?? [];
  const first = cautions.filter((caution) => caution.order === 1 || caution.guards.inputs.includes("zone"));
  if (first.length === 0) return;
  page.heading("plan-heading-mind");
  for (const caution of first) page.mark(page.words(caution.id));
}

/** Said in its own place, not among what needs a hand. */
const saidElsewhere: ReadonlySet<string> = new Set(["lantern-repack", "lantern-repack-by-ring"]);

/** Limits passed, verdicts that ask for a hand, slips to look at, and what has no answer. */
export function attentionText(page: PlanPage, { value: plan, warnings }: Found<Plan>): void {
  const marks = [
    ...warnings
      .filter((warning) => (warning.kind === "slip" || warning.kind === "limit") && !saidElsewhere.has(warning.says.id))
      .map((warning) => page.sentence(warning.says)),
    ...(answerOf(plan.box.condition)?.verdicts ?? [])
      .filter((verdict) => verdict.verdict === "renew")
      .map(
        (verdict) =>
          `${page.name(verdict.id)}: ${[page.words("plan-verdict-renew"), ...verdict.advice.map((id) => page.words(id))].join("; ")}`,
      ),
    ...plan.refused.map(({ part, refusal }) => page.words("plan-refused-line", { part, why: page.sentence(refusal.says) })),
  ];
  if (marks.length === 0) return;
  page.heading("plan-heading-attention");
  for (const mark of marks) page.mark(mark);
}

/** What the models do not know, and formulas used beyond where they are known to hold. */
export function notesText(page: PlanPage, { warnings }: Found<Plan>): void {
  const said = warnings.filter(
    (warning) => warning.kind === "note" || warning.kind === "outside-validity" || warning.kind === "caution" || warning.kind === "gap",
  );
  if (said.length === 0) return;
  page.heading("plan-heading-notes");
  for (const sentence of new Set(said.map((warning) => page.sentence(warning.says)))) page.line(sentence, "·");
}

/** Something that was not known, and the parts of the plan that it would settle. */
export interface GapText {
  /** As the box file names it, where it has no other name. */
  readonly field: string;
  /** In words. */
  readonly called: string;
  readonly parts: readonly string[];
}

/** What was not known. */
export function gapsText(page: PlanPage, { gaps }: Plan): readonly GapText[] {
  return gaps.map(({ field, parts }) => ({
    field: page.name(field),
    called: inputName(field),
    parts: parts.map((part) => page.name(part)),
  }));
}

/** The same as a section. */
export function gapsSection(page: PlanPage, plan: Plan): void {
  if (plan.gaps.length === 0) return;
  page.heading("plan-heading-gaps");
  for (const { field, parts } of gapsText(page, plan)) page.line(page.words("plan-gap-line", { field, parts: parts.join(", ") }), "?");
}
