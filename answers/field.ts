import { allowedUnits, type Kind, type Kinds, parseQuantity, readQuantity, type Typed, type Unread } from "@ringwright/core/units";
import type { Range, Shown } from "@ringwright/core/workings";
import { chosen, idFor, isUnknown } from "./spellings.ts";

export type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };
export type JsonSchema = { readonly [name: string]: Json };

/** What is wrong with a question before any calculation: which field, what was given, what is allowed. */
export interface Malformed {
  readonly kind: "malformed" | "unknown-answer" | "unknown-field" | "missing" | "wrong-unit" | "outside-range";
  readonly input: string;
  readonly given?: Json;
  readonly allowed?: Json;
  readonly id: string;
  /** What its sentence shows beside input, given and allowed. */
  readonly with?: Readonly<Record<string, Shown>>;
}

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly malformed: Malformed };

/** Notes what was typed at each path, and readings that may mean something else. */
export interface Reader {
  readonly typed: Map<string, Typed>;
}

/** One field of a question: its JSON Schema and how it is read, described once. */
export interface Field<T> {
  readonly schema: JsonSchema;
  /** Whether the field may be left out; reading `undefined` then gives the default. */
  readonly optional?: true;
  read(raw: Json | undefined, path: string, reader: Reader): Read<T>;
}

type ReadValue<F> = F extends Field<infer T> ? T : never;

const ok = <T>(value: T): Read<T> => ({ ok: true, value });

function no<T>(malformed: Malformed): Read<T> {
  return { ok: false, malformed };
}

/** Groups within groups that an echo goes down to. */
const echoed = 20;

/** What was given, as it can be written in JSON: a number that is none becomes a text, and what lies too deep is left out. */
export function writable(raw: Json, depth = 0): Json {
  if (typeof raw === "number" && !Number.isFinite(raw)) return String(raw);
  if (typeof raw !== "object" || raw === null) return raw;
  if (depth >= echoed) return "…";
  if (Array.isArray(raw)) return raw.map((entry: Json) => writable(entry, depth + 1));
  return Object.fromEntries(Object.entries(raw).map(([name, value]) => [name, writable(value, depth + 1)]));
}

function given(raw: Json | undefined): { given?: Json } {
  return raw === undefined ? {} : { given: writable(raw) };
}

function missing<T>(path: string, allowed?: Json, id = allowed === undefined ? "field-missing" : "field-missing-one-of"): Read<T> {
  return no({ kind: "missing", input: path, ...(allowed === undefined ? {} : { allowed }), id });
}

/** A name that is no field here. The sentence shows it as it was typed. */
function unknown(path: string, raw: Json | undefined, allowed: readonly string[]): Malformed {
  return { kind: "unknown-field", input: path, ...given(raw), allowed, id: "unknown-field", with: { typed: path } };
}

const unreadIds = { malformed: "not-a-quantity", missing: "unit-missing", "wrong-unit": "wrong-unit", "outside-range": "number-too-large" };

/** The sentence for a text that is no quantity. */
export function unreadId(reason: Unread): string {
  if (reason.kind === "wrong-unit" && reason.from) return reason.from === "absolute" ? "absolute-not-gauge" : "gauge-not-absolute";
  return unreadIds[reason.kind];
}

function unread<T>(path: string, raw: Json, reason: Unread): Read<T> {
  const allowed = "allowed" in reason ? { allowed: reason.allowed } : {};
  return no({ kind: reason.kind, input: path, ...given(raw), ...allowed, id: unreadId(reason) });
}

/**
 * A quantity: `{ "value": 50, "unit": "mm" }`, or text with its unit, `1 15/16 in`.
 * A bare number is refused: nothing says what it is in.
 */
export function quantityField<K extends Kind>(kind: K, about?: string): Field<Kinds[K]> {
  const schema: JsonSchema = {
    ...(about === undefined ? {} : { description: about }),
    "x-quantity": kind,
    anyOf: [
      {
        type: "object",
        properties: { value: { type: "number" }, unit: { type: "string", examples: allowedUnits(kind) } },
        required: ["value", "unit"],
        additionalProperties: false,
      },
      { type: "string", minLength: 1, maxLength: 200 },
    ],
  };
  return {
    schema,
    read(raw, path, reader) {
      if (raw === undefined || raw === null) return missing(path, allowedUnits(kind), "field-missing-unit");
      const group = typeof raw === "object" && !Array.isArray(raw) ? (raw as { readonly [name: string]: Json }) : undefined;
      const lacking = group && lackingIn(group, path, kind);
      if (lacking) return no(lacking);
      const parsed = typeof raw === "string" ? parseQuantity(raw, kind) : group && readGroup(group, kind);
      if (parsed === undefined) {
        return typeof raw === "number"
          ? no({ kind: "missing", input: path, ...given(raw), allowed: allowedUnits(kind), id: "unit-missing" })
          : no({ kind: "malformed", input: path, ...given(raw), id: "not-a-quantity" });
      }
      if (!parsed.ok) return unread(path, raw, parsed.unread);
      reader.typed.set(path, parsed.quantity);
      return ok(parsed.quantity.value);
    },
  };
}

/** A value without its unit, a unit without its value, or a name that is neither. */
function lackingIn(raw: { readonly [name: string]: Json }, path: string, kind: Kind): Malformed | undefined {
  const other = Object.keys(raw).find((name) => name !== "value" && name !== "unit");
  if (other !== undefined) {
    return unknown(`${path}.${other}`, raw[other], ["value", "unit"]);
  }
  if (raw.value === undefined || raw.value === null) return { kind: "missing", input: path, ...given(raw), id: "value-missing" };
  if (raw.unit !== undefined && raw.unit !== null && raw.unit !== "") return undefined;
  return { kind: "missing", input: path, ...given(raw), allowed: allowedUnits(kind), id: "unit-missing" };
}

function readGroup<K extends Kind>({ value, unit }: { readonly [name: string]: Json }, kind: K) {
  if (typeof value !== "number" || typeof unit !== "string") return undefined;
  return readQuantity(value, unit, kind);
}

/** A plain number: a count, a ratio, a clock hour, a pH. Outside `range` is malformed only where the schema says so. */
export function numberField(range: Range & { readonly integer?: true } = {}, about?: string): Field<number> {
  const schema: JsonSchema = {
    ...(about === undefined ? {} : { description: about }),
    type: range.integer ? "integer" : "number",
    ...(range.min === undefined ? {} : { minimum: range.min }),
    ...(range.max === undefined ? {} : { maximum: range.max }),
  };
  return {
    schema,
    read(raw, path) {
      if (raw === undefined || raw === null) return missing(path);
      if (typeof raw !== "number") return no({ kind: "malformed", input: path, ...given(raw), id: "not-a-number" });
      if (!Number.isFinite(raw)) return no({ kind: "outside-range", input: path, ...given(raw), id: "number-too-large" });
      if (range.integer && !Number.isInteger(raw)) return no({ kind: "malformed", input: path, ...given(raw), id: "not-a-whole-number" });
      if (raw < (range.min ?? -Infinity) || raw > (range.max ?? Infinity)) {
        const { integer: _, ...allowed } = range;
        return no({ kind: "outside-range", input: path, ...given(raw), allowed: { ...allowed }, id: "number-outside" });
      }
      return ok(raw);
    },
  };
}

/** A whole number. */
export function countField(range: Range = { min: 0, max: 1000 }, about?: string): Field<number> {
  return numberField({ ...range, integer: true }, about);
}

/** One of a few words, in whatever way people write them. */
export function choiceField<const C extends readonly string[]>(choices: C, about?: string): Field<C[number]> {
  return {
    schema: { ...(about === undefined ? {} : { description: about }), enum: choices },
    read(raw, path) {
      if (raw === undefined || raw === null) return missing(path, choices);
      const choice = typeof raw === "object" ? undefined : chosen(raw, choices);
      if (choice !== undefined) return ok(choice);
      return no({ kind: "malformed", input: path, ...given(raw), allowed: choices, id: "not-a-choice" });
    },
  };
}

const yesNo = ["yes", "true", "no", "false"] as const;

/** True or false, which people also write as yes or no. */
export function yesNoField(about?: string): Field<boolean> {
  return {
    schema: { ...(about === undefined ? {} : { description: about }), type: "boolean" },
    read(raw, path) {
      if (raw === undefined || raw === null) return missing(path, [true, false]);
      if (typeof raw === "boolean") return ok(raw);
      const word = typeof raw === "string" ? chosen(raw, yesNo) : undefined;
      if (word !== undefined) return ok(yesNo.indexOf(word) < 2);
      return no({ kind: "malformed", input: path, ...given(raw), allowed: [true, false], id: "not-yes-or-no" });
    },
  };
}

export function textField(about?: string, maxLength = 500): Field<string> {
  return {
    schema: { ...(about === undefined ? {} : { description: about }), type: "string", maxLength },
    read(raw, path) {
      if (raw === undefined || raw === null) return missing(path);
      if (typeof raw === "string" && raw.length <= maxLength) return ok(raw);
      return no({ kind: "malformed", input: path, ...given(raw), id: "not-a-text" });
    },
  };
}

/** The id of one thing in a list of facts, or what people call it. */
export function idField(list: "sleeve" | "fluid", about?: string, maxLength = 80): Field<string> {
  const text = textField(about, maxLength);
  return {
    schema: text.schema,
    read(raw, path, reader) {
      const read = text.read(typeof raw === "number" ? String(raw) : raw, path, reader);
      if (!read.ok) return read;
      if (isUnknown(read.value)) return no({ kind: "missing", input: path, ...given(raw ?? null), id: "field-missing" });
      return ok(idFor(list, read.value));
    },
  };
}

/** A designation that looks like a number and may come as one: the class 8.8 of a stud. */
export function designationField(about?: string, maxLength = 40): Field<string> {
  const text = textField(about, maxLength);
  return {
    schema: { ...text.schema, type: ["string", "number"] },
    read: (raw, path, reader) => text.read(typeof raw === "number" ? String(raw) : raw, path, reader),
  };
}

export function listField<T>(
  item: Field<T>,
  size: { readonly min?: number; readonly max?: number } = {},
  about?: string,
): Field<readonly T[]> {
  const { min = 0, max = 1000 } = size;
  return {
    schema: { ...(about === undefined ? {} : { description: about }), type: "array", items: item.schema, minItems: min, maxItems: max },
    read(raw, path, reader) {
      if (raw === undefined || raw === null) return missing(path);
      if (!Array.isArray(raw)) return no({ kind: "malformed", input: path, ...given(raw), id: "not-a-list" });
      if (raw.length < min || raw.length > max)
        return no({
          kind: "malformed",
          input: path,
          ...given(raw),
          allowed: { min, max },
          id: "list-length",
          with: { count: raw.length },
        });
      const values: T[] = [];
      for (const [index, entry] of raw.entries()) {
        const read = item.read(entry as Json, `${path}[${index}]`, reader);
        if (!read.ok) return read;
        values.push(read.value);
      }
      return ok(values);
    },
  };
}

type Fields = Readonly<Record<string, Field<unknown>>>;
type OptionalKeys<F extends Fields> = { [N in keyof F]: undefined extends ReadValue<F[N]> ? N : never }[keyof F];
/** What a group of fields is read as; a field that may be left out becomes an optional property. */
export type GroupValue<F extends Fields> = { readonly [N in Exclude<keyof F, OptionalKeys<F>>]: ReadValue<F[N]> } & {
  readonly [N in OptionalKeys<F>]?: Exclude<ReadValue<F[N]>, undefined>;
};

/** Named fields. A name that is not among them is refused, with the names that are. */
export function groupField<F extends Fields>(fields: F, about?: string): Field<GroupValue<F>> {
  const names = Object.keys(fields);
  const schema: JsonSchema = {
    ...(about === undefined ? {} : { description: about }),
    type: "object",
    properties: Object.fromEntries(names.map((name) => [name, fields[name]?.schema ?? {}])),
    required: names.filter((name) => !fields[name]?.optional),
    additionalProperties: false,
  };
  return {
    schema,
    read(raw, path, reader) {
      const at = (name: string) => (path === "" ? name : `${path}.${name}`);
      if (raw === undefined || raw === null) return missing(path === "" ? "question" : path, names, "group-missing");
      if (typeof raw !== "object" || Array.isArray(raw)) {
        return no({ kind: "malformed", input: path === "" ? "question" : path, ...given(raw), allowed: names, id: "not-a-group" });
      }
      const object = raw as { readonly [name: string]: Json };
      for (const name of Object.keys(object)) {
        if (!Object.hasOwn(fields, name)) return no(unknown(at(name), object[name], names));
      }
      const value: Record<string, unknown> = {};
      for (const name of names) {
        const read = fields[name]?.read(Object.hasOwn(object, name) ? object[name] : undefined, at(name), reader);
        if (!read) continue;
        if (!read.ok) return read;
        if (read.value !== undefined) value[name] = read.value;
      }
      return ok(value as GroupValue<F>);
    },
  };
}

/** A field that may be left out. Left out, null or "don't know", it is not known. */
export function optional<T>(field: Field<T>): Field<T | undefined> {
  return {
    schema: field.schema,
    optional: true,
    read(raw, path, reader) {
      if (raw === undefined || raw === null) return ok(undefined);
      const read = field.read(raw, path, reader);
      return !read.ok && typeof raw === "string" && isUnknown(raw) ? ok(undefined) : read;
    },
  };
}

/** Either of two ways to give the same thing: with one of the named members it is the first. */
export function eitherField<A, B>(marks: readonly string[], marked: Field<A>, plain: Field<B>): Field<A | B> {
  const isMarked = (raw: Json | undefined) => {
    if (typeof raw !== "object" || raw === null || Array.isArray(raw)) return false;
    return marks.some((mark) => Object.hasOwn(raw, mark)) || !(Object.hasOwn(raw, "value") || Object.hasOwn(raw, "unit"));
  };
  return {
    schema: { anyOf: [marked.schema, plain.schema] },
    read: (raw, path, reader): Read<A | B> => (isMarked(raw) ? marked.read(raw, path, reader) : plain.read(raw, path, reader)),
  };
}
