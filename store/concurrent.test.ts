import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chainOf, idOf } from "../testing/entries.ts";
import { homes, type Place } from "../testing/homes.ts";
import { open, type Store } from "./index.ts";

const site = idOf("busy mill");

describe.each(homes)("many at once in $home", ({ home, fresh }) => {
  let place: Place;
  const stores: Store[] = [];
  beforeAll(async () => {
    place = await fresh();
    // A folder belongs to one process; a PostgreSQL server to several.
    for (let number = 0; number < (home === "postgres" ? 3 : 1); number++) stores.push(await open(place.where));
  });
  afterAll(async () => {
    for (const store of stores) await store.close();
    await place.clear();
  });
  const storeFor = (number: number): Store => {
    const store = stores[number % stores.length];
    if (!store) throw new Error("no store");
    return store;
  };

  test("whoever follows a site misses no entry and sees none twice", async () => {
    const devices = 12;
    const batches = 15;
    const chains = Array.from({ length: devices }, (_, number) => chainOf({ site, device: idOf(`device ${number}`) }, batches * 3));
    let writing = true;
    const written = Promise.all(
      chains.map(async (chain, number) => {
        for (let batch = 0; batch < batches; batch++) {
          const said = await storeFor(number).append(site, chain.slice(batch * 3, batch * 3 + 3));
          expect(said.kept).toHaveLength(3);
        }
      }),
    ).finally(() => {
      writing = false;
    });
    const follow = async (number: number) => {
      const seen: string[] = [];
      for (let cursor = 0, last = false; ; ) {
        const page = await storeFor(number).since(site, cursor, 7);
        seen.push(...page.texts);
        cursor = page.cursor;
        if (last && page.texts.length === 0) return seen;
        last = !writing;
      }
    };
    const [, ...followed] = await Promise.all([written, follow(0), follow(1), follow(2)]);
    const all = await storeFor(0).since(site, 0, 10_000);
    expect(all.texts).toHaveLength(devices * batches * 3);
    expect(new Set(all.texts)).toEqual(new Set(chains.flat().map(({ text }) => text)));
    for (const seen of followed) expect(seen).toEqual(all.texts);
    for (const chain of chains) {
      const own = new Set(chain.map(({ text }) => text));
      expect(all.texts.filter((text) => own.has(text))).toEqual(chain.map(({ text }) => text));
    }
  });

  test("the same entries from many sides are kept by one of them", async () => {
    const chain = chainOf({ site: idOf("one more mill"), device: idOf("device") }, 40);
    const said = await Promise.all(Array.from({ length: 9 }, (_, number) => storeFor(number).append(idOf("one more mill"), chain)));
    expect(said.map(({ kept }) => kept.length).sort((a, b) => b - a)).toEqual([40, ...Array(8).fill(0)]);
    expect(said.every(({ kept, known }) => kept.length + known.length === 40)).toBe(true);
    expect((await storeFor(0).since(idOf("one more mill"), 0, 100)).texts).toEqual(chain.map(({ text }) => text));
  });

  test("sites do not wait for one another", async () => {
    const sites = Array.from({ length: 10 }, (_, number) => idOf(`mill ${number}`));
    const said = await Promise.all(
      sites.map((one, number) => storeFor(number).append(one, chainOf({ site: one, device: idOf("device") }, 10))),
    );
    expect(said.map(({ cursor }) => cursor)).toEqual(sites.map(() => 10));
  });
});
