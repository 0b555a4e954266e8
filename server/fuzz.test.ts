import { answers, type Json } from "@ringwright/answers";
import { demoSite } from "@ringwright/demo";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { chainOf, idOf } from "../testing/entries.ts";
import { propertyInTime } from "../testing/property.ts";
import { exampleOf } from "./docs/examples.ts";
import { loadDemo } from "./start/first-run.ts";
import { facts, type Served, served } from "./testing/asked.ts";

let server: Served;
let box: string;
beforeAll(async () => {
  server = await served();
  await loadDemo(server.store, facts, Date.UTC(2031, 4, 5));
  const { json } = await server.ask("GET", `/api/v1/sites/${demoSite}/boxes`);
  box = (json as { boxes: readonly { box: string }[] }).boxes[0]?.box ?? "";
});
afterAll(() => server.close());

const odd = fc.constantFrom<Json>(
  null,
  true,
  "",
  "don't know",
  -1,
  0,
  1e308,
  5e-324,
  "1e999 mm",
  "9".repeat(400),
  "\u0000",
  "\ud800",
  "../../etc/passwd",
  [],
  {},
  { value: 1, unit: "mm" },
  { value: -1e300, unit: "m" },
  { __proto__: null, constructor: 1 },
  "-0 mm",
);
const anyJson = fc.oneof(odd, fc.jsonValue({ maxDepth: 4 }) as fc.Arbitrary<Json>);

/** The same JSON with something else in one of its places. */
function spoiled(json: Json, path: readonly number[], by: Json): Json {
  if (typeof json !== "object" || json === null || path.length === 0) return by;
  const [first = 0, ...rest] = path;
  if (Array.isArray(json)) {
    const list = json as readonly Json[];
    return list.length === 0 ? [by] : list.map((one, index) => (index === first % list.length ? spoiled(one, rest, by) : one));
  }
  const names = Object.keys(json);
  const group = json as { readonly [name: string]: Json };
  const name = names[first % Math.max(1, names.length)];
  return name === undefined ? { odd: by } : { ...group, [name]: spoiled(group[name] ?? null, rest, by) };
}

const examples = new Map<string, Json>();
const question = (name: string) => {
  const known = examples.get(name) ?? exampleOf(name).question;
  examples.set(name, known);
  return known;
};
const places = fc.array(fc.nat(12), { maxLength: 5 });
const names = fc.constantFrom(...answers.map(({ name }) => name));
const spoiledQuestion = fc.tuple(names, places, anyJson).map(([name, path, by]) => ({ name, body: spoiled(question(name), path, by) }));
const told = chainOf({ site: demoSite, device: idOf("fuzzing device"), box: idOf("fuzzed box") }, 3).map(
  ({ entry }) => JSON.parse(JSON.stringify(entry)) as Json,
);
const push = fc.tuple(places, anyJson).map(([path, by]) => ({
  method: "POST" as const,
  url: `/api/v1/sites/${demoSite}/entries`,
  body: JSON.stringify(spoiled({ entries: told }, path, by)),
}));

const part = fc.oneof(
  fc.constantFrom(
    "api",
    "v1",
    "answers",
    "sites",
    "boxes",
    "entries",
    "drawings",
    "people",
    "docs",
    "healthz",
    "plan",
    "push.svg",
    "..",
    "%2e%2e",
    "%00",
    "%zz",
    "",
    "a".repeat(300),
  ),
  fc.constantFrom(demoSite, idOf("nowhere"), "BOX"),
  fc.string({ unit: "grapheme", maxLength: 12 }).map((text) => encodeURIComponent(text)),
);
const query = fc.oneof(
  fc.constant(""),
  fc.constantFrom(
    "?since=1&limit=2",
    "?since=-1",
    "?limit=1e3",
    "?since=99999999999999999999",
    "?units=inch&width=10in",
    "?width=9e9m",
    "?units=a&units=b",
    "?__proto__=1",
    "?%zz=%zz",
    "?since",
  ),
  fc.string({ maxLength: 20 }).map((text) => `?${encodeURI(text)}`),
);
const text = fc.oneof(
  anyJson.map((json) => JSON.stringify(json)),
  fc.string({ maxLength: 60 }),
  fc.constantFrom("", "{", "\ufeff{}", '{"a":1,"a":2}', `${"[".repeat(9999)}`, `${"[".repeat(300)}${"]".repeat(300)}`, "nul", "1e999"),
);
const bytes = fc.uint8Array({ maxLength: 60 }).map((list) => Buffer.from(list));
const anywhere = fc.record({
  method: fc.constantFrom("GET" as const, "POST" as const, "PUT" as const),
  url: fc.tuple(fc.array(part, { maxLength: 8 }), query).map(([parts, search]) => `/${parts.join("/")}${search}`),
  body: fc.oneof(fc.constant(undefined), text, bytes),
});
const there = fc.record({
  method: fc.constantFrom("GET" as const, "POST" as const, "PUT" as const),
  url: fc
    .tuple(
      fc.constantFrom(
        "/api/v1/people",
        `/api/v1/sites/${demoSite}/entries`,
        `/api/v1/sites/${demoSite}/boxes`,
        `/api/v1/sites/${demoSite}/boxes/BOX`,
        `/api/v1/sites/${demoSite}/boxes/BOX/plan`,
        `/api/v1/sites/${demoSite}/boxes/BOX/drawings/joint-clock.svg`,
        "/api/v1/drawings/push",
        "/api/v1/answers/nothing",
      ),
      query,
    )
    .map((both) => both.join("")),
  body: fc.oneof(fc.constant(undefined), text, bytes),
});
const asked = spoiledQuestion.map(({ name, body }) => ({
  method: "POST" as const,
  url: `/api/v1/answers/${name}`,
  body: JSON.stringify(body),
}));
const drawn = fc
  .tuple(fc.constantFrom("box-section", "joint-clock", "cut-strip", "push"), places, anyJson, query)
  .map(([name, path, by, search]) => ({
    method: "POST" as const,
    url: `/api/v1/drawings/${name}${search}`,
    body: JSON.stringify(spoiled(question("plan"), path, by)),
  }));
const headers = fc.oneof(
  { weight: 4, arbitrary: fc.constant({}) },
  {
    weight: 1,
    arbitrary: fc.record(
      {
        "content-type": fc.constantFrom("application/json", "text/plain", "application/json; charset=latin1", "x"),
        origin: fc.constantFrom("http://localhost:80", "null", "http://mill.example"),
        host: fc.constantFrom("localhost:80", "mill.example", "[::1]:80", "\u00e9"),
        accept: fc.constantFrom("*/*", "text/html", ""),
        "if-none-match": fc.constantFrom("*", '"x"'),
        "accept-encoding": fc.constantFrom("gzip", "br;q=0"),
      },
      { requiredKeys: [] },
    ),
  },
);

const seen = new Map<number, number>();
propertyInTime(
  "whatever is sent, the server says what is wrong with it or answers, and goes on",
  [fc.oneof(anywhere, there, asked, drawn, push), headers],
  async ({ method, url, body }, sent) => {
    // Held against the OpenAPI document on its way back.
    const { status, type } = await server.ask(method, url.replaceAll("BOX", box), body, sent);
    seen.set(status, (seen.get(status) ?? 0) + 1);
    expect(status).toBeLessThan(500);
    if (status >= 400) expect(type).toBe("application/problem+json; charset=utf-8");
    const health = await server.ask("GET", "/healthz");
    expect(health.status).toBe(200);
  },
  "http-fuzz",
);

test("and what was sent met every kind of end", () => {
  for (const status of [200, 400, 404, 405, 415, 422]) expect(seen.get(status) ?? 0, String(status)).toBeGreaterThan(0);
});

test("what is kept was not touched by any of it", async () => {
  const { json } = await server.ask("GET", `/api/v1/sites/${demoSite}/boxes`);
  expect((json as { boxes: readonly object[] }).boxes.length).toBeGreaterThanOrEqual(7);
});
