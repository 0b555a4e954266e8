import fc from "fast-check";
import { afterAll, beforeAll, describe, expect } from "vitest";
import { type Chain, chainOf, changed, idOf, type Told } from "../testing/entries.ts";
import { homes, type Place } from "../testing/homes.ts";
import { propertyInTime } from "../testing/property.ts";
import { StoreModel } from "../testing/store-model.ts";
import { open, type Store } from "./index.ts";

const boxes = [null, idOf("box 1"), idOf("box 2")];
/** One thing that is done to the store, with numbers that pick from what there is. */
const anyDeed = fc.oneof(
  { weight: 6, arbitrary: fc.record({ append: fc.array(fc.nat(), { maxLength: 12 }), site: fc.nat({ max: 1 }) }) },
  { weight: 2, arbitrary: fc.record({ since: fc.nat({ max: 40 }), limit: fc.integer({ min: 1, max: 20 }), site: fc.nat({ max: 1 }) }) },
  { weight: 1, arbitrary: fc.record({ reopen: fc.constant(true) }) },
);

/** Entries of a site, with others that take an id or a place, or both, of these. */
function poolOf(chain: Chain): readonly Told[] {
  const plain = chainOf(chain, 3);
  return plain.flatMap((one, index) => [
    one,
    changed(one, { by: "somebody else" }),
    changed(one, { id: idOf(`${one.entry.id} again`) }),
    changed(one, { seq: one.entry.seq + 100 }),
    changed(one, { seq: ((index + 1) % 3) + 1 }),
  ]);
}

describe.each(homes)("a store in $home does what the model does", ({ fresh }) => {
  let place: Place;
  let store: Store;
  let runs = 0;
  beforeAll(async () => {
    place = await fresh();
    store = await open(place.where);
  });
  afterAll(async () => {
    await store.close();
    await place.clear();
  });

  propertyInTime("any batches, in any order, any number of times", [fc.array(anyDeed, { minLength: 1, maxLength: 8 })], async (deeds) => {
    const run = runs++;
    const sites = [idOf(`site ${run} a`), idOf(`site ${run} b`)];
    const pools = sites.map((site) =>
      ["d1", "d2"].flatMap((name, index) => poolOf({ site, device: idOf(name), box: boxes[index + 1] ?? null })),
    );
    const model = new StoreModel();
    let reopened = false;
    for (const deed of deeds) {
      if ("reopen" in deed) {
        // Once a run is enough to see that nothing lives in memory only.
        if (reopened) continue;
        reopened = true;
        await store.close();
        store = await open(place.where);
        continue;
      }
      const site = sites[deed.site] ?? "";
      const pool = pools[deed.site] ?? [];
      const all = model.all(site).map(({ text }) => text);
      if ("since" in deed) {
        const from = await store.since(site, 0, deed.since || 1);
        const page = await store.since(site, deed.since === 0 ? 0 : from.cursor, deed.limit);
        const start = deed.since === 0 ? 0 : from.texts.length;
        expect(page.texts).toEqual(all.slice(start, start + deed.limit));
        expect(page.more).toBe(all.length > start + deed.limit);
        continue;
      }
      const batch = deed.append.map((pick) => pool[pick % pool.length]).filter((one) => one !== undefined);
      const before = (await store.append(site, [])).cursor;
      const { cursor, ...said } = await store.append(site, batch);
      expect(said).toEqual(model.append(site, batch));
      expect(cursor > before).toBe(said.kept.length > 0);
      expect((await store.since(site, before, 100)).texts).toEqual(
        model
          .all(site)
          .slice(all.length)
          .map(({ text }) => text),
      );
    }
    for (const [index, site] of sites.entries()) {
      const all = model.all(site);
      expect((await store.since(site, 0, 1000)).texts).toEqual(all.map(({ text }) => text));
      for (const box of boxes)
        if (box !== null)
          expect(await store.ofBox(site, box)).toEqual(all.filter(({ entry }) => entry.box === box).map(({ text }) => text));
      for (const { entry } of (pools[index] ?? []).slice(0, 12))
        expect(await store.entry(site, entry.id)).toBe(all.find((one) => one.entry.id === entry.id)?.text);
      const counted = (await store.sites()).find((one) => one.site === site);
      expect(counted?.entries ?? 0).toBe(all.length);
    }
  });
});
