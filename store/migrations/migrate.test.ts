import { type Kysely, sql } from "kysely";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { chainOf, idOf } from "../../testing/entries.ts";
import { homes, type Place } from "../../testing/homes.ts";
import { postgresEngine, sqliteEngine } from "../engine.ts";
import { open } from "../index.ts";
import { kyselyOf as kyselyOfServer } from "../postgres/home.ts";
import { claim } from "../sqlite/folder.ts";
import { kyselyOf as kyselyOfFile, openDatabase } from "../sqlite/home.ts";
import { migrate, type Steps, steps } from "./migrate.ts";

type Tables = Record<string, Record<string, unknown>>;

/** For every change of the tables: what stood there before it, and what must stand there after it. */
const changes: Readonly<Record<string, { before(db: Kysely<Tables>): Promise<void>; after(db: Kysely<Tables>): Promise<void> }>> = {
  "0001-entries": {
    async before(db) {
      await expect(db.selectFrom("entries").selectAll().execute()).rejects.toThrow();
    },
    async after(db) {
      const row = { site: "s", position: 2 ** 52, id: "i", box: null, device: "d", seq: 1, bytes: Buffer.from("{}") };
      await db.insertInto("entries").values(row).execute();
      const [back] = await db.selectFrom("entries").selectAll().execute();
      expect({ ...back, bytes: Buffer.from(back?.bytes as Uint8Array).toString("utf8") }).toEqual({ ...row, bytes: "{}" });
      const free = { ...row, position: 1, id: "j", seq: 2 };
      for (const taken of [{ position: row.position }, { id: row.id }, { seq: row.seq }])
        await expect(
          db
            .insertInto("entries")
            .values({ ...free, ...taken })
            .execute(),
        ).rejects.toThrow(/unique/iu);
      for (const missing of ["site", "position", "id", "device", "seq", "bytes"])
        await expect(
          db
            .insertInto("entries")
            .values({ ...free, [missing]: null })
            .execute(),
        ).rejects.toThrow(/null/iu);
      await db.insertInto("entries").values(free).execute();
      await db
        .insertInto("entries")
        .values({ ...row, site: "another" })
        .execute();
      for (const [table, first, second] of [
        ["sites", { site: "s", cursor: 1, entries: 1 }, { site: "s", cursor: 2, entries: 2 }],
        ["people", { person: "p", name: "Ann" }, { person: "p", name: "Bo" }],
        ["settings", { name: "n", value: "v" }, { name: "n", value: "w" }],
      ] as const) {
        await db.insertInto(table).values(first).execute();
        await expect(db.insertInto(table).values(second).execute()).rejects.toThrow(/unique/iu);
        expect(await db.selectFrom(table).selectAll().execute()).toEqual([first]);
      }
    },
  },
};

test("every change of the tables has its before and after", () => {
  expect(Object.keys(changes)).toEqual(Object.keys(steps));
  expect(Object.keys(steps)).toEqual(Object.keys(steps).sort());
});

describe.each(homes)("the tables in $home", ({ home, fresh }) => {
  const engine = home === "sqlite" ? sqliteEngine : postgresEngine;
  let place: Place;
  let db: Kysely<Tables>;
  const connect = () =>
    (home === "sqlite" ? kyselyOfFile(openDatabase(place.where)) : kyselyOfServer(place.where)) as unknown as Kysely<Tables>;
  const bringTo = (wanted?: Steps) => migrate(db as unknown as Kysely<never>, engine, wanted);
  beforeEach(async () => {
    place = await fresh();
    if (home === "sqlite") claim(place.where);
    db = connect();
  });
  afterEach(async () => {
    await db.destroy();
    await place.clear();
  });

  test.each(Object.keys(changes))("change %s keeps what was there", async (name) => {
    const before = Object.entries(steps).filter(([step]) => step < name);
    await bringTo(Object.fromEntries(before));
    await changes[name]?.before(db);
    await bringTo(Object.fromEntries(Object.entries(steps).filter(([step]) => step <= name)));
    await changes[name]?.after(db);
  });

  test("a change that fails leaves everything as it was, and the next start tries again", async () => {
    const broken: Steps = {
      ...steps,
      "9998-adds": async (on) => {
        await on.schema.createTable("added").addColumn("one", engine.text).execute();
      },
      "9999-fails": async (on) => {
        await on.schema.alterTable("people").addColumn("more", engine.text).execute();
        await on.schema.createTable("people").addColumn("one", engine.text).execute();
      },
    };
    await bringTo();
    await db.insertInto("people").values({ person: "p", name: "Ann" }).execute();
    await expect(bringTo(broken)).rejects.toThrow();
    expect(await db.selectFrom("people").selectAll().execute()).toEqual([{ person: "p", name: "Ann" }]);
    await expect(db.selectFrom("added").selectAll().execute()).rejects.toThrow();
    await bringTo();
    const { "9998-adds": adds } = broken;
    if (!adds) throw new Error("no change");
    await bringTo({ ...steps, "9998-adds": adds });
    expect(await db.selectFrom("added").selectAll().execute()).toEqual([]);
  });

  test("of a newer program are said, and left alone", async () => {
    await bringTo({ ...steps, "9999-newer": async (on) => void (await sql`select 1`.execute(on)) });
    await db.insertInto("settings").values({ name: "n", value: "v" }).execute();
    await expect(open(place.where)).rejects.toMatchObject({ id: "store-newer", shown: { step: "9999-newer" } });
    expect(await db.selectFrom("settings").selectAll().execute()).toEqual([{ name: "n", value: "v" }]);
    // The folder is free again for the program that fits.
    await expect(open(place.where)).rejects.toMatchObject({ id: "store-newer" });
  });

  test("are made once when several programs start at the same time", async () => {
    const site = idOf("mill");
    const starts = home === "sqlite" ? 1 : 4;
    await db.destroy();
    const stores = await Promise.all(Array.from({ length: starts }, () => open(place.where)));
    for (const [number, store] of stores.entries()) await store.append(site, chainOf({ site, device: idOf(`device ${number}`) }, 2));
    expect(await stores[0]?.sites()).toMatchObject([{ entries: 2 * starts }]);
    for (const store of stores) await store.close();
    db = connect();
  });
});
