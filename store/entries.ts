import { isId } from "@ringwright/logbook";
import { CompiledQuery, type Kysely } from "kysely";
import type { Home } from "./home.ts";
import type { Appended, Kept, Page } from "./store.ts";
import type { Tables } from "./tables.ts";

/** Values of one statement: SQLite takes 32 766, PostgreSQL 65 535. */
const valuesAtOnce = 1000;
/** Rows of the largest insert, of seven values each. */
const rowsAtOnce = 512;

/** Appending entries of one site and reading them. */
export function entriesIn(home: Home) {
  const inserts: Inserts = new Map();
  return {
    async append(site: string, batch: readonly Kept[]): Promise<Appended> {
      const stranger = batch.find(({ entry }) => entry.site !== site);
      if (!isId(site) || stranger) throw new RangeError(`entry ${stranger?.entry.id} is not of site ${site}`);
      return home.change((db) => append(db, inserts, site, batch));
    },

    async since(site: string, cursor: number, limit: number): Promise<Page> {
      if (!isId(site)) return { texts: [], cursor, more: false };
      const rows = await home.ask((db) =>
        db
          .selectFrom("entries")
          .select(["position", "bytes"])
          .where("site", "=", site)
          .where("position", ">", cursor)
          .orderBy("position")
          .limit(limit + 1)
          .execute(),
      );
      const page = rows.slice(0, limit);
      return { texts: page.map(textOf), cursor: page.at(-1)?.position ?? cursor, more: rows.length > limit };
    },

    async ofBox(site: string, box: string): Promise<readonly string[]> {
      if (!isId(site) || !isId(box)) return [];
      const rows = await home.ask((db) =>
        db.selectFrom("entries").select("bytes").where("site", "=", site).where("box", "=", box).orderBy("position").execute(),
      );
      return rows.map(textOf);
    },

    async entry(site: string, id: string): Promise<string | undefined> {
      if (!isId(site) || !isId(id)) return undefined;
      const row = await home.ask((db) =>
        db.selectFrom("entries").select("bytes").where("site", "=", site).where("id", "=", id).executeTakeFirst(),
      );
      return row && textOf(row);
    },

    async sites() {
      return home.ask((db) => db.selectFrom("sites").selectAll().where("entries", ">", 0).orderBy("site").execute());
    },
  };
}

async function append(db: Kysely<Tables>, inserts: Inserts, site: string, batch: readonly Kept[]): Promise<Appended> {
  const hoped = await reserve(db, site, batch.length);
  const first = hoped.cursor - batch.length + 1;
  let count = 0;
  for (let from = 0; from < batch.length; ) {
    const rows = batch.slice(from, from + runOf(batch.length - from));
    count += await insert(db, inserts, site, rows, first + from);
    from += rows.length;
  }
  if (count === batch.length) return { kept: batch.map(idOf), known: [], clashing: [], cursor: hoped.cursor };
  const filled = new Set(await positionsFrom(db, site, first));
  const isKept = (_: Kept, index: number) => filled.has(first + index);
  const rest = batch.filter((one, index) => !isKept(one, index));
  const cursor = Math.max(first - 1, ...filled);
  const entries = hoped.entries - rest.length;
  await db.updateTable("sites").set({ cursor, entries }).where("site", "=", site).execute();
  return { kept: batch.filter(isKept).map(idOf), ...(await told(db, site, rest)), cursor };
}

/** Counts a batch in, and with that takes the lock of the site's row: the order of cursors is the order of commits. */
async function reserve(db: Kysely<Tables>, site: string, count: number): Promise<{ readonly cursor: number; readonly entries: number }> {
  return db
    .insertInto("sites")
    .values({ site, cursor: count, entries: count })
    .onConflict((taken) =>
      taken.column("site").doUpdateSet(({ eb, ref }) => ({
        cursor: eb(ref("sites.cursor"), "+", count),
        entries: eb(ref("sites.entries"), "+", count),
      })),
    )
    .returning(["cursor", "entries"])
    .executeTakeFirstOrThrow();
}

/** Inserts by how many rows they have, in the words of the database: finding those takes as long as running them. */
type Inserts = Map<number, string>;

/** How many of so many rows go into the next insert: a power of two, so that a few statements, prepared once, do for batches of any size. */
function runOf(rows: number): number {
  return Math.min(rowsAtOnce, 2 ** Math.floor(Math.log2(rows)));
}

/** Keeps those whose id and place are free, one after the other; says how many. */
async function insert(db: Kysely<Tables>, inserts: Inserts, site: string, rows: readonly Kept[], first: number): Promise<number> {
  const values = rows.map(({ entry: { id, box, device, seq }, text }, index) => ({
    site,
    position: first + index,
    id,
    box,
    device,
    seq,
    bytes: Buffer.from(text, "utf8"),
  }));
  let words = inserts.get(rows.length);
  if (words === undefined) {
    words = db
      .insertInto("entries")
      .values(values)
      .onConflict((taken) => taken.doNothing())
      .compile().sql;
    inserts.set(rows.length, words);
  }
  // The names stand in the order of the first row's.
  const { numAffectedRows } = await db.executeQuery(CompiledQuery.raw(words, values.flatMap(Object.values)));
  if (numAffectedRows === undefined) throw new Error("the database does not say how many rows it took");
  return Number(numAffectedRows);
}

/** Which positions are filled from one on. */
async function positionsFrom(db: Kysely<Tables>, site: string, first: number): Promise<readonly number[]> {
  const rows = await db.selectFrom("entries").select("position").where("site", "=", site).where("position", ">=", first).execute();
  return rows.map(({ position }) => position);
}

/** Tells entries that are there already from those whose id or place another entry has. */
async function told(db: Kysely<Tables>, site: string, entries: readonly Kept[]): Promise<Pick<Appended, "known" | "clashing">> {
  const there = new Map<string, string>();
  for (let from = 0; from < entries.length; from += valuesAtOnce) {
    const ids = entries.slice(from, from + valuesAtOnce).map(({ entry }) => entry.id);
    const rows = await db.selectFrom("entries").select(["id", "bytes"]).where("site", "=", site).where("id", "in", ids).execute();
    for (const row of rows) there.set(row.id, textOf(row));
  }
  const known = (one: Kept) => there.get(one.entry.id) === one.text;
  return { known: entries.filter(known).map(idOf), clashing: entries.filter((one) => !known(one)).map(idOf) };
}

function idOf({ entry }: Kept): string {
  return entry.id;
}

function textOf({ bytes }: { readonly bytes: Uint8Array }): string {
  return Buffer.from(bytes).toString("utf8");
}
