import { type Binding, type Compared, preferences, type Reason } from "@ringwright/core/materials";
import { type Citation, sources } from "@ringwright/core/sources";
import { siUnits } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import { say } from "@ringwright/words";
import type { Json, JsonSchema } from "../field.ts";
import type { Shape } from "../shape.ts";

const text: JsonSchema = { type: "string" };
const number: JsonSchema = { type: "number" };
const yesNo: JsonSchema = { type: "boolean" };
const seen: JsonSchema = { enum: ["read", "quoted", "memory", "derived", "practice"] };
const listOf = (items: JsonSchema): JsonSchema => ({ type: "array", items });
const group = (properties: { readonly [name: string]: JsonSchema }, required: readonly string[]): JsonSchema => ({
  type: "object",
  properties,
  required: [...required],
  additionalProperties: false,
});
const figure = group({ value: number, unit: text }, ["value", "unit"]);

/** A sentence with the id it is known by. */
export const saysShape: Shape<Says> = {
  schema: group({ id: text, text }, ["id", "text"]),
  write: (says) => ({ id: says.id, text: say(says) }),
};

/** Where a limit comes from, as elsewhere in the reply. */
const citationShape: Shape<Citation> = {
  schema: group({ source: text, title: text, at: text, seen }, ["source", "title", "seen"]),
  write: (citation) => {
    const source = sources[citation.source];
    return {
      source: citation.source,
      title: source.title,
      ...(citation.at === undefined ? {} : { at: citation.at }),
      seen: citation.seen ?? source.seen,
    };
  },
};

const kinds = ["stop", "warn", "ask", "note", "holds"] as const;

export const reasonShape: Shape<Reason> = {
  schema: group({ kind: { enum: kinds }, constraint: text, id: text, text, clears: text, citation: citationShape.schema }, [
    "kind",
    "constraint",
    "id",
    "text",
    "citation",
  ]),
  write: ({ kind, constraint, says, citation, clears }) => ({
    kind,
    constraint,
    id: says.id,
    text: say(says),
    ...(clears ? { clears: say(clears) } : {}),
    citation: citationShape.write(citation),
  }),
};

const unitsOfCompared: Readonly<Record<Compared["kind"], string>> = {
  temperature: siUnits.temperature,
  speed: siUnits.speed,
  pressure: siUnits.pressure,
  number: "1",
};

export const bindingShape: Shape<Binding> = {
  schema: group(
    {
      id: text,
      text,
      given: figure,
      limit: figure,
      margin: figure,
      share: number,
      source: citationShape.schema,
      seen: yesNo,
      confidence: { enum: ["A", "B", "C", "D"] },
    },
    ["id", "text", "source", "seen", "confidence"],
  ),
  write({ constraint, compared, says, citation, seen: read, confidence }) {
    const written = (value: number): Json => ({ value, unit: compared ? unitsOfCompared[compared.kind] : "1" });
    return {
      id: constraint,
      text: say(says),
      ...(compared
        ? { given: written(compared.given), limit: written(compared.limit), margin: written(compared.margin), share: compared.share }
        : {}),
      source: citationShape.write(citation),
      seen: read,
      confidence,
    };
  },
};

/** Each part of a score by its preference. */
export const contributionsShape: Shape<readonly number[]> = {
  schema: listOf(group({ id: { enum: preferences }, value: number }, ["id", "value"])),
  write: (parts) => preferences.map((id, index) => ({ id, value: parts[index] ?? 0 })),
};
