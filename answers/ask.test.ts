import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../testing/property.ts";
import type { Json } from "./field.ts";
import { answers } from "./register.ts";
import { ask } from "./reply.ts";

const facts = readAllFacts();

const kindOf = (name: string, question: Json) => {
  const reply = ask(name, question, facts);
  return reply.ok ? "ok" : `${reply.refusal.kind} ${reply.refusal.input}`;
};

describe("a malformed question says which field, what was given and what is allowed", () => {
  const cases: readonly (readonly [string, Json, string])[] = [
    ["a field that does not exist", { shaft: "50 mm", rotation: "1450 rpm", sped: 1 }, "unknown-field sped"],
    ["a field left out", { shaft: "50 mm" }, "missing rotation"],
    ["a null", { shaft: null, rotation: "1450 rpm" }, "missing shaft"],
    ["a number without a unit", { shaft: 50, rotation: "1450 rpm" }, "missing shaft"],
    ["a text without a unit", { shaft: "50", rotation: "1450 rpm" }, "missing shaft"],
    ["a unit of another kind", { shaft: "50 bar", rotation: "1450 rpm" }, "wrong-unit shaft"],
    ["a unit nobody knows", { shaft: { value: 50, unit: "cubit" }, rotation: "1450 rpm" }, "wrong-unit shaft"],
    ["a list for a quantity", { shaft: [50], rotation: "1450 rpm" }, "malformed shaft"],
    ["a word", { shaft: "wide", rotation: "1450 rpm" }, "malformed shaft"],
    ["no fields at all", [], "malformed question"],
    ["a text for a question", "50 mm", "malformed question"],
    ["a number too large", { shaft: { value: Number.POSITIVE_INFINITY, unit: "mm" }, rotation: "1450 rpm" }, "outside-range shaft"],
    ["a number that overflows", { shaft: { value: 1e308, unit: "ft" }, rotation: "1450 rpm" }, "outside-range shaft"],
    ["a shaft of no size", { shaft: "0 mm", rotation: "1450 rpm" }, "outside-range shaft"],
    ["a negative shaft", { shaft: "-50 mm", rotation: "1450 rpm" }, "outside-range shaft"],
    [
      "a name out of the language",
      JSON.parse('{"__proto__": 1, "shaft": "50 mm", "rotation": "1450 rpm"}') as Json,
      "unknown-field __proto__",
    ],
  ];
  for (const [title, question, expected] of cases) test(title, () => expect(kindOf("surface-speed", question)).toBe(expected));
});

test("what was typed is echoed as typed", () => {
  expect(ask("surface-speed", { shaft: "-2 1/2 in", rotation: "1450 rpm" }, facts)).toMatchObject({
    ok: false,
    refusal: { given: "-2 1/2 in" },
  });
  expect(ask("surface-speed", { shaft: { value: Number.POSITIVE_INFINITY, unit: "mm" }, rotation: "1450 rpm" }, facts)).toMatchObject({
    ok: false,
    refusal: { given: { value: "Infinity" } },
  });
});

test("a refusal by the core echoes the quantity as it was typed and says in words what would do", () => {
  expect(ask("surface-speed", { shaft: { value: -50, unit: "mm" }, rotation: "1450 rpm" }, facts)).toMatchObject({
    ok: false,
    refusal: { kind: "outside-range", input: "shaft", given: { value: -50, unit: "mm" }, allowed: { above: 0, max: 5, unit: "m" } },
  });
  const reply = ask("surface-speed", { shaft: "-2 in", rotation: "1450 rpm" }, facts);
  expect(reply.ok ? "" : reply.refusal.why).toContain("-2 in");
  expect(reply.ok ? "" : reply.refusal.why).toContain("mm");
});

test("a value without its unit, and a unit without its value, are missing", () => {
  const asked = (shaft: Json) => kindOf("surface-speed", { shaft, rotation: "1450 rpm" });
  expect(asked({ value: 50 })).toBe("missing shaft");
  expect(asked({ value: 50, unit: "" })).toBe("missing shaft");
  expect(asked({ unit: "mm" })).toBe("missing shaft");
  expect(asked({ value: 50, unit: "mm", of: "sleeve" })).toBe("unknown-field shaft.of");
});

test("a word of the language is echoed as it was typed, never looked up", () => {
  for (const name of ["__proto__", "constructor", "toString"]) {
    const reply = ask("surface-speed", JSON.parse(`{"${name}": 1}`) as Json, facts);
    expect(reply.ok ? "" : reply.refusal.why).toContain(name);
    expect(reply.ok ? "" : reply.refusal.why).not.toMatch(/native code|object Object/u);
  }
  const reply = ask("ring-set", { motion: "stem" }, facts);
  expect(reply.ok ? "" : reply.refusal.why).toContain("“stem”");
});

test("groups deeper than any question are echoed in part, and overflow nothing", () => {
  let deep: Json = 1;
  for (let i = 0; i < 100_000; i++) deep = [deep];
  expect(kindOf("surface-speed", { shaft: deep, rotation: "1450 rpm" })).toBe("malformed shaft");
  expect(kindOf("surface-speed", deep)).toBe("malformed question");
});

test("no sentence of a refusal shows brackets of the data", () => {
  const asked: readonly (readonly [string, Json])[] = [
    ["coil", { shaft: "50 mm", bore: "70 mm", cut: "butt", rings: 0 }],
    ["measured", { readings: [] }],
    ["surface-speed", { shaft: { value: 5, unit: "bar" }, rotation: "1 rpm" }],
    ["surface-speed", {}],
    ["ring-set", {}],
  ];
  for (const [name, question] of asked) {
    const reply = ask(name, question, facts);
    expect(reply.ok ? "{" : reply.refusal.why).not.toMatch(/[{}[\]]|\s\.|\.\.|\s$/u);
  }
});

test("an answer nobody knows is refused with the names there are", () => {
  expect(ask("perpetual-motion", {}, facts)).toMatchObject({ ok: false, refusal: { kind: "unknown-answer", given: "perpetual-motion" } });
});

test("names are kebab-case and stand once", () => {
  const names = answers.map((entry) => entry.name);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/u);
});

/** Random questions shaped like the schema of an answer, with odd values in likely places. */
function likely(schema: { readonly [name: string]: Json }, depth = 0): fc.Arbitrary<Json> {
  const odd: fc.Arbitrary<Json> = fc.constantFrom<Json>(
    null,
    "",
    "0 mm",
    -1,
    0,
    1e308,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    "1e999 m",
    [],
    {},
    true,
    "don't know",
  );
  const mostly = (usual: fc.Arbitrary<Json>) => fc.oneof({ weight: 9, arbitrary: usual }, { weight: 1, arbitrary: odd });
  if (typeof schema["x-quantity"] === "string") {
    const units: Readonly<Record<string, string>> = {
      length: "mm",
      pressure: "bar",
      "absolute-pressure": "bar",
      "pressure-difference": "bar",
      stress: "MPa",
      temperature: "degC",
      "temperature-difference": "K",
      rotation: "rpm",
      speed: "m/s",
      viscosity: "mPa*s",
      flow: "mL/min",
      force: "N",
      torque: "N*m",
      power: "W",
      angle: "deg",
      volume: "mL",
      density: "kg/m3",
      "heat-capacity": "J/(kg*K)",
      time: "min",
      mass: "kg",
      area: "mm2",
      conductance: "W/K",
      "surface-tension": "N/m",
    };
    const unit = units[schema["x-quantity"]] ?? "mm";
    return mostly(fc.oneof(fc.double({ min: 0, max: 200, noNaN: true }), fc.double()).map((value) => ({ value, unit })));
  }
  if (Array.isArray(schema.enum)) return mostly(fc.constantFrom(...(schema.enum as Json[])));
  if (Array.isArray(schema.anyOf))
    return fc.oneof(...(schema.anyOf as { [name: string]: Json }[]).map((entry) => likely(entry, depth + 1)));
  if (schema.type === "array") return mostly(fc.array(likely(schema.items as { [name: string]: Json }, depth + 1), { maxLength: 6 }));
  if (schema.type === "object") {
    const properties = (schema.properties ?? {}) as { [name: string]: { [name: string]: Json } };
    const required = new Set((schema.required ?? []) as string[]);
    const fields = Object.entries(properties).map(
      ([name, field]) =>
        [name, required.has(name) ? likely(field, depth + 1) : fc.option(likely(field, depth + 1), { nil: undefined })] as const,
    );
    const group = fc
      .record(Object.fromEntries(fields))
      .map((record) => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Json);
    return depth === 0 ? group : mostly(group);
  }
  if (schema.type === "boolean") return mostly(fc.boolean());
  if (schema.type === "integer") return mostly(fc.integer({ min: 0, max: 12 }));
  if (schema.type === "number") return mostly(fc.double({ min: 0, max: 10, noNaN: true }));
  return mostly(fc.string({ maxLength: 20 }));
}

function allFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return value !== undefined;
  return Object.values(value).every(allFinite);
}

for (const description of answers) {
  property(
    `whatever is asked of ${description.name}, it answers or refuses as data, every number finite`,
    [
      fc.oneof(
        { weight: 8, arbitrary: likely(description.question.schema) },
        { weight: 1, arbitrary: fc.jsonValue() as fc.Arbitrary<Json> },
      ),
    ],
    (question) => {
      const reply = ask(description.name, question, facts);
      if (!reply.ok) return expect(reply.refusal.why.length).toBeGreaterThan(0);
      expect([reply.answer, reply.workings, reply.warnings].every(allFinite), JSON.stringify(reply)).toBe(true);
      // Other warnings may repeat a word that was typed, such as NaN.
      for (const { kind, why } of reply.warnings as unknown as readonly { readonly kind: string; readonly why: string }[])
        if (kind === "slip") expect(why).not.toMatch(/NaN|Infinity|∞|undefined|\{\w+\}/u);
    },
    "fuzz",
  );
}
