import {
  type Binding,
  type Compared,
  type FluidListed,
  type MaterialLine,
  type Origin,
  preferences,
  type Reason,
} from "@ringwright/core/materials";
import { type Citation, sources } from "@ringwright/core/sources";
import { siUnits } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import { nameOf, say } from "@ringwright/words";
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

/** A sentence, or a name, by its id. */
export const sentenceShape: Shape<string> = { schema: text, write: (id) => say({ id }) };
export const nameShape: Shape<string> = { schema: text, write: (id) => nameOf(id) };

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

const originShape: Shape<Origin> = {
  schema: group({ source: text, title: text, says: text, supports: yesNo, seen }, ["source", "title", "seen"]),
  write: (origin) => ({
    source: origin.source,
    title: sources[origin.source].title,
    ...(origin.says === undefined ? {} : { says: origin.says }),
    ...(origin.supports === undefined ? {} : { supports: origin.supports }),
    seen: origin.seen ?? sources[origin.source].seen,
  }),
};

const pair: JsonSchema = { type: "array", items: { type: ["number", "string"] }, minItems: 2, maxItems: 2 };
const plain = { type: ["number", "boolean", "null"] } as const;

/** One property of a style. `value`, `low` and `high` are null where nothing is known. */
export const lineShape: Shape<MaterialLine> = {
  schema: group(
    {
      property: text,
      name: text,
      unit: text,
      value: plain,
      warnAt: number,
      low: plain,
      high: plain,
      spread: pair,
      class: { type: ["number", "string", "null"] },
      policy: { type: ["string", "null"] },
      notLimiting: yesNo,
      texts: listOf(text),
      note: text,
      missing: text,
      origin: listOf(originShape.schema),
      seen: yesNo,
      confidence: { enum: ["A", "B", "C", "D"] },
      sheets: { type: "integer" },
    },
    ["property", "name", "unit", "texts", "origin", "seen", "confidence"],
  ),
  write({ property, unit, line }) {
    return {
      property,
      name: nameOf(property),
      unit,
      ...(line.value === undefined ? {} : { value: line.value }),
      ...(line.warnAt === undefined ? {} : { warnAt: line.warnAt }),
      ...(line.min === undefined ? {} : { low: line.min }),
      ...(line.max === undefined ? {} : { high: line.max }),
      ...(line.spread === undefined ? {} : { spread: line.spread }),
      ...(line.class === undefined ? {} : { class: line.class }),
      ...(line.policy === undefined ? {} : { policy: line.policy }),
      ...(line.notLimiting === undefined ? {} : { notLimiting: line.notLimiting }),
      texts: [...(line.says ?? []).map((id) => say({ id })), ...(line.names ?? []).map((id) => nameOf(id))],
      ...(line.note === undefined ? {} : { note: say({ id: line.note }) }),
      ...(line.missing === undefined ? {} : { missing: say({ id: line.missing }) }),
      origin: line.origin.map(originShape.write),
      seen: line.seen,
      confidence: line.confidence,
      ...(line.sheets === undefined ? {} : { sheets: line.sheets }),
    };
  },
};

type Cell = FluidListed["cells"][number];

/** What a fluid does to one chemistry. */
export const fluidCellShape: Shape<Cell> = {
  schema: group({ chemistry: text, rating: { enum: ["S", "C", "N"] }, note: text, origin: listOf(originShape.schema), seen: yesNo }, [
    "chemistry",
    "rating",
    "origin",
    "seen",
  ]),
  write: ({ chemistry, cell }) => ({
    chemistry,
    rating: cell.rating,
    ...(cell.note === undefined ? {} : { note: say({ id: cell.note }) }),
    origin: cell.origin.map(originShape.write),
    seen: cell.seen,
  }),
};
