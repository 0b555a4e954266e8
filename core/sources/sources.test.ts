import { expect, test } from "vitest";
import { books } from "./books.ts";
import { forums } from "./forums.ts";
import { government } from "./government.ts";
import { cite, type Source, sources } from "./index.ts";
import { libraries } from "./libraries.ts";
import { manuals } from "./manuals.ts";
import { methods } from "./methods.ts";
import { military } from "./military.ts";
import { notes } from "./notes.ts";
import { own } from "./own.ts";
import { pages } from "./pages.ts";
import { papers } from "./papers.ts";
import { sheets } from "./sheets.ts";
import { standards } from "./standards.ts";
import { trade } from "./trade.ts";

const groups: readonly Record<string, Source>[] = [
  books,
  standards,
  military,
  government,
  papers,
  methods,
  sheets,
  manuals,
  trade,
  notes,
  pages,
  forums,
  libraries,
  own,
];
const all: readonly (readonly [string, Source])[] = Object.entries(sources);

test("no id stands in two groups, and every group is in the registry", () => {
  const ids = groups.flatMap((group) => Object.keys(group));
  expect(new Set(ids).size).toBe(ids.length);
  expect(all.map(([id]) => id).sort()).toEqual([...ids].sort());
});

test("ids are kebab-case", () => {
  expect(all.map(([id]) => id).filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
});

test("every source says what it is and what of it was seen", () => {
  const blank = all.filter(([, { title, what }]) => title.trim() === "" || what.trim() === "");
  expect(blank.map(([id]) => id)).toEqual([]);
});

test("no two sources share a title", () => {
  const titles = all.map(([, { title }]) => title.toLowerCase().replace(/\s+/g, " ").trim());
  expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
});

test("a source that was not opened counts as memory", () => {
  const contradicting = all.filter(([, { seen, what }]) => seen !== "memory" && /^not opened/i.test(what));
  expect(contradicting.map(([id]) => id)).toEqual([]);
});

test("what is no document says so and is never taken for one that was read", () => {
  for (const [id, { seen }] of Object.entries(own)) expect(["memory", "derived", "practice"], id).toContain(seen);
  expect(own["common-practice"].seen).toBe("practice");
});

test("titles and notes name no web address", () => {
  const address = /https?:|www\.|\.(com|org|net|info|co\.uk)\b/i;
  const named = all.filter(([, { title, what }]) => address.test(title) || address.test(what));
  expect(named.map(([id]) => id)).toEqual([]);
});

test("a citation holds only what was given", () => {
  expect(Object.keys(cite("geometry"))).toEqual(["source"]);
  expect(cite("neale-1995", "table 25.2")).toEqual({ source: "neale-1995", at: "table 25.2" });
  expect(Object.keys(cite("din-3780-1954", undefined, "memory"))).toEqual(["source", "seen"]);
  expect(cite("iso-898-1", "table 3", "read")).toEqual({ source: "iso-898-1", at: "table 3", seen: "read" });
});
