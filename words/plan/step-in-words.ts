import { sources } from "@ringwright/core/sources";
import { formatQuantity, type Kind, type Kinds, siUnits, type UnitSystem, unitText } from "@ringwright/core/units";
import type { Step } from "@ringwright/core/workings";
import { nameOf, say } from "../say.ts";

/** One step of the workings as a person reads it. */
export interface StepInWords {
  readonly name: string;
  /** Symbol and expression: `s = (D - d)/2`. */
  readonly formula: string;
  readonly value: string;
  /** Symbols with their values. */
  readonly inputs: string;
  /** For a setting taken for lack of a measurement: how far it may be off. */
  readonly assumed: string;
  /** Title, place, and how it was seen. */
  readonly source: string;
}

/** A kind of quantity for each SI unit, to show a step in workshop units. */
const kindOf = new Map<string, Kind>(
  (
    [
      "length",
      "area",
      "volume",
      "angle",
      "speed",
      "rotation",
      "density",
      "force",
      "torque",
      "stress",
      "viscosity",
      "flow",
      "power",
      "conductance",
    ] as const
  ).map((kind) => [siUnits[kind], kind]),
);

/** A value in an SI unit, in the reader's unit to four digits. */
export function shownStep(value: number | undefined, unit: string, system: UnitSystem): string {
  if (value === undefined) return "?";
  const kind = kindOf.get(unit);
  if (kind) return formatQuantity(kind, value as Kinds[Kind], { system, digits: 4 });
  const number = Number(value.toPrecision(4));
  return unit === "1" ? String(number) : `${number} ${unitText(unit)}`;
}

function stepInWords([rule, inputs, value, uncertainty]: Step, system: UnitSystem): StepInWords {
  const spread = uncertainty === undefined ? "" : ` ± ${shownStep(uncertainty, rule.unit, system)}`;
  const source = sources[rule.citation.source];
  const how = rule.citation.seen ?? source.seen;
  // A source of our own, or none, says so by its title.
  const seen = how === "derived" || how === "practice" ? "" : say({ id: `seen-${how}` });
  return {
    name: nameOf(rule.name ?? rule.id),
    formula: `${rule.symbol} = ${rule.expression}`,
    value: `${shownStep(value, rule.unit, system)}${spread}`,
    inputs: rule.inputs.map((input, index) => `${input.symbol} ${shownStep(inputs[index], input.unit, system)}`).join(", "),
    assumed: rule.assumed
      ? say({
          id: "plan-step-assumed",
          with: { low: shownStep(rule.assumed.min, rule.unit, system), high: shownStep(rule.assumed.max, rule.unit, system) },
        })
      : "",
    source: [source.title, rule.citation.at, seen].filter(Boolean).join(", "),
  };
}

/** The steps of a part in words, each once. */
export function stepsInWords(steps: readonly Step[], system: UnitSystem): readonly StepInWords[] {
  return [...new Map(steps.map((step) => stepInWords(step, system)).map((step) => [JSON.stringify(step), step])).values()];
}
