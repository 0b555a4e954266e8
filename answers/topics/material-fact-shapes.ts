import type { EndRing, FluidListed, LanternChoice, MaterialLine, Origin, SleeveMaterial } from "@ringwright/core/materials";
import { sources } from "@ringwright/core/sources";
import { siUnits } from "@ringwright/core/units";
import { nameOf, say } from "@ringwright/words";
import type { JsonSchema } from "../field.ts";
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

/** A sentence, or a name, by its id. */
export const sentenceShape: Shape<string> = { schema: text, write: (id) => say({ id }) };
export const nameShape: Shape<string> = { schema: text, write: (id) => nameOf(id) };

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
      allowed: group(
        { food: { type: ["string", "null"] }, potable: { type: ["string", "null"] }, oxygen: { type: ["string", "null"] } },
        [],
      ),
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
      name: nameOf(`material-${property}`),
      unit,
      ...(line.value === undefined ? {} : { value: line.value }),
      ...(line.warnAt === undefined ? {} : { warnAt: line.warnAt }),
      ...(line.min === undefined ? {} : { low: line.min }),
      ...(line.max === undefined ? {} : { high: line.max }),
      ...(line.spread === undefined ? {} : { spread: line.spread }),
      ...(line.class === undefined ? {} : { class: line.class }),
      ...(line.policy === undefined ? {} : { policy: line.policy }),
      ...(line.food === undefined ? {} : { allowed: { food: line.food, potable: line.potable ?? null, oxygen: line.oxygen ?? null } }),
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

const standings = ["fits", "look", "ask", "stop"] as const;

/** One material of a lantern ring. */
export const lanternShape: Shape<LanternChoice> = {
  schema: group(
    { id: text, standing: { enum: standings }, limit: figure, texts: listOf(text), not: listOf(text), origin: listOf(originShape.schema) },
    ["id", "standing", "texts", "not", "origin"],
  ),
  write: ({ fact, standing, limit }) => ({
    id: fact.id,
    standing,
    ...(limit === undefined ? {} : { limit: { value: limit, unit: siUnits.temperature } }),
    texts: fact.use.says.map((id) => say({ id })),
    not: fact.use.not.map((id) => nameOf(id)),
    origin: [...fact.temperature.origin, ...fact.use.origin].map(originShape.write),
  }),
};

/** One kind of end ring. */
export const endRingShape: Shape<EndRing> = {
  schema: group({ id: text, style: text, texts: listOf(text), for: listOf(text), origin: listOf(originShape.schema) }, [
    "id",
    "texts",
    "for",
    "origin",
  ]),
  write: ({ id, style, use }) => ({
    id,
    ...(style === null ? {} : { style }),
    texts: use.says.map((entry) => say({ id: entry })),
    for: use.for,
    origin: use.origin.map(originShape.write),
  }),
};

/** One sleeve material, with the hardness that is usual for it. */
export const sleeveShape: Shape<SleeveMaterial> = {
  schema: group(
    {
      id: text,
      name: text,
      low: plain,
      high: plain,
      scale: { enum: ["HB", "HRC", "HV"] },
      texts: listOf(text),
      origin: listOf(originShape.schema),
    },
    ["id", "name", "low", "high", "scale", "texts", "origin"],
  ),
  write: ({ id, hardness, surface }) => ({
    id,
    name: nameOf(id),
    low: hardness.min,
    high: hardness.max,
    scale: hardness.unit,
    texts: surface.says.map((entry) => say({ id: entry })),
    origin: [...hardness.origin, ...surface.origin].map(originShape.write),
  }),
};
