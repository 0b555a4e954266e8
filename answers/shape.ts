import { type Citation, sources } from "@ringwright/core/sources";
import { type Kind, type Kinds, siUnits } from "@ringwright/core/units";
import type { Band, Uncertain } from "@ringwright/core/workings";
import type { Json, JsonSchema } from "./field.ts";

/** One member of a reply: its JSON Schema and how it is written, described once. Replies are SI. */
export interface Shape<T> {
  readonly schema: JsonSchema;
  readonly optional?: true;
  write(value: T): Json;
}

type ShapeValue<S> = S extends Shape<infer T> ? T : never;

function quantitySchema(kind: Kind, members: readonly string[]): JsonSchema {
  return {
    type: "object",
    "x-quantity": kind,
    properties: {
      ...Object.fromEntries(members.map((name) => [name, { type: "number" }])),
      unit: { const: siUnits[kind] },
      standardUncertainty: { type: "number", minimum: 0 },
    },
    required: [...members, "unit"],
    additionalProperties: false,
  };
}

/** `{ value, unit }` */
export function quantityShape<K extends Kind>(kind: K): Shape<Kinds[K]> {
  return { schema: quantitySchema(kind, ["value"]), write: (value) => ({ value, unit: siUnits[kind] }) };
}

/** `{ value, unit, standardUncertainty }` */
export function uncertainShape<K extends Kind>(kind: K): Shape<Uncertain<Kinds[K]>> {
  return {
    schema: quantitySchema(kind, ["value"]),
    write: ({ mean, u }) => ({ value: mean, unit: siUnits[kind], standardUncertainty: u }),
  };
}

/** `{ low, high, unit }` */
export function bandShape<K extends Kind>(kind: K): Shape<Band<Kinds[K]>> {
  return { schema: quantitySchema(kind, ["low", "high"]), write: ({ low, high }) => ({ low, high, unit: siUnits[kind] }) };
}

export const numberShape: Shape<number> = { schema: { type: "number" }, write: (value) => value };
export const countShape: Shape<number> = { schema: { type: "integer" }, write: (value) => value };
export const yesNoShape: Shape<boolean> = { schema: { type: "boolean" }, write: (value) => value };
export const textShape: Shape<string> = { schema: { type: "string" }, write: (value) => value };

/** `{ low, high }` of plain numbers. */
export const numberBandShape: Shape<Band> = {
  schema: {
    type: "object",
    properties: { low: { type: "number" }, high: { type: "number" } },
    required: ["low", "high"],
    additionalProperties: false,
  },
  write: ({ low, high }) => ({ low, high }),
};

export function choiceShape<const C extends readonly string[]>(choices: C): Shape<C[number]> {
  return { schema: { enum: choices }, write: (value) => value };
}

export function listShape<T>(item: Shape<T>): Shape<readonly T[]> {
  return { schema: { type: "array", items: item.schema }, write: (values) => values.map((value) => item.write(value)) };
}

type Shapes = Readonly<Record<string, Shape<never>>>;
type OptionalNames<S extends Shapes> = { [N in keyof S]: S[N] extends { readonly optional: true } ? N : never }[keyof S];
export type GroupOf<S extends Shapes> = { readonly [N in Exclude<keyof S, OptionalNames<S>>]: ShapeValue<S[N]> } & {
  readonly [N in OptionalNames<S>]?: ShapeValue<S[N]> | undefined;
};

/** Named members. Members of the value that are not named here stay inside. */
export function groupShape<S extends Shapes>(members: S): Shape<GroupOf<S>> {
  const names = Object.keys(members);
  return {
    schema: {
      type: "object",
      properties: Object.fromEntries(names.map((name) => [name, members[name]?.schema ?? {}])),
      required: names.filter((name) => !members[name]?.optional),
      additionalProperties: false,
    },
    write(value) {
      const written: Record<string, Json> = {};
      for (const name of names) {
        const member = (value as Readonly<Record<string, never>>)[name];
        const shape = members[name];
        if (shape && member !== undefined) written[name] = shape.write(member);
      }
      return written;
    },
  };
}

/** A member that is left out when there is nothing to say. */
export function maybe<T>(shape: Shape<T>): Shape<T> & { readonly optional: true } {
  return { ...shape, optional: true };
}

/** Where a value comes from: `{ source, title, at, seen }`. */
export const citationShape: Shape<Citation> = {
  schema: {
    type: "object",
    properties: {
      source: { type: "string" },
      title: { type: "string" },
      at: { type: "string" },
      seen: { enum: ["read", "quoted", "memory", "derived", "practice"] },
    },
    required: ["source", "title", "seen"],
    additionalProperties: false,
  },
  write: ({ source, at, seen }) => ({
    source,
    title: sources[source].title,
    ...(at === undefined ? {} : { at }),
    seen: seen ?? sources[source].seen,
  }),
};
