import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chainOf, changed, idOf } from "../testing/entries.ts";
import { homes, type Place } from "../testing/homes.ts";
import { open, type Store } from "./index.ts";

const site = idOf("mill");
const other = idOf("other mill");
const device = idOf("tablet");
const box = idOf("stock pump");

describe.each(homes)("a store in $home", ({ fresh }) => {
  let place: Place;
  let store: Store;
  beforeAll(async () => {
    place = await fresh();
    store = await open(place.where);
  });
  afterAll(async () => {
    await store.close();
    await place.clear();
  });

  test("says of each entry what became of it, and never touches what was there", async () => {
    const chain = chainOf({ site, device, box }, 6);
    const ids = chain.map(({ entry }) => entry.id);
    expect(await store.append(site, chain.slice(0, 4))).toEqual({ kept: ids.slice(0, 4), known: [], clashing: [], cursor: 4 });
    expect(await store.append(site, chain.slice(2))).toMatchObject({ kept: ids.slice(4), known: ids.slice(2, 4), clashing: [] });
    const [first, second] = chain;
    if (!first || !second) throw new Error("no chain");
    const sameId = changed(first, { by: "fitter-2" });
    const samePlace = changed(second, { id: idOf("a second start") });
    const before = await store.since(site, 0, 100);
    expect(await store.append(site, [sameId, samePlace])).toMatchObject({
      kept: [],
      known: [],
      clashing: [sameId.entry.id, samePlace.entry.id],
    });
    expect(await store.since(site, 0, 100)).toEqual(before);
    expect(before.texts).toEqual(chain.map(({ text }) => text));
  });

  test("an id of one site is free in another", async () => {
    const [here] = chainOf({ site, device: idOf("second tablet") }, 1);
    if (!here) throw new Error("no chain");
    const there = changed(here, { site: other });
    expect((await store.append(site, [here])).kept).toEqual([here.entry.id]);
    expect((await store.append(other, [there])).kept).toEqual([here.entry.id]);
    expect(await store.entry(site, here.entry.id)).toBe(here.text);
    expect(await store.entry(other, here.entry.id)).toBe(there.text);
    expect(await store.sites()).toEqual([site, other].sort().map((name) => expect.objectContaining({ site: name })));
  });

  test("entries of another site are refused whole", async () => {
    const stray = chainOf({ site: other, device: idOf("third tablet") }, 1);
    const before = await store.sites();
    await expect(store.append(site, [...chainOf({ site, device: idOf("third tablet") }, 1), ...stray])).rejects.toThrow(RangeError);
    await expect(store.append("mill", [])).rejects.toThrow(RangeError);
    expect(await store.sites()).toEqual(before);
  });

  test("pages go on where the last one ended, and an empty batch moves nothing", async () => {
    const home = idOf("mill of pages");
    const chain = chainOf({ site: home, device }, 25);
    expect(await store.append(home, [])).toEqual({ kept: [], known: [], clashing: [], cursor: 0 });
    expect((await store.sites()).map((one) => one.site)).not.toContain(home);
    await store.append(home, chain);
    const seen: string[] = [];
    const more: boolean[] = [];
    for (let cursor = 0, going = true; going; ) {
      const page = await store.since(home, cursor, 10);
      seen.push(...page.texts);
      more.push(page.more);
      [cursor, going] = [page.cursor, page.more];
    }
    expect(seen).toEqual(chain.map(({ text }) => text));
    expect(more).toEqual([true, true, false]);
    expect(await store.since(home, 25, 10)).toEqual({ texts: [], cursor: 25, more: false });
    expect((await store.append(home, [])).cursor).toBe(25);
  });

  test("a batch larger than one statement is kept whole, and the same again is known", async () => {
    const home = idOf("large mill");
    const chain = chainOf({ site: home, device }, 2300);
    const appended = await store.append(home, chain);
    expect(appended.kept).toHaveLength(2300);
    expect(await store.append(home, chain)).toMatchObject({ kept: [], known: appended.kept, cursor: appended.cursor });
    expect((await store.since(home, 0, 5000)).texts).toEqual(chain.map(({ text }) => text));
  });

  test("a text comes back as it was, whatever it is made of", async () => {
    const home = idOf("mill of words");
    const texts = [
      "",
      "Grünspan an der Brille",
      "水漏れ 💧",
      "\u0001\u007f\uffff\ufeff\u2028",
      "\ufeffmark",
      "'; drop table entries; --",
      "\\x00 %s $1 ?",
    ];
    const chain = chainOf({ site: home, device, said: (index) => texts[index] ?? "l".repeat(200_000) }, texts.length + 1);
    await store.append(home, chain);
    expect((await store.since(home, 0, 100)).texts).toEqual(chain.map(({ text }) => text));
  });

  test("entries of one box in the order they came; what is no id finds nothing", async () => {
    const home = idOf("mill of boxes");
    const mine = chainOf({ site: home, device, box }, 3);
    const others = chainOf({ site: home, device: idOf("second tablet"), box: idOf("other box") }, 3);
    await store.append(
      home,
      mine.flatMap((one, index) => [one, others[index] ?? one]),
    );
    expect(await store.ofBox(home, box)).toEqual(mine.map(({ text }) => text));
    expect(await store.ofBox(home, idOf("no box"))).toEqual([]);
    expect(await store.ofBox(other, box)).toEqual([]);
    for (const nonsense of ["", "mill", "a\u0000b", "' or 1=1"]) {
      expect(await store.entry(nonsense, nonsense)).toBeUndefined();
      expect(await store.ofBox(home, nonsense)).toEqual([]);
      expect(await store.since(nonsense, 7, 10)).toEqual({ texts: [], cursor: 7, more: false });
    }
    expect(await store.entry(home, idOf("nothing"))).toBeUndefined();
  });

  test("people are named, named again and forgotten; in the order of bytes in every database", async () => {
    for (const [person, name] of [
      ["b", "Bo"],
      ["B", "Berta"],
      ["ä", "Ärla"],
      ["a", "Ann"],
    ] as const)
      await store.namePerson(person, name);
    await store.namePerson("b", "Bodil");
    await store.namePerson("a", null);
    await store.namePerson("nobody", null);
    expect(await store.people()).toEqual([
      { person: "B", name: "Berta" },
      { person: "b", name: "Bodil" },
      { person: "ä", name: "Ärla" },
    ]);
  });

  test("settings are kept under their names, and nothing is cut short", async () => {
    expect(await store.setting("site")).toBeUndefined();
    await store.keepSetting("site", site);
    await store.keepSetting("site", other);
    await store.keepSetting("empty", "");
    expect(await store.setting("site")).toBe(other);
    expect(await store.setting("empty")).toBe("");
    await expect(store.keepSetting("cut", "a\u0000b")).rejects.toThrow(RangeError);
    await expect(store.namePerson("half", "\ud800")).rejects.toThrow(RangeError);
    expect(await store.setting("cut")).toBeUndefined();
  });

  test("answers when asked how it is", async () => {
    await expect(store.ping()).resolves.toBeUndefined();
  });

  test("is the same after it was closed", async () => {
    const before = [await store.sites(), await store.since(site, 0, 1000), await store.people(), await store.setting("site")];
    await store.close();
    store = await open(place.where);
    expect([await store.sites(), await store.since(site, 0, 1000), await store.people(), await store.setting("site")]).toEqual(before);
    expect(before[0]).not.toEqual([]);
  });
});
