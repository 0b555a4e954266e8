import type { Json, Measured } from "./entry.ts";
import { isId } from "./id.ts";
import { startOfDay } from "./time.ts";

type Group = { readonly [name: string]: Json };

/** A JSON Schema (2020-12). */
export type JsonSchema = { readonly [name: string]: Json };

/** What a body must look like. */
export interface Shape {
  /** The place of the first thing that is wrong in a body, or nothing. */
  readonly faultIn: (body: Group) => string | undefined;
  /** The same as a schema. */
  readonly schema: JsonSchema;
}

export function isGroup(json: Json | undefined): json is Group {
  return typeof json === "object" && json !== null && !Array.isArray(json);
}

function only(group: Group, names: readonly string[]): boolean {
  return Object.keys(group).every((name) => names.includes(name));
}

function isMeasured(json: Json | undefined): json is Json & Measured {
  return (
    isGroup(json) &&
    only(json, ["value", "unit", "typed"]) &&
    typeof json.value === "number" &&
    typeof json.unit === "string" &&
    typeof json.typed === "string"
  );
}

/** Readings, or planes of readings, or both, and how they were taken. */
function isReadings(json: Json): boolean {
  return (
    isGroup(json) &&
    only(json, ["readings", "planes", "how", "resolution"]) &&
    (json.readings !== undefined || json.planes !== undefined) &&
    (json.readings === undefined || isMeasuredList(json.readings)) &&
    (json.planes === undefined || (Array.isArray(json.planes) && json.planes.every((plane: Json) => isMeasuredList(plane)))) &&
    (json.how === undefined || typeof json.how === "string") &&
    (json.resolution === undefined || isMeasured(json.resolution))
  );
}

const isTexts = (json: Json) => Array.isArray(json) && json.every((one: Json) => typeof one === "string");
const isPlain = (json: Json | undefined) => json === null || ["boolean", "number", "string"].includes(typeof json);
const isMeasuredList = (json: Json) => Array.isArray(json) && json.every((one: Json) => isMeasured(one));

const looks = {
  anything: () => true,
  id: isId,
  text: (json: Json) => typeof json === "string",
  count: (json: Json) => Number.isInteger(json) && (json as number) >= 0,
  numbers: (json: Json) => Array.isArray(json) && json.every((one: Json) => typeof one === "number"),
  groups: (json: Json) => Array.isArray(json) && json.every((one: Json) => isGroup(one)),
  texts: (json: Json) => isGroup(json) && Object.values(json).every((one) => typeof one === "string"),
  day: (json: Json) => typeof json === "string" && Number.isFinite(startOfDay(json)),
  hash: (json: Json) => typeof json === "string" && /^[0-9a-f]{64}$/u.test(json),
  field: (json: Json) => typeof json === "string" && /^[A-Za-z][\w-]*(?:\.[A-Za-z][\w-]*){0,3}$/u.test(json),
  reading: (json: Json) => json === null || typeof json === "number" || typeof json === "string" || isMeasured(json),
  limit: (json: Json) => json === null || typeof json === "number" || isMeasured(json),
  figure: (json: Json) => typeof json === "number" || isMeasured(json),
  found: (json: Json) => isPlain(json) || isMeasured(json) || isMeasuredList(json),
  value: (json: Json) => isPlain(json) || isTexts(json) || isMeasured(json) || isMeasuredList(json) || isReadings(json),
} as const satisfies Readonly<Record<string, (json: Json) => boolean>>;

type Look = keyof typeof looks;

const group = (properties: { readonly [name: string]: Json }, required: readonly string[]): JsonSchema => ({
  type: "object",
  properties,
  required,
  additionalProperties: false,
});
const text = { type: "string" };
const number = { type: "number" };
const plain = { type: ["null", "boolean", "number", "string"] };
const listOf = (items: Json): JsonSchema => ({ type: "array", items });
export const idSchema: JsonSchema = { type: "string", pattern: "^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$" };
export const hashSchema: JsonSchema = { type: "string", pattern: "^[0-9a-f]{64}$" };
const measured = group({ value: number, unit: text, typed: text }, ["value", "unit", "typed"]);
const readings = group({ readings: listOf(measured), how: text, resolution: measured }, ["readings"]);

/** Each look as a schema; a test holds the two together. */
const schemas: Readonly<Record<Look, JsonSchema>> = {
  anything: {},
  id: idSchema,
  text,
  count: { type: "integer", minimum: 0 },
  numbers: listOf(number),
  groups: listOf({ type: "object" }),
  texts: { type: "object", additionalProperties: text },
  day: { type: "string", pattern: "^\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])$" },
  hash: hashSchema,
  field: { type: "string", pattern: "^(?!.*__proto__)[A-Za-z][\\w-]*(?:\\.[A-Za-z][\\w-]*){0,3}$" },
  reading: { anyOf: [{ type: ["null", "number", "string"] }, measured] },
  limit: { anyOf: [{ type: ["null", "number"] }, measured] },
  figure: { anyOf: [number, measured] },
  found: { anyOf: [plain, measured, listOf(measured)] },
  value: { anyOf: [plain, listOf(text), measured, listOf(measured), readings] },
};

/** A body with these members, some of which may be left out, and no others. */
export function shape(must: Readonly<Record<string, Look>>, may: Readonly<Record<string, Look>> = {}): Shape {
  const all = { ...must, ...may };
  const needed = Object.entries(must);
  return {
    faultIn(body) {
      for (const [name, look] of needed) {
        const json = body[name];
        if (json === undefined || !looks[look](json)) return name;
      }
      for (const [name, json] of Object.entries(body)) {
        const look = Object.hasOwn(all, name) ? all[name] : undefined;
        if (look === undefined || !looks[look](json)) return name;
      }
      return undefined;
    },
    schema: group(Object.fromEntries(Object.entries(all).map(([name, look]) => [name, schemas[look]])), Object.keys(must)),
  };
}

export const fieldBody = shape({ field: "field", value: "value" });
export const fitStepBody = shape({ job: "id", step: "text", found: "found" }, { expected: "figure", blanks: "texts", cannot: "text" });
