import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import { say } from "@ringwright/words";
import { type PlanBlock, type PlanSection, planInWords, type StepGroupText, type StepText } from "@ringwright/words/plan";
import { heading, type Row, rows, wrap } from "../text/layout.ts";
import { workingsText } from "./workings.ts";

/** How the plan is printed. */
export interface Style {
  readonly system: UnitSystem;
  readonly workings: boolean;
}

/** Sections that stand after the steps. */
const last: ReadonlySet<string> = new Set(["notes", "gaps"]);

/** The plan as a person reads it in a terminal: what needs a hand first, numbers rounded to the tool, cautions before the step. */
export function planText(found: Found<Plan>, style: Style): string {
  const plan = planInWords(found, style.system);
  const { steps } = found.value;
  const lines = [
    ...(plan.title ? [plan.title] : []),
    plan.first.join(" · "),
    ...plan.sections.filter(({ id }) => !last.has(id)).flatMap((section) => sectionLines(section, style)),
    ...stepLines(plan.groups),
    ...(plan.stopRules.length === 0 ? [] : [headingOf("plan-heading-stop"), ...plan.stopRules.map((stop) => wrap(stop, "  ■ "))]),
    ...(plan.groups.length === 0
      ? []
      : workingsLines(
          say({ id: "plan-heading-steps" }),
          [steps.fit, steps.runIn].flatMap((part) => (part.ok ? part.workings : [])),
          style,
        )),
    ...plan.sections.filter(({ id }) => last.has(id)).flatMap((section) => sectionLines(section, style)),
    "",
    wrap(say({ id: "plan-memory-note" }), "  "),
    wrap(say({ id: "plan-local-rules" }), "  "),
  ];
  return `${lines.join("\n").trim()}\n`;
}

function headingOf(id: string): string {
  return heading(say({ id }).toUpperCase());
}

function sectionLines({ heading: title, blocks }: PlanSection, style: Style): readonly string[] {
  const lines = [heading(title.toUpperCase())];
  let table: Row[] = [];
  const flush = () => {
    if (table.length > 0) lines.push(rows(table));
    table = [];
  };
  for (const block of blocks) {
    if (block.kind === "row") {
      table.push(block.row);
      continue;
    }
    if (block.kind === "workings" && !style.workings) continue;
    flush();
    lines.push(...blockLines(block, style));
  }
  flush();
  return lines;
}

function blockLines(block: Exclude<PlanBlock, { kind: "row" }>, style: Style): readonly string[] {
  if (block.kind === "workings") return workingsLines(block.part, block.steps, style);
  if (block.kind === "mark") return [wrap(block.text, "  ! ")];
  return [wrap(block.text, `${block.under ? "     " : "  "}${block.point === undefined ? "" : `${block.point} `}`)];
}

function workingsLines(part: string, steps: Parameters<typeof workingsText>[0], { system, workings }: Style): readonly string[] {
  if (!workings || steps.length === 0) return [];
  return [`\n    ${say({ id: "plan-workings", with: { part } })}\n${workingsText(steps, system)}`];
}

/** Every step in order, each under the cautions that guard it. */
function stepLines(groups: readonly StepGroupText[]): readonly string[] {
  if (groups.length === 0) return [];
  return [
    headingOf("plan-heading-steps"),
    wrap(say({ id: "plan-step-cannot-once" }), "  "),
    ...groups.flatMap(({ title, steps }) => ["", wrap(title.toUpperCase(), "  "), ...steps.flatMap(oneStep)]),
  ];
}

function oneStep({ number, text, cautions, bridge, hints, blanks, choices, asksNumber }: StepText): readonly string[] {
  const extras = [
    ...hints,
    ...blanks.map((blank) => `${blank} ________`),
    ...(choices.length > 0 ? [choices.join(" / ")] : []),
    ...(asksNumber ? ["________"] : []),
  ];
  return [
    ...cautions.map((caution) => wrap(caution, "  ! ")),
    wrap(text, `  ${String(number).padStart(3)} ${bridge ? "☐" : "■"} `),
    ...(extras.length > 0 ? [wrap(extras.join(" · "), "        ")] : []),
  ];
}
