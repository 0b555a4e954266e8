import { sources } from "@ringwright/core/sources";
import { formatQuantity, type Kind, type Kinds, siUnits, type UnitSystem, unitText } from "@ringwright/core/units";
import type { Step } from "@ringwright/core/workings";
import { nameOf, say } from "@ringwright/words";
import { wrap } from "../text/layout.ts";

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
export function shown(value: number | undefined, unit: string, system: UnitSystem): string {
  if (value === undefined) return "?";
  const kind = kindOf.get(unit);
  if (kind) return formatQuantity(kind, value as Kinds[Kind], { system, digits: 4 });
  const number = Number(value.toPrecision(4));
  return unit === "1" ? String(number) : `${number} ${unitText(unit)}`;
}

/** One step of the workings as a person reads it: symbol, expression, values, source. */
function stepText([rule, inputs, value, uncertainty]: Step, system: UnitSystem): string {
  const spread = uncertainty === undefined ? "" : ` ± ${shown(uncertainty, rule.unit, system)}`;
  const values = rule.inputs.map((input, index) => `${input.symbol} ${shown(inputs[index], input.unit, system)}`).join(", ");
  const assumed = rule.assumed
    ? `taken, may be ${shown(rule.assumed.min, rule.unit, system)} to ${shown(rule.assumed.max, rule.unit, system)}`
    : "";
  const source = sources[rule.citation.source];
  const how = rule.citation.seen ?? source.seen;
  // A source of our own, or none, says so by its title.
  const seen = how === "derived" || how === "practice" ? "" : say({ id: `seen-${how}` });
  const from = [source.title, rule.citation.at, seen].filter(Boolean).join(", ");
  const head = `${nameOf(rule.name ?? rule.id)}: ${rule.symbol} = ${rule.expression} = ${shown(value, rule.unit, system)}${spread}`;
  return [wrap(head, "    · "), ...[values, assumed].filter(Boolean).map((line) => wrap(line, "      ")), wrap(`[${from}]`, "      ")].join(
    "\n",
  );
}

/** The workings of a part, each step once. */
export function workingsText(steps: readonly Step[], system: UnitSystem): string {
  return [...new Set(steps.map((step) => stepText(step, system)))].join("\n");
}
