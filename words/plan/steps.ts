import type { Step } from "@ringwright/core/fit";
import { answerOf, type Plan } from "@ringwright/core/plan";
import { type Kind, type Kinds, shownUnit, unitText } from "@ringwright/core/units";
import type { PlanPage } from "./page.ts";

/** One step as a person reads it. */
export interface StepText {
  readonly id: string;
  readonly group: Step["group"];
  /** From 1 over the whole job. */
  readonly number: number;
  readonly text: string;
  /** Cautions that stand above it and were not said above an earlier step of its group. */
  readonly cautions: readonly string[];
  /** Whether a make-do is possible; else there is no way past it. */
  readonly bridge: boolean;
  /** What to expect, the limits, how long, how often, until when. */
  readonly hints: readonly string[];
  /** What to write down beside the number. */
  readonly blanks: readonly string[];
  readonly choices: readonly string[];
  /** A number is to be written down. */
  readonly asksNumber: boolean;
  /** The unit it is written in. */
  readonly unit?: string;
}

export interface StepGroupText {
  readonly id: Step["group"];
  readonly title: string;
  readonly steps: readonly StepText[];
}

/** Every step of fitting, starting and running in, by group and in order, each with the cautions that guard it. */
export function stepGroupsText(page: PlanPage, { steps }: Plan): readonly StepGroupText[] {
  const fit = answerOf(steps.fit)?.steps ?? [];
  const runIn = answerOf(steps.runIn);
  const all = [...fit, ...(runIn?.steps ?? []).filter((step) => !fit.some((one) => one.id === step.id))];
  const danger = new Set(
    answerOf(steps.cautions)
      ?.cautions.filter((caution) => caution.severity === "danger")
      .map((caution) => caution.id),
  );
  const said = new Set<string>();
  const groups: { id: Step["group"]; title: string; steps: StepText[] }[] = [];
  for (const [index, step] of all.entries()) {
    if (step.group !== groups.at(-1)?.id) {
      for (const id of danger) said.delete(id);
      groups.push({ id: step.group, title: page.words(`plan-group-${step.group}`), steps: [] });
    }
    const fresh = step.cautions.filter((id) => !said.has(id));
    for (const id of fresh) said.add(id);
    groups.at(-1)?.steps.push(stepText(page, step, index + 1, fresh));
  }
  return groups;
}

/** When to stop, hold or slacken while it runs in. */
export function stopRulesText(page: PlanPage, { steps }: Plan): readonly string[] {
  return (answerOf(steps.runIn)?.stopRules ?? []).map((stop) => page.sentence(stop.says));
}

function stepText(page: PlanPage, step: Step, number: number, cautions: readonly string[]): StepText {
  const items = step.items.length > 0 ? ` ${step.items.map((item) => page.name(item)).join(", ")}.` : "";
  return {
    id: step.id,
    group: step.group,
    number,
    text: `${page.sentence(step.says)}${items}`,
    cautions: cautions.map((id) => page.words(id)),
    bridge: step.bridge,
    hints: hints(page, step),
    blanks: step.blanks.map((blank) => page.name(blank)),
    choices: step.choices.map((choice) => page.name(choice)),
    asksNumber: step.kind === "number",
    ...unitOf(page, step),
  };
}

function unitOf(page: PlanPage, { kind, measures }: Step): { readonly unit?: string } {
  if (kind !== "number" || measures === undefined || measures === "count") return {};
  return { unit: measures === "rate" ? page.words("plan-rate-unit") : unitText(shownUnit(measures, page.system)) };
}

function hints(page: PlanPage, step: Step): readonly string[] {
  return [
    ...(step.predicted ? [page.words("plan-step-predicted", { value: measured(page, step.predicted) })] : []),
    ...(step.tolerance ? [page.words("plan-step-tolerance", { value: measured(page, step.tolerance) })] : []),
    ...(step.least ? [page.words("plan-step-least", { value: measured(page, step.least) })] : []),
    ...(step.most ? [page.words("plan-step-most", { value: measured(page, step.most) })] : []),
    ...(step.wait
      ? [
          page.words("plan-step-wait", {
            wait: openBand(step.wait, (value) => page.value("time", value as Kinds["time"], { decimals: 0 })),
          }),
        ]
      : []),
    ...(step.flats
      ? [
          page.words(step.flats.low <= 1 && (step.flats.high ?? 1) <= 1 ? "plan-step-one-flat" : "plan-step-flats", {
            flats: openBand(step.flats, String),
          }),
        ]
      : []),
    ...(step.rounds ? [page.words("plan-step-rounds", { rounds: openBand(step.rounds, String) })] : []),
    ...(step.until ? [page.words("plan-step-until", { until: page.name(step.until) })] : []),
  ];
}

function measured(page: PlanPage, { kind, value }: { readonly kind: string; readonly value: number }): string {
  if (kind === "count" || kind === "rate") return String(Math.round(value));
  return kind === "length" ? page.length(value as Kinds["length"]) : page.value(kind as Kind, value as Kinds[Kind], { digits: 3 });
}

function openBand({ low, high }: { readonly low: number; readonly high?: number }, shown: (value: number) => string): string {
  if (high === undefined) return `≥ ${shown(low)}`;
  return low === high ? shown(low) : `${shown(low)}–${shown(high)}`;
}
