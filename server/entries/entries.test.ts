import { largestEntry, readEntry } from "@ringwright/logbook";
import { afterAll, beforeAll, expect, test } from "vitest";
import { chainOf, changed, idOf, type Told } from "../../testing/entries.ts";
import { type Served, served } from "../testing/asked.ts";

let server: Served;
beforeAll(async () => {
  server = await served();
});
afterAll(() => server.close());

interface Pushed {
  readonly kept: readonly string[];
  readonly known: readonly string[];
  readonly refused: readonly { readonly index: number; readonly id: string | null; readonly fault: string; readonly at: string }[];
  readonly cursor: number;
}

const ids = (told: readonly Told[]) => told.map(({ entry }) => entry.id);
const push = async (site: string, entries: readonly unknown[]) => {
  const { status, json } = await server.ask("POST", `/api/v1/sites/${site}/entries`, { entries });
  expect(status).toBe(200);
  return json as Pushed;
};
const pull = async (site: string, query = "") => {
  const { status, text, json } = await server.ask("GET", `/api/v1/sites/${site}/entries${query}`);
  expect(status).toBe(200);
  return { text, ...(json as { entries: readonly { id: string }[]; cursor: number; more: boolean }) };
};

test("what was pushed is pulled again in the order it came, byte for byte, page by page", async () => {
  const site = idOf("site pages");
  const told = chainOf({ site, device: idOf("device pages"), said: (index) => `note ${index} “€” \u{1f527}` }, 25);
  const { kept, known, refused } = await push(
    site,
    told.map(({ entry }) => entry),
  );
  expect({ kept, known, refused }).toEqual({ kept: ids(told), known: [], refused: [] });
  const texts: string[] = [];
  for (let since = 0, more = true; more; ) {
    const page = await pull(site, `?since=${since}&limit=10`);
    for (const { text } of told) if (page.text.includes(text)) texts.push(text);
    expect(page.entries.length).toBeLessThanOrEqual(10);
    since = page.cursor;
    more = page.more;
  }
  expect(texts).toEqual(told.map(({ text }) => text));
});

test("the same entries again change nothing", async () => {
  const site = idOf("site again");
  const told = chainOf({ site, device: idOf("device again") }, 5).map(({ entry }) => entry);
  const first = await push(site, [...told, told[0]]);
  expect(first.kept).toHaveLength(5);
  const second = await push(site, told);
  expect(second).toMatchObject({ kept: [], refused: [], cursor: first.cursor });
  expect(second.known).toHaveLength(5);
  expect((await pull(site)).entries).toHaveLength(5);
});

test("what can't be kept comes back by name and place, and the rest is kept", async () => {
  const site = idOf("site mixed");
  const [one, two, three] = chainOf({ site, device: idOf("device mixed") }, 3) as [Told, Told, Told];
  const [elsewhere] = chainOf({ site: idOf("site other"), device: idOf("device mixed") }, 1) as [Told];
  await push(site, [one.entry]);
  const { kept, refused } = await push(site, [
    two.entry,
    { ...three.entry, seq: 0 },
    { ...three.entry, body: { text: 3 } },
    { ...three.entry, body: { text: "half \ud800" } },
    elsewhere.entry,
    changed(one, { body: { text: "other words" } }).entry,
    changed(two, { by: "someone-else" }).entry,
    "noise",
    null,
    { ...three.entry, body: { text: "x".repeat(largestEntry) } },
  ]);
  expect(kept).toEqual([two.entry.id]);
  expect(refused.map(({ index, id, fault, at }) => [index, id, fault, at])).toEqual([
    [1, three.entry.id, "entry-malformed", "seq"],
    [2, three.entry.id, "entry-malformed", "body.text"],
    [3, three.entry.id, "entry-text", "body.text"],
    [4, elsewhere.entry.id, "entry-other-site", "site"],
    [5, one.entry.id, "entry-clashes", ""],
    [6, two.entry.id, "entry-clashes", "id"],
    [7, null, "entry-malformed", ""],
    [8, null, "entry-malformed", ""],
    [9, three.entry.id, "entry-too-large", ""],
  ]);
  expect((await pull(site)).entries.map(({ id }) => id)).toEqual([one.entry.id, two.entry.id]);
});

test("kinds and versions newer than this program are kept and handed on", async () => {
  const site = idOf("site newer");
  const [one] = chainOf({ site, device: idOf("device newer") }, 1) as [Told];
  const newer = { ...one.entry, kind: "sung", kindVersion: 3, body: { song: [1, 2] } };
  expect(readEntry(JSON.parse(JSON.stringify(newer)))).toMatchObject({ ok: true });
  expect((await push(site, [newer])).kept).toEqual([newer.id]);
  expect((await pull(site)).entries).toEqual([newer]);
});

test("large entries make a page end early, and none is lost", async () => {
  const site = idOf("site large");
  const told = chainOf({ site, device: idOf("device large"), said: (index) => `${index} ${"x".repeat(200_000)}` }, 60);
  await push(
    site,
    told.map(({ entry }) => entry),
  );
  const first = await pull(site);
  expect(first.more).toBe(true);
  expect(first.text.length).toBeLessThan(9 * 1024 * 1024);
  const seen = first.entries.map(({ id }) => id);
  for (let { more, cursor } = first; more; ) {
    const page = await pull(site, `?since=${cursor}`);
    seen.push(...page.entries.map(({ id }) => id));
    ({ more, cursor } = page);
  }
  expect(seen).toEqual(ids(told));
});

test("more than a thousand entries, a limit above that, and a body that is too large are refused", async () => {
  const site = idOf("site bounds");
  const path = `/api/v1/sites/${site}/entries`;
  expect(await server.ask("POST", path, { entries: Array.from({ length: 1001 }, () => null) })).toMatchObject({
    status: 400,
    json: { ok: false, refusal: { input: "entries", allowed: { min: 0, max: 1000 } } },
  });
  expect(await server.ask("GET", `${path}?limit=1001`)).toMatchObject({ status: 422, json: { refusal: { input: "limit" } } });
  expect(await server.ask("GET", `${path}?limit=1&limit=2`)).toMatchObject({ status: 400, json: { refusal: { input: "limit" } } });
  expect(await server.ask("GET", `${path}?colour=red`)).toMatchObject({ status: 400, json: { refusal: { kind: "unknown-field" } } });
  expect(await server.ask("POST", path, `{"entries":["${"x".repeat(16 * 1024 * 1024)}"]}`)).toMatchObject({ status: 413 });
  expect(await server.ask("POST", path, '{"entries":[],"entries":[]}')).toMatchObject({
    status: 400,
    json: { refusal: { input: "entries" } },
  });
  expect(await server.ask("POST", path, Buffer.from([0x7b, 0xff, 0x7d]))).toMatchObject({ status: 400 });
  expect(await server.ask("GET", "/api/v1/sites/nowhere/entries")).toMatchObject({ status: 400, json: { refusal: { input: "site" } } });
});

test("sites are listed with how many entries they have", async () => {
  const site = idOf("site listed");
  await push(
    site,
    chainOf({ site, device: idOf("device listed") }, 4).map(({ entry }) => entry),
  );
  const { json } = await server.ask("GET", "/api/v1/sites");
  const { sites } = json as { readonly sites: readonly { readonly site: string; readonly entries: number }[] };
  expect(sites.find((one) => one.site === site)).toMatchObject({ entries: 4 });
});
