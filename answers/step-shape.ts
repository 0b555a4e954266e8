import { type OpenBand, type Step, type StepValue, stepGroups, stepKinds } from "@ringwright/core/fit";
import { type Kind, siUnits } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import { say } from "@ringwright/words";
import { choiceShape, citationShape, countShape, groupShape, listShape, maybe, type Shape, textShape, yesNoShape } from "./shape.ts";

/** A sentence with its id: `{ id, text }`. */
export const saysShape: Shape<Says> = {
  schema: {
    type: "object",
    properties: { id: { type: "string" }, text: { type: "string" } },
    required: ["id", "text"],
    additionalProperties: false,
  },
  write: (says) => ({ id: says.id, text: say(says) }),
};

const units = [...new Set([...Object.values(siUnits), "1", "1/min"])];

function unitOf(kind: StepValue["kind"]): string {
  if (kind === "count") return "1";
  return kind === "rate" ? "1/min" : siUnits[kind as Kind];
}

/** A value of whatever kind the step measures: `{ value, unit }`. */
const stepValueShape: Shape<StepValue> = {
  schema: {
    type: "object",
    properties: { value: { type: "number" }, unit: { enum: units } },
    required: ["value", "unit"],
    additionalProperties: false,
  },
  write: ({ kind, value }) => ({ value, unit: unitOf(kind) }),
};

/** `{ low, high, unit }`; without `high` where the source says "at least". */
export function openBandShape(unit: string): Shape<OpenBand> {
  return {
    schema: {
      type: "object",
      properties: { low: { type: "number" }, high: { type: "number" }, unit: { const: unit } },
      required: ["low", "unit"],
      additionalProperties: false,
    },
    write: ({ low, high }) => ({ low, ...(high === undefined ? {} : { high }), unit }),
  };
}

/** One step of the work. */
export const stepShape: Shape<Step> = groupShape({
  id: textShape,
  group: choiceShape(stepGroups),
  kind: choiceShape(stepKinds),
  says: saysShape,
  ring: maybe(countShape),
  measures: maybe(textShape),
  predicted: maybe(stepValueShape),
  tolerance: maybe(stepValueShape),
  least: maybe(stepValueShape),
  most: maybe(stepValueShape),
  wait: maybe(openBandShape(siUnits.time)),
  flats: maybe(openBandShape("1")),
  rounds: maybe(openBandShape("1")),
  loop: maybe(textShape),
  until: maybe(textShape),
  at: maybe(timeShape()),
  items: listShape(textShape),
  blanks: listShape(textShape),
  choices: listShape(textShape),
  cautions: listShape(textShape),
  cannot: listShape(textShape),
  bridge: yesNoShape,
  citations: listShape(citationShape),
}) as Shape<Step>;

function timeShape(): Shape<number> {
  return {
    schema: {
      type: "object",
      properties: { value: { type: "number" }, unit: { const: siUnits.time } },
      required: ["value", "unit"],
      additionalProperties: false,
    },
    write: (value) => ({ value, unit: siUnits.time }),
  };
}
