import type { UnitSystem } from "@ringwright/core/units";
import type { Step } from "@ringwright/core/workings";
import { type StepInWords, stepsInWords } from "@ringwright/words/workings";
import { wrap } from "../text/layout.ts";

function stepText({ name, formula, value, inputs, assumed, source }: StepInWords): string {
  return [
    wrap(`${name}: ${formula} = ${value}`, "    · "),
    ...[inputs, assumed].filter(Boolean).map((line) => wrap(line, "      ")),
    wrap(`[${source}]`, "      "),
  ].join("\n");
}

/** The workings of a part, each step once. */
export function workingsText(steps: readonly Step[], system: UnitSystem): string {
  return stepsInWords(steps, system).map(stepText).join("\n");
}
