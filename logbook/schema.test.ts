import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../testing/property.ts";
import type { Json } from "./entry.ts";
import { kinds } from "./kinds.ts";
import { entrySchema } from "./schema.ts";
import { isGroup } from "./shapes.ts";

const schemas = new Ajv2020({ strict: true, allowUnionTypes: true, formats: { "date-time": true } });
const fits = new Map(Object.entries(kinds).map(([kind, { body }]) => [kind, schemas.compile(body.schema)]));

const id = "0191a0b2-0000-7000-8000-000000000001";
const measured = { value: 0.05, unit: "m", typed: "50 mm" };
/** Values that some member of some body takes, and values beside them. */
const values: readonly Json[] = [
  id,
  id.toUpperCase(),
  "text",
  "",
  "port.diameter",
  "a.__proto__",
  "2031-04-30",
  "2031-13-30",
  "ab".repeat(32),
  measured,
  { ...measured, how: "rule" },
  { readings: [measured], how: "rule" },
  { readings: [measured, 3] },
  [measured],
  ["a", "b"],
  ["a", 1],
  [1, -0.5],
  [{ depth: 1 }],
  { lot: "7" },
  { lot: 7 },
  true,
  null,
  0,
  -1,
  3,
  0.5,
];
const anything = fc.oneof(fc.constantFrom(...values), fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Json>);
/** Mostly what the member takes, so that whole bodies are taken too. */
const memberOf = (schema: Json) => {
  const fitting = values.filter((value) => schemas.validate(schema as object, value));
  return fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...fitting) }, { weight: 1, arbitrary: anything });
};
const names = [...new Set(Object.values(kinds).flatMap(({ body }) => Object.keys(body.schema.properties as object)))];
const anyBody = fc.constantFrom(...Object.entries(kinds)).chain(([kind, { body }]) => {
  const own = Object.entries(body.schema.properties as { readonly [name: string]: Json });
  return fc.record({
    kind: fc.constant(kind as keyof typeof kinds),
    body: fc
      .tuple(
        fc.record(Object.fromEntries(own.map(([name, schema]) => [name, memberOf(schema)])), { requiredKeys: [] }),
        fc.oneof(
          { weight: 4, arbitrary: fc.constant({}) },
          { weight: 1, arbitrary: fc.dictionary(fc.constantFrom(...names, "odd"), anything, { maxKeys: 2 }) },
        ),
      )
      .map(([one, other]): { readonly [name: string]: Json } => JSON.parse(JSON.stringify({ ...one, ...other }))),
  });
});

let taken = 0;
property("a body is taken exactly when its schema takes it", [anyBody], ({ kind, body }) => {
  const takes = kinds[kind].body.faultIn(body) === undefined;
  if (takes) taken++;
  expect(fits.get(kind)?.(body), `${kind} ${JSON.stringify(body)}`).toBe(takes);
});
test("and some bodies were taken", () => expect(taken).toBeGreaterThan(10));

test("the schema of an entry takes what this version knows, keeps what it does not, and refuses what is none", () => {
  const isEntry = schemas.compile(entrySchema());
  const entry = {
    v: 1,
    id,
    site: id,
    box: null,
    kind: "note",
    kindVersion: 1,
    at: { device: "2026-01-01T10:00:00+01:00", serverOffsetMs: null },
    by: "p1",
    device: id,
    seq: 1,
    prev: null,
    after: [],
    body: { text: "A note" },
    method: null,
  };
  expect(isGroup(entry)).toBe(true);
  expect(isEntry(entry)).toBe(true);
  expect(isEntry({ ...entry, body: { text: 1 } })).toBe(false);
  expect(isEntry({ ...entry, kindVersion: 2, body: { text: 1 } })).toBe(true);
  expect(isEntry({ ...entry, kind: "sung", body: { song: 1 } })).toBe(true);
  expect(isEntry({ ...entry, seq: 0 })).toBe(false);
  expect(isEntry({ ...entry, more: 1 })).toBe(false);
});
