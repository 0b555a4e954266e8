import { ask } from "@ringwright/answers";
import { type Kind, siUnits } from "@ringwright/core/units";
import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { surveyField } from "../answers/topics/survey-field.ts";
import { boxes, chance, Device, shuffled } from "../testing/devices.ts";
import { property } from "../testing/property.ts";
import { disagreements, type FieldValue, fold, type Json, type Measured, standing, surveyOf } from "./index.ts";

type Group = { readonly [name: string]: Json };
const [box = null] = boxes;
const facts = readAllFacts();
const isGroup = (json: Json): json is Group => typeof json === "object" && json !== null && !Array.isArray(json);
const isQuantity = (json: Json): boolean => isGroup(json) && "value" in json && "unit" in json;

/** Any value that a schema of the survey allows, in SI; now and then null, which is "don't know". */
function filled(schema: Group): fc.Arbitrary<Json> {
  if (typeof schema["x-quantity"] === "string") {
    const unit = siUnits[schema["x-quantity"] as Kind];
    return fc.double({ min: 0.001, max: 400, noNaN: true }).map((value) => ({ value, unit }));
  }
  if (Array.isArray(schema.enum)) return fc.constantFrom(...(schema.enum as Json[]));
  if (Array.isArray(schema.anyOf)) {
    const ways = (schema.anyOf as Group[]).filter((way) => !("const" in way));
    return fc.oneof(...ways.map((way) => (way.type === "null" ? fc.constant(null) : filled(way))));
  }
  if (schema.type === "array") {
    const { minItems = 0, maxItems = 3 } = schema as { minItems?: number; maxItems?: number };
    return fc.array(filled(schema.items as Group), { minLength: minItems, maxLength: Math.max(minItems, Math.min(maxItems, 3)) });
  }
  if (schema.type === "object") {
    const members = Object.entries(schema.properties as Group).map(([name, member]) => [name, filled(member as Group)] as const);
    return fc.record(Object.fromEntries(members), { requiredKeys: (schema.required ?? []) as string[] }).map(tidied);
  }
  if (schema.type === "boolean") return fc.boolean();
  const { minimum = 0, maximum = 100 } = schema as { minimum?: number; maximum?: number };
  if (schema.type === "integer") return fc.integer({ min: minimum, max: maximum });
  if (schema.type === "number") return fc.double({ min: minimum, max: maximum, noNaN: true }).map((value) => value + 0);
  return fc.string({ maxLength: 12 });
}

/** Without groups that say nothing, and house limits as a logbook keeps them: one for an item, with one amount. */
function tidied(record: { [name: string]: unknown }): Json {
  const members = Object.entries(record as Group).filter(([, value]) => !(isGroup(value) && Object.keys(value).length === 0));
  return Object.fromEntries(
    members.map(([name, value]) => [name, name === "houseLimits" && Array.isArray(value) ? asKept(value as Group[]) : value]),
  );
}

function asKept(limits: readonly Group[]): Json {
  const byItem = new Map(limits.map((limit) => [String(limit.item), limit]));
  return [...byItem]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([, { value, number, why, ...limit }]) => ({
      ...limit,
      ...(isQuantity(value ?? null) ? { value: value as Json } : { number: number ?? 1 }),
      ...(typeof why === "string" ? { why } : {}),
    }));
}

/** Everything a survey says, field by field, as an entry says it. */
function said(json: Json, path: readonly string[] = []): readonly (readonly [string, Json])[] {
  const field = path.join(".");
  if (field === "condition.houseLimits" && json !== null) return [];
  if (!isGroup(json) || isQuantity(json)) return [[field, carried(json)]];
  const isDimension = ["readings", "planes"].some((name) => Object.hasOwn(json, name));
  if (isDimension) {
    // "Don't know how" is an answer of its own, beside the readings.
    const [known, unknown] = [true, false].map((is) => Object.entries(json).filter(([, value]) => (value !== null) === is));
    return [[field, carried(Object.fromEntries(known ?? []))], ...(unknown ?? []).map(([name]) => [`${field}.${name}`, null] as const)];
  }
  return Object.entries(json).flatMap(([name, value]) => said(value as Json, [...path, name]));
}

function carried(json: Json): Json {
  if (Array.isArray(json)) return json.map((one: Json) => carried(one));
  if (isGroup(json) && isQuantity(json)) return { ...json, typed: "as read" };
  return isGroup(json) ? Object.fromEntries(Object.entries(json).map(([name, value]) => [name, carried(value)])) : json;
}

const anySurvey = filled(surveyField.schema as Group) as fc.Arbitrary<Group>;

/** Leaves of the survey's schema, by name in dots. */
function leaves(schema: Group, path: readonly string[] = []): readonly string[] {
  const groups = [schema, ...((schema.anyOf ?? []) as Group[])].filter((way) => way.type === "object" && !("x-quantity" in way));
  const inner = groups.flatMap(({ properties }) => Object.entries(properties as Group));
  if (inner.length === 0 || ["shaft", "bore", "depth"].includes(path.join("."))) return [path.join(".")];
  return inner.flatMap(([name, member]) => leaves(member as Group, [...path, name]));
}

const reached = new Set<string>();

property("a survey said field by field in any order is asked as if it had been asked whole", [anySurvey, fc.integer()], (survey, seed) => {
  const random = chance(seed);
  const tablet = new Device(1, random);
  for (const [field, value] of shuffled(said(survey), random)) {
    reached.add(field);
    tablet.say("measured", { field, value: value as FieldValue });
  }
  const condition = isGroup(survey.condition ?? null) ? (survey.condition as Group) : {};
  for (const limit of shuffled((condition.houseLimits ?? []) as Group[], random)) {
    const { item, setBy, why, value, number } = limit;
    reached.add("condition.houseLimits");
    const amount = (value === undefined ? number : carried(value)) as Measured | number;
    tablet.say("limit-set", { item: String(item), setBy: String(setBy), value: amount, ...(typeof why === "string" ? { why } : {}) });
  }
  const asked = surveyOf(tablet.book.state(box));
  expect(ask("plan", asked, facts)).toEqual(ask("plan", survey, facts));
});

test("every field of the survey was carried by an entry, and no other", () => {
  const all = leaves(surveyField.schema as Group);
  expect(all.length).toBeGreaterThan(60);
  expect(all.filter((field) => !reached.has(field))).toEqual([]);
  expect(
    [...reached].filter(
      (field) => !all.includes(field) && !all.some((leaf) => leaf.startsWith(`${field}.`) || field.startsWith(`${leaf}.`)),
    ),
  ).toEqual([]);
});

/** Entries that say these fields, as a state. */
function stateOf(fields: readonly (readonly [string, Json])[]) {
  const tablet = new Device(1, chance(1));
  for (const [field, value] of fields) tablet.say("measured", { field, value: value as FieldValue });
  return tablet.book.state(box);
}

const mm = (value: number): Json => ({ value: value / 1000, unit: "m", typed: `${value} mm` });

describe("fields that do not fit together", () => {
  test.each<[string, [string, Json][], Json]>([
    [
      "a part counts against the whole",
      [
        ["port", 5],
        ["port.diameter", mm(6)],
      ],
      { port: { diameter: { value: 0.006, unit: "m" } } },
    ],
    [
      "not known as a whole, known in part",
      [
        ["port", null],
        ["port.diameter", mm(6)],
      ],
      { port: { diameter: { value: 0.006, unit: "m" } } },
    ],
    [
      "a quantity gives way to its part",
      [
        ["shaft", mm(50)],
        ["shaft.how", "caliper"],
      ],
      { shaft: { how: "caliper" } },
    ],
    [
      "readings are added to",
      [
        ["shaft", { readings: [mm(50)] }],
        ["shaft.how", "caliper"],
      ],
      { shaft: { readings: [{ value: 0.05, unit: "m" }], how: "caliper" } },
    ],
    [
      "planes are added to",
      [
        ["shaft", { planes: [[mm(50)], []], how: "rule" }],
        ["shaft.how", "caliper"],
      ],
      { shaft: { planes: [[{ value: 0.05, unit: "m" }], []], how: "caliper" } },
    ],
    [
      "names of the box are no question",
      [
        ["tag", "P-1"],
        ["machine", "pump"],
        ["position", "left"],
        ["motion", "turning"],
      ],
      { motion: "turning" },
    ],
    [
      "words of the language are names like any",
      [
        ["constructor.prototype", 1],
        ["toString", "x"],
        ["valueOf.constructor", null],
      ],
      { constructor: { prototype: 1 }, toString: "x", valueOf: { constructor: null } },
    ],
  ])("%s, in whatever order they were said", (_, fields, expected) => {
    expect(JSON.parse(JSON.stringify(surveyOf(stateOf(fields))))).toEqual(expected);
    expect(JSON.parse(JSON.stringify(surveyOf(stateOf(fields.toReversed()))))).toEqual(expected);
  });
});

property(
  "odd names of fields neither throw nor reach a prototype, and fall out alike in any order",
  [
    fc.array(
      fc.tuple(
        fc
          .array(fc.constantFrom("__proto__", "constructor", "prototype", "toString", "a", "shaft", "port"), { minLength: 1, maxLength: 4 })
          .map((path) => path.join(".")),
        fc.constantFrom<Json>(null, 1, "x", mm(1), ["x"], [mm(1)], { readings: [mm(1)] }),
      ),
      { maxLength: 8 },
    ),
    fc.integer(),
  ],
  (fields, seed) => {
    const state = (order: typeof fields) => ({
      ...fold(box, []),
      fields: new Map(
        order.map(([field, value]) => [field, { said: 1, standing: [{ value: value as FieldValue, entry: "", by: "", at: "" }] }]),
      ),
    });
    const last = [...new Map(fields)];
    const text = (order: typeof fields) => JSON.stringify(sorted(surveyOf(state(order))));
    expect(text(shuffled(last, chance(seed)))).toBe(text(last));
    expect(Object.keys(Object.prototype)).toEqual([]);
    for (const name of ["a", "shaft", "port", "prototype"]) expect(name in {}).toBe(false);
    expect({}.constructor).toBe(Object);
  },
  "fuzz",
);

/** With the names in order at every level, kept in lists so that no name is a word of the language. */
function sorted(json: Json): Json {
  if (Array.isArray(json)) return json.map((one: Json) => sorted(one));
  if (!isGroup(json)) return json;
  return Object.entries(json)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, value]) => [name, sorted(value)]);
}

test("where tablets disagree the newest is asked with, and the field is named", () => {
  const [one, other] = [new Device(1, chance(1), () => 1e12), new Device(2, chance(2), () => 2e12)];
  one.say("measured", { field: "motion", value: "turning" });
  other.say("measured", { field: "motion", value: "stroking" });
  other.say("measured", { field: "zone", value: "ordinary" });
  one.take(other.has);
  const state = one.book.state(box);
  expect(surveyOf(state)).toEqual({ motion: "stroking", zone: "ordinary" });
  expect(disagreements(state)).toEqual(["motion"]);
  expect(standing(state.fields.get("zone"))).toBe("ordinary");
  expect(standing(undefined)).toBeUndefined();
});

test("a house limit that was taken back is no longer asked with", () => {
  const tablet = new Device(1, chance(1));
  tablet.say("limit-set", { item: "runout", value: mm(0.075) as unknown as Measured, setBy: "engineer (invented)", why: "own repacks" });
  tablet.say("limit-set", { item: "hardness", value: 300, setBy: "engineer (invented)" });
  expect(surveyOf(tablet.book.state(box))).toEqual({
    condition: {
      houseLimits: [
        { item: "hardness", number: 300, setBy: "engineer (invented)" },
        { item: "runout", value: { value: 0.000_075, unit: "m" }, setBy: "engineer (invented)", why: "own repacks" },
      ],
    },
  });
  tablet.say("limit-set", { item: "runout", value: null, setBy: "engineer (invented)" });
  tablet.say("limit-set", { item: "hardness", value: null, setBy: "engineer (invented)" });
  expect(surveyOf(tablet.book.state(box))).toEqual({});
});
