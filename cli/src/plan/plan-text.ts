import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Found } from "@ringwright/core/workings";
import { boxText, conditionText, sectionText } from "./box-text.ts";
import { glandText } from "./gland-text.ts";
import { packingText } from "./packing-text.ts";
import { Page, type Style } from "./page.ts";
import { heatText, pressureText } from "./pressure-text.ts";
import { cutText, lanternText, setText } from "./rings-text.ts";
import { stepsText } from "./steps-text.ts";

/** The plan as a person reads it: what needs a hand first, numbers rounded to the tool, cautions before the step. */
export function planText(found: Found<Plan>, style: Style): string {
  const plan = found.value;
  const page = new Page(style);
  header(page, plan);
  attention(page, found);
  mind(page, plan);
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
  stepsText(page, plan);
  notes(page, found);
  gaps(page, plan);
  page.blank();
  page.line(page.words("plan-memory-note"));
  page.line(page.words("plan-local-rules"));
  return page.text();
}

function header(page: Page, { survey }: Plan): void {
  const title = [survey.name, survey.place].filter(Boolean).join(" · ");
  if (title) page.raw(title);
  const first = [`plan-motion-${survey.motion}`, `plan-release-${survey.release ?? "unknown"}`, `plan-zone-${survey.zone ?? "unknown"}`];
  page.raw(first.map((id) => page.words(id)).join(" · "));
}

/** How it moves, and what may not go there: before anyone measures anything. */
function mind(page: Page, plan: Plan): void {
  const cautions = answerOf(plan.steps.cautions)?.cautions ?? [];
  const first = cautions.filter((caution) => caution.order === 1 || caution.guards.inputs.includes("zone"));
  if (first.length === 0) return;
  page.heading("plan-heading-mind");
  for (const caution of first) page.mark(page.words(caution.id));
}

/** Said in its own place, not among what needs a hand. */
const saidElsewhere: ReadonlySet<string> = new Set(["lantern-repack", "lantern-repack-by-ring"]);

/** Limits passed, verdicts that ask for a hand, slips to look at, and what has no answer. */
function attention(page: Page, { value: plan, warnings }: Found<Plan>): void {
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
function notes(page: Page, { warnings }: Found<Plan>): void {
  const said = warnings.filter(
    (warning) => warning.kind === "note" || warning.kind === "outside-validity" || warning.kind === "caution" || warning.kind === "gap",
  );
  if (said.length === 0) return;
  page.heading("plan-heading-notes");
  for (const sentence of new Set(said.map((warning) => page.sentence(warning.says)))) page.line(sentence, "  · ");
}

function gaps(page: Page, { gaps: open }: Plan): void {
  if (open.length === 0) return;
  page.heading("plan-heading-gaps");
  for (const { field, parts } of open)
    page.line(page.words("plan-gap-line", { field: page.name(field), parts: parts.map((part) => page.name(part)).join(", ") }), "  ? ");
}
