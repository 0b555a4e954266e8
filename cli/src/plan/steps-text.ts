import type { Step } from "@ringwright/core/fit";
import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Kind, Kinds } from "@ringwright/core/units";
import type { Page } from "./page.ts";

/** Every step in order, each under the cautions that guard it. */
export function stepsText(page: Page, { steps }: Plan): void {
  const fit = answerOf(steps.fit)?.steps ?? [];
  const runIn = answerOf(steps.runIn);
  const all = [...fit, ...(runIn?.steps ?? []).filter((step) => !fit.some((one) => one.id === step.id))];
  if (all.length === 0) return;
  page.heading("plan-heading-steps");
  page.line(page.words("plan-step-cannot-once"));
  const danger = new Set(
    answerOf(steps.cautions)
      ?.cautions.filter((caution) => caution.severity === "danger")
      .map((caution) => caution.id),
  );
  const said = new Set<string>();
  let group = "";
  all.forEach((step, index) => {
    if (step.group !== group) {
      group = step.group;
      for (const id of danger) said.delete(id);
      page.blank();
      page.line(page.words(`plan-group-${group}`).toUpperCase());
    }
    for (const id of step.cautions) {
      if (said.has(id)) continue;
      said.add(id);
      page.mark(page.words(id));
    }
    oneStep(page, step, index + 1);
  });
  if (runIn && runIn.stopRules.length > 0) {
    page.heading("plan-heading-stop");
    for (const stop of runIn.stopRules) page.line(page.sentence(stop.says), "  ■ ");
  }
  page.workings(page.words("plan-heading-steps"), steps.fit, steps.runIn);
}

function oneStep(page: Page, step: Step, number: number): void {
  const box = step.bridge ? "☐" : "■";
  const extras = [
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
    ...step.blanks.map((blank) => `${page.name(blank)} ________`),
    ...(step.choices.length > 0 ? [step.choices.map((choice) => page.name(choice)).join(" / ")] : []),
    ...(step.kind === "number" ? ["________"] : []),
  ];
  const items = step.items.length > 0 ? ` ${step.items.map((item) => page.name(item)).join(", ")}.` : "";
  page.line(`${page.sentence(step.says)}${items}`, `  ${String(number).padStart(3)} ${box} `);
  if (extras.length > 0) page.line(extras.join(" · "), "        ");
}

function measured(page: Page, { kind, value }: { readonly kind: string; readonly value: number }): string {
  if (kind === "count" || kind === "rate") return String(Math.round(value));
  return kind === "length" ? page.length(value as Kinds["length"]) : page.value(kind as Kind, value as Kinds[Kind], { digits: 3 });
}

function openBand({ low, high }: { readonly low: number; readonly high?: number }, shown: (value: number) => string): string {
  if (high === undefined) return `≥ ${shown(low)}`;
  return low === high ? shown(low) : `${shown(low)}–${shown(high)}`;
}
