import { readdirSync, readFileSync } from "node:fs";
import { plausibleFields } from "@ringwright/core/uncertainty";
import { inUnit, type Kind, quantity, siUnits, type Typed } from "@ringwright/core/units";
import { readAllFacts } from "@ringwright/data";
import { say } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../testing/property.ts";
import type { Json, JsonSchema } from "./field.ts";
import { likelyRange } from "./likely-range.ts";
import { answers } from "./register.ts";
import { ask, findAnswer, work } from "./reply.ts";
import { withSlips } from "./slips-typed.ts";

const facts = readAllFacts();
const { plausible } = facts.uncertainty;

interface Slip {
  readonly kind: string;
  readonly input: string;
  readonly given: Json;
  readonly suggestion?: number;
  readonly why: string;
}

/** Fields asked about with what was perhaps meant; the question is answered all the same. */
function asked(name: string, question: Json): Readonly<Record<string, unknown>> {
  const reply = ask(name, question, facts);
  if (!reply.ok) throw new Error(`${name}: ${reply.refusal.why}`);
  const warnings = reply.warnings as unknown as readonly Slip[];
  return Object.fromEntries(
    warnings
      .filter((warning) => warning.kind === "slip")
      .map((slip) => {
        expect(slip.why.length).toBeGreaterThan(10);
        expect(slip.given).toBeDefined();
        return [slip.input, slip.suggestion === undefined ? undefined : Math.round(slip.suggestion * 1e5) / 1e5];
      }),
  );
}

const gland = { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", nuts: 2, thread: "M12", nutFactor: 0.2 };
const ring = { height: "10 mm", ratio: 0.5, frictionShaft: 0.1, frictionBore: 0.1 };
const sealed = { shaft: "50 mm", bore: "70 mm", pressure: "180 bar", parts: [ring] };
const annulus = { diameter: "50 mm", clearance: "0.05 mm", length: "50 mm", pressureDrop: "1 bar", eccentricity: 0 };
const stack = { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", turning: false };

describe("a likely slip is asked about, whatever is to be worked out, and never blocks", () => {
  const cases: readonly (readonly [string, string, Json, Readonly<Record<string, unknown>>])[] = [
    ["an inch typed as a millimetre", "surface-speed", { shaft: "2 mm", rotation: "1450 rpm" }, { shaft: 0.0508 }],
    ["ten times the speed", "surface-speed", { shaft: "50 mm", rotation: "14500 rpm" }, { rotation: 151.84364 }],
    ["a tenth of the shaft", "gland-load", { ...gland, shaft: "5 mm" }, { shaft: 0.05 }],
    ["ten times the bore", "ring-cut", { shaft: "50 mm", bore: "700 mm", cut: "butt" }, { bore: 0.07 }],
    ["ten times the depth", "ring-set", { motion: "turning", shaft: "50 mm", bore: "70 mm", depth: "800 mm" }, { depth: 0.08 }],
    ["an inch of section", "coil", { shaft: "50 mm", section: "0.375 mm", cut: "butt", rings: 5 }, { section: 0.00953 }],
    [
      "one ring ten times its siblings",
      "stress-along-box",
      { ...stack, parts: [ring, ring, { ...ring, height: "100 mm" }, ring] },
      { "parts[2].height": 0.01 },
    ],
    ["revolutions a minute typed as radians a second", "surface-speed", { shaft: "50 mm", rotation: "1450 rad/s" }, { rotation: 145 }],
    ["a temperature of °F for °C, or ten times", "water", { temperature: "660 °C", pressure: "1 bar" }, { temperature: 339.15 }],
    [
      "ten times the torque",
      "stress-from-torque",
      { shaft: "50 mm", bore: "70 mm", nuts: 2, thread: "M12", nutFactor: 0.2, torque: "3000 N*m" },
      { torque: 338.95449 },
    ],
    ["pressure of a pump", "box-pressure", { suction: "1 bar", discharge: "145 bar", design: "back-vanes" }, { discharge: 1450000 }],
    ["a valve's pressure, which pumps have not", "seal-stress", { ...sealed, motion: "rising-stem" }, {}],
    ["the same for a turning shaft", "seal-stress", { ...sealed, motion: "turning" }, { pressure: 1800000 }],
    ["a gas, whose density is small", "annular-leak", { ...annulus, viscosity: "0.018 mPa*s", density: "1.2 kg/m3" }, {}],
    ["a liquid's density that is none", "annular-leak", { ...annulus, viscosity: "1 mPa*s", density: "1.2 kg/m3" }, { density: 1200 }],
    [
      "one gap round the shaft ten times the others",
      "condition",
      { clockGaps: ["12.4 mm", "12.6 mm", "126 mm", "12.5 mm"] },
      { "clockGaps[2]": 0.0126 },
    ],
    ["a comma that can only mark a decimal", "surface-speed", { shaft: "49,965 mm", rotation: "1450 rpm" }, {}],
    ["a comma that marks thousands", "surface-speed", { shaft: "50 mm", rotation: "1,450 rpm" }, { rotation: 151.84364 }],
    ["nothing mistyped", "gland-load", gland, {}],
    ["rings beside a wide lantern ring", "stress-along-box", { ...stack, parts: [ring, { ...ring, height: "20 mm", ratio: 0 }, ring] }, {}],
  ];
  for (const [title, name, question, expected] of cases) test(title, () => expect(asked(name, question)).toEqual(expected));
});

test("of readings that fall in two, the likely ones are believed", () => {
  const question = { shaft: "50 mm", bore: "70 mm", shaftReadings: ["50 mm", "5 mm", "1.97 mm", "50.1 mm"], resolution: "0.01 mm" };
  const slips = asked("section", question);
  expect(slips).toHaveProperty(["shaftReadings[1]"], 0.05);
  expect(slips).toHaveProperty(["shaftReadings[2]"], 0.05004);
  expect(slips).not.toHaveProperty(["shaftReadings[0]"]);
});

interface Example {
  readonly name: string;
  readonly question: { readonly [name: string]: Json };
}

const folder = new URL("./examples/", import.meta.url);
const examples = readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .map((file): Example => {
    const { question } = JSON.parse(readFileSync(new URL(file, folder), "utf8")) as Pick<Example, "question">;
    return { name: file.replace(".json", ""), question };
  });

test("no example, all of them ordinary, is asked about", () => {
  expect(examples.length).toBe(answers.length);
  for (const { name, question } of examples) expect(asked(name, question), name).toEqual({});
});

/** Every quantity that the questions can hold: its path, and its kind. */
function quantitiesOf(schema: JsonSchema, path = ""): readonly (readonly [string, Kind])[] {
  const kind = schema["x-quantity"];
  if (typeof kind === "string") return [[path, kind as Kind]];
  const within = (entry: Json | undefined, to: string) => (entry ? quantitiesOf(entry as JsonSchema, to) : []);
  return [
    ...((schema.anyOf ?? []) as readonly Json[]).flatMap((entry) => within(entry, path)),
    ...within(schema.items, `${path}[0]`),
    ...Object.entries(schema.properties ?? {}).flatMap(([name, entry]) => within(entry as Json, path === "" ? name : `${path}.${name}`)),
  ];
}

/** Not held against a range: what is no reading of this box, and angles, which the cut itself asks about. */
const free: ReadonlySet<string> = new Set([
  "angle",
  "set.angle",
  "resolution (volume)",
  "readings[0]",
  "planes[0][0]",
  "houseLimits[0].value",
  "condition.houseLimits[0].value",
  "temperatureLimit",
  "items[0].pressure",
  "items[0].temperature",
  "items[0].speed",
]);
const pumps = { motion: "turning", strokes: false };
const typedOf = (kind: Kind, value = 1): Typed => ({ kind, value: value as never, typed: "", unit: siUnits[kind] });
const quantities = answers.flatMap(({ name, question }) => quantitiesOf(question.schema).map(([path, kind]) => ({ name, path, kind })));

test("every quantity of every question is held against a range of its kind, or is known to have none", () => {
  const used = new Set<string>();
  for (const { name, path, kind } of quantities) {
    const field = likelyRange(path, typedOf(kind), pumps);
    const title = path === "resolution" && kind === "volume" ? "resolution (volume)" : path;
    expect(field !== undefined, `${name} ${path}`).toBe(!free.has(title));
    if (field === undefined) continue;
    expect(plausible[field].kind, `${name} ${path}`).toBe(kind);
    used.add(field);
  }
  const byMotion = new Set(["stem-pressure", "slow-rotation"]);
  expect(plausibleFields.filter((field) => !used.has(field) && !byMotion.has(field))).toEqual([]);
});

const held = quantities.flatMap(({ path, kind }) => {
  const field = likelyRange(path, typedOf(kind), pumps);
  return field === undefined || path.includes("eadings") || path.includes("planes") ? [] : [{ path, kind, range: plausible[field] }];
});
const anyHeld = fc.constantFrom(...held);
const said = [{ kind: "note" as const, says: { id: "section-unlikely" } }];
const alone = (path: string, kind: Kind, value: number) => withSlips(pumps, new Map([[path, typedOf(kind, value)]]), plausible, said);

property(
  "what lies in its likely range is never asked about, and what was said stays as it is",
  [anyHeld, fc.double({ min: 0, max: 1, noNaN: true })],
  ({ path, kind, range: { low, high } }, share) => {
    const value = Math.min(high, low + share * (high - low));
    expect(alone(path, kind, value)).toBe(said);
  },
);

property(
  "ten times what is likely is asked about once, with a suggestion that is likely, in a sentence for people",
  [anyHeld, fc.double({ min: 0, max: 1, noNaN: true })],
  ({ path, kind, range: { low, high } }, share) => {
    // On the scale that is typed: temperatures in degrees, not from absolute zero.
    const unit = kind === "temperature" ? "degC" : siUnits[kind];
    const [least, most] = [inUnit(kind, low as never, unit), inUnit(kind, high as never, unit)];
    const from = Math.max(least, 0.101 * most);
    const meant = from + share * (most - from) * 0.999;
    const given = { ...typedOf(kind), unit, value: quantity(kind, 10 * meant, unit) };
    const slips = withSlips(pumps, new Map([[path, given]]), plausible, []);
    expect(slips.map(({ kind: sort, input }) => [sort, input])).toEqual([["slip", path]]);
    expect(slips[0]?.given).toBe(given.value);
    expect(slips[0]?.suggestion).toBeGreaterThanOrEqual(low);
    expect(slips[0]?.suggestion).toBeLessThanOrEqual(high);
    expect(say(slips[0]?.says as never)).not.toMatch(/[{}[\]]|undefined|NaN|[a-z][A-Z][a-z]{2}/u);
  },
);

/** A question with another value at one path. */
function changed(question: Json, path: string, value: Json): Json {
  const copy = structuredClone(question) as { [name: string]: Json };
  const names = path.split(/\.|(?=\[)/u).map((part) => (part.startsWith("[") ? part.slice(1, -1) : part));
  let at = copy;
  for (const name of names.slice(0, -1)) at = at[name] as { [name: string]: Json };
  at[names.at(-1) ?? ""] = value;
  return copy;
}

/** Every quantity of every example, with the range it is held against. */
const inExamples = examples.flatMap(({ name, question }) => {
  const worked = work(name, question, facts);
  if ("malformed" in worked) throw new Error(name);
  const { typed } = worked;
  const motion = typeof question.motion === "string" ? question.motion : undefined;
  const strokes = typed.has("stem") || typed.has("rod") || /stem|stroking/u.test(motion ?? "");
  return [...typed].flatMap(([path, given]) => {
    const field = likelyRange(path, given, { motion, strokes });
    return field === undefined ? [] : [{ name, question, path, kind: given.kind, range: plausible[field] }];
  });
});

describe("any quantity of any example, far beyond what is likely,", () => {
  const cases = inExamples.flatMap((one) =>
    [one.range.high * 3, ...(one.range.low > 0 ? [one.range.low / 3] : [])].map((value) => ({ ...one, value })),
  );

  test("is asked about once, or refused with what was perhaps meant", () => {
    let answered = 0;
    for (const { name, question, path, kind, value } of cases) {
      const reply = ask(name, changed(question, path, { value, unit: siUnits[kind] }), facts);
      const title = `${name} ${path} ${value}`;
      if (!reply.ok) {
        expect(reply.refusal.why, title).toMatch(/Is it |Was the /u);
        expect(reply.refusal.input, title).not.toBe("");
        continue;
      }
      answered++;
      const slips = (reply.warnings as unknown as readonly Slip[]).filter((warning) => warning.kind === "slip");
      expect(
        slips.map(({ input }) => input).filter((input) => path.startsWith(input)),
        title,
      ).toHaveLength(1);
      expect(new Set(slips.map(({ why }) => why)).size, title).toBe(slips.length);
    }
    expect(answered).toBeGreaterThan(cases.length / 2);
  });

  test("is worked with as it was typed: asking changes no answer", () => {
    for (const { name, question, path, kind, value } of cases) {
      const typed = changed(question, path, { value, unit: siUnits[kind] });
      const worked = work(name, typed, facts);
      const description = findAnswer(name);
      const read = description?.question.read(typed, "", { typed: new Map() });
      if ("malformed" in worked || !description || !read?.ok) throw new Error(`${name} ${path}`);
      const plain = description.work(read.value, facts);
      if (!plain.ok) expect(worked.found).toEqual(plain);
      else expect(worked.found).toEqual({ ...plain, warnings: expect.anything() });
    }
  });
});

describe("a plan asks about each thing once", () => {
  const { question } = examples.find(({ name }) => name === "plan") as Example;
  const cases: readonly (readonly [string, Json, Readonly<Record<string, number>>])[] = [
    ["shaft", "5 mm", { shaft: 0.05 }],
    ["shaft", { readings: ["49.96 mm", "4.998 mm", "49.97 mm"], how: "micrometer" }, { "shaft.readings[1]": 0.04998 }],
    ["bore", "750 mm", { bore: 0.075 }],
    ["depth", { readings: ["920 mm"], how: "depth-gauge" }, { depth: 0.092 }],
    ["service", { rotation: "1450 rad/s", pressure: "2,500 bar" }, { "service.rotation": 145 }],
    ["studs", { count: 2, thread: "M12", threadLeft: "250 mm" }, { "studs.threadLeft": 0.025 }],
  ];
  for (const [name, value, expected] of cases)
    test(`${name} ${JSON.stringify(value)}`, () => expect(asked("plan", { ...question, [name]: value })).toEqual(expected));
});

describe("a question that has no answer is told what was perhaps meant", () => {
  const cases: readonly (readonly [string, Json, RegExp])[] = [
    ["surface-speed", { shaft: "50000 mm", rotation: "1450 rpm" }, /shaft reads 50000 mm.*Is it 50\.0\smm/u],
    ["gland-load", { ...gland, shaft: "500 mm" }, /shaft reads 500 mm.*Is it 50\.0\smm\?$/u],
    ["section", { shaft: "500 mm", bore: "70 mm" }, /shaft reads 500 mm.*Is it 50\.0\smm\?$/u],
  ];
  for (const [name, question, why] of cases)
    test(name, () => {
      const reply = ask(name, question, facts);
      expect(reply.ok ? "" : reply.refusal.why).toMatch(why);
      expect(reply.ok ? "" : reply.refusal.given).toBeDefined();
    });
  test("what the refusal itself offers is not said twice", () => {
    const reply = ask("section", { shaft: "50 mm", bore: "2.5 mm" }, facts);
    expect(reply.ok ? "" : reply.refusal.why).toMatch(/Was the bore 63\.5\smm\?$/u);
  });
  test("where nothing looks mistyped, nothing more is said", () => {
    const reply = ask("gland-load", { ...gland, shaft: "70 mm", bore: "50 mm" }, facts);
    expect(reply.ok ? "" : reply.refusal.why).not.toMatch(/Is it/u);
  });
});
