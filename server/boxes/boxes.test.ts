import { ask, type Json } from "@ringwright/answers";
import { demoEntries, demoPeople, demoSite } from "@ringwright/demo";
import { fold, surveyOf } from "@ringwright/logbook";
import { afterAll, beforeAll, expect, test } from "vitest";
import { ran } from "../../testing/command.ts";
import { chainOf, idOf } from "../../testing/entries.ts";
import { exampleOf } from "../docs/examples.ts";
import { loadDemo } from "../start/first-run.ts";
import { facts, now, type Served, served } from "../testing/asked.ts";

const entries = demoEntries(now(), facts).map(({ entry }) => entry);
const boxes = [...new Set(entries.map(({ box }) => box ?? ""))].sort();
const site = `/api/v1/sites/${demoSite}`;

let server: Served;
beforeAll(async () => {
  server = await served();
  expect(await loadDemo(server.store, facts, now())).toBe(true);
});
afterAll(() => server.close());

test("the invented site is loaded once", async () => {
  const before = (await server.ask("GET", "/api/v1/sites")).json;
  expect(before).toMatchObject({ sites: [{ site: demoSite, entries: entries.length }], opens: demoSite });
  expect(await loadDemo(server.store, facts, now() + 1000)).toBe(false);
  expect((await server.ask("GET", "/api/v1/sites")).json).toEqual(before);
  const { json } = await server.ask("GET", "/api/v1/people");
  expect(new Set((json as { people: readonly object[] }).people)).toEqual(new Set(demoPeople));
});

test("every box says its zone, datum and release, unknown where nobody said", async () => {
  const { status, json } = await server.ask("GET", `${site}/boxes`);
  expect(status).toBe(200);
  const list = (json as { readonly boxes: readonly { readonly box: string; readonly zone: string; readonly release: string }[] }).boxes;
  expect(list.map(({ box }) => box)).toEqual(boxes);
  expect(list.filter(({ zone }) => zone === "unknown")).toHaveLength(1);
  expect(list.filter(({ zone }) => zone === "hazardous")).toHaveLength(1);
  expect(list.filter(({ release }) => release === "unknown")).toHaveLength(1);
});

test("every box says the next thing to do, and the site shows all of them", async () => {
  const { json } = await server.ask("GET", `${site}/boxes`);
  const list = (json as { readonly boxes: readonly { readonly name: string; readonly next: { readonly does: string } }[] }).boxes;
  expect(Object.fromEntries(list.map(({ name, next }) => [name.replace(/[ ,].*$/u, ""), next.does]))).toEqual({
    Stock: "measure",
    "White-water": "fit",
    Showerwater: "run-in",
    "Seal-water": "repack",
    Steam: "fit",
    Solvent: "fit",
    Starch: "choose",
  });
});

test.each(boxes)("box %s: state, survey, plan and drawings are those of its entries", async (box) => {
  const state = fold(box, entries);
  const { json } = await server.ask("GET", `${site}/boxes/${box}`);
  expect(json).toMatchObject({ box, survey: surveyOf(state), disagreements: [] });
  expect((json as { entries: readonly object[] }).entries).toHaveLength(state.entries.length);
  const plan = await server.ask("GET", `${site}/boxes/${box}/plan`);
  expect(plan).toMatchObject({ status: 200, json: ask("plan", surveyOf(state), facts) });
  for (const name of ["box-section", "joint-clock", "cut-strip", "push"]) {
    const drawn = await server.ask("GET", `${site}/boxes/${box}/drawings/${name}.svg?units=inch&width=160mm`);
    expect([200, 422], name).toContain(drawn.status);
    if (name === "box-section") expect(drawn.status).toBe(200);
    if (drawn.status !== 200) continue;
    expect(drawn.type).toContain("image/svg+xml");
    expect(drawn.text).toMatch(/^<svg [^>]*width="160mm"/u);
    expect(drawn.headers["content-security-policy"]).toContain("sandbox");
    const posted = await server.ask("POST", `/api/v1/drawings/${name}?units=inch&width=160mm`, surveyOf(state));
    expect(posted.text).toBe(drawn.text);
  }
});

test("a drawing over HTTP is the one that the command line writes", async () => {
  const survey = exampleOf("plan").question;
  const { files } = await ran(["plan", "-", "--drawing", "b", "--clock", "c", "--strip", "s", "--push", "p"], JSON.stringify(survey));
  for (const [file, name] of [
    ["b", "box-section"],
    ["c", "joint-clock"],
    ["s", "cut-strip"],
    ["p", "push"],
  ] as const)
    expect((await server.ask("POST", `/api/v1/drawings/${name}`, survey)).text).toBe(files.get(file));
});

test("what can't be drawn or planned is refused with what is missing", async () => {
  expect(await server.ask("POST", "/api/v1/drawings/box-section", { motion: "turning" })).toMatchObject({
    status: 422,
    json: { refusal: { kind: "not-known" } },
  });
  expect(await server.ask("POST", "/api/v1/drawings/box-section", {})).toMatchObject({
    status: 400,
    json: { refusal: { input: "motion" } },
  });
  expect(await server.ask("POST", "/api/v1/drawings/portrait", {})).toMatchObject({ status: 400, json: { refusal: { input: "name" } } });
  expect(await server.ask("POST", "/api/v1/drawings/push?width=160", {})).toMatchObject({
    status: 400,
    json: { refusal: { input: "width" } },
  });
  expect(await server.ask("POST", "/api/v1/drawings/push?width=1mm", {})).toMatchObject({
    status: 422,
    json: { refusal: { input: "width" } },
  });
  const bare = idOf("bare box");
  const elsewhere = idOf("bare site");
  const told = chainOf({ site: elsewhere, device: idOf("bare device"), box: bare }, 1).map(({ entry }) => entry as unknown as Json);
  await server.ask("POST", `/api/v1/sites/${elsewhere}/entries`, { entries: told });
  expect(await server.ask("GET", `/api/v1/sites/${elsewhere}/boxes/${bare}/plan`)).toMatchObject({
    status: 422,
    json: { refusal: { input: "motion" } },
  });
  expect((await server.ask("GET", `/api/v1/sites/${elsewhere}/boxes/${bare}`)).json).toMatchObject({
    name: null,
    motion: "unknown",
    zone: "unknown",
    datum: "unknown",
    release: "unknown",
  });
  expect(await server.ask("GET", `${site}/boxes/${bare}`)).toMatchObject({ status: 404, json: { ok: false, refusal: { input: "box" } } });
});

test("a box follows its entries: what comes in is in the list at once", async () => {
  const elsewhere = idOf("site that grows");
  const told = chainOf({ site: elsewhere, device: idOf("device that grows"), box: idOf("one") }, 3);
  const more = chainOf({ site: elsewhere, device: idOf("second device"), box: idOf("two") }, 2);
  for (const [count, part] of [
    [1, told],
    [2, more],
  ] as const) {
    await server.ask("POST", `/api/v1/sites/${elsewhere}/entries`, { entries: part.map(({ entry }) => entry) });
    const { json } = await server.ask("GET", `/api/v1/sites/${elsewhere}/boxes`);
    expect((json as { boxes: readonly object[] }).boxes).toHaveLength(count);
  }
});

test("people get names, other names, and none any more", async () => {
  const names = async (people: readonly object[]) => {
    const { status, json } = await server.ask("PUT", "/api/v1/people", { people });
    expect(status).toBe(200);
    return new Map((json as { people: readonly { person: string; name: string }[] }).people.map(({ person, name }) => [person, name]));
  };
  expect((await names([{ person: "p-9", name: "Second operator (invented)" }])).get("p-9")).toBe("Second operator (invented)");
  expect((await names([{ person: "p-9", name: "Storekeeper (invented)" }])).get("p-9")).toBe("Storekeeper (invented)");
  expect((await names([{ person: "p-9", name: null }])).has("p-9")).toBe(false);
  for (const people of [[{ person: "", name: "x" }], [{ person: "p", name: "\u0000" }], [{ name: "x" }], "all"])
    expect(await server.ask("PUT", "/api/v1/people", { people })).toMatchObject({ status: 400, json: { ok: false } });
});
