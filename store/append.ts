import { CompiledQuery, type Kysely } from "kysely";
import type { Appended, Kept } from "./store.ts";
import { type Tables, textOf } from "./tables.ts";

/** Rows of the largest insert: seven values each, and SQLite takes 32 766 in one statement, PostgreSQL 65 535. */
const rowsAtOnce = 512;
const idsAtOnce = 1000;

/** One append: in which transaction, to which site. */
export interface Appending {
  readonly db: Kysely<Tables>;
  readonly site: string;
  /** Statements that were spelled before, by what they do: spelling one of many rows takes as long as running it. */
  readonly spelled: Map<string, string>;
}

/** Keeps those of a batch whose id and place are free, and says of each what became of it. */
export async function append(to: Appending, batch: readonly Kept[]): Promise<Appended> {
  const hoped = await reserve(to, batch.length);
  const first = hoped.cursor - batch.length + 1;
  let count = 0;
  for (let from = 0; from < batch.length; ) {
    const rows = batch.slice(from, from + runOf(batch.length - from));
    count += await insert(to, rows, first + from);
    from += rows.length;
  }
  if (count === batch.length) return { kept: batch.map(idOf), known: [], clashing: [], cursor: hoped.cursor };
  const positions = await positionsFrom(to, first);
  const filled = new Set(positions);
  const isKept = (_: Kept, index: number) => filled.has(first + index);
  const rest = batch.filter((one, index) => !isKept(one, index));
  const cursor = positions.at(-1) ?? first - 1;
  const entries = hoped.entries - rest.length;
  await to.db.updateTable("sites").set({ cursor, entries }).where("site", "=", to.site).execute();
  return { kept: batch.filter(isKept).map(idOf), ...(await told(to, rest)), cursor };
}

/** How many of so many rows go into the next insert: a power of two, so that a few statements, prepared once, do for batches of any size. */
function runOf(rows: number): number {
  return Math.min(rowsAtOnce, 2 ** Math.floor(Math.log2(rows)));
}

type Counts = Pick<Tables["sites"], "cursor" | "entries">;

/** Counts a batch in, and with that takes the lock of the site's row: the order of cursors is the order of commits. */
async function reserve({ db, site, spelled }: Appending, count: number): Promise<Counts> {
  const query = () =>
    db
      .insertInto("sites")
      .values({ site, cursor: count, entries: count })
      .onConflict((taken) =>
        taken.column("site").doUpdateSet(({ eb, ref }) => ({
          cursor: eb(ref("sites.cursor"), "+", ref("excluded.cursor")),
          entries: eb(ref("sites.entries"), "+", ref("excluded.entries")),
        })),
      )
      .returning(["cursor", "entries"])
      .compile();
  const { rows } = await db.executeQuery(again(spelled, "reserve", query, [site, count, count]));
  const [counts] = rows;
  if (!counts) throw new Error("the site was not counted");
  return counts;
}

/** Keeps those whose id and place are free, one after the other; says how many. */
async function insert({ db, site, spelled }: Appending, rows: readonly Kept[], first: number): Promise<number> {
  const values = rows.map(({ entry: { id, box, device, seq }, text }, index) => ({
    site,
    position: first + index,
    id,
    box,
    device,
    seq,
    bytes: Buffer.from(text, "utf8"),
  }));
  const query = () =>
    db
      .insertInto("entries")
      .values(values)
      .onConflict((taken) => taken.doNothing())
      .compile();
  // Columns are spelled in the order of the first row.
  const run = again(spelled, `insert ${rows.length}`, query, values.flatMap(Object.values));
  const { numAffectedRows } = await db.executeQuery(run);
  if (numAffectedRows === undefined) throw new Error("the database does not say how many rows it took");
  return Number(numAffectedRows);
}

/** A statement as it was spelled the first time, with other values. */
function again<Row>(spelled: Appending["spelled"], name: string, query: () => CompiledQuery<Row>, values: unknown[]): CompiledQuery<Row> {
  const sql = spelled.get(name) ?? query().sql;
  spelled.set(name, sql);
  return CompiledQuery.raw(sql, values) as CompiledQuery<Row>;
}

/** Which positions are filled from one on, in their order. */
async function positionsFrom({ db, site }: Appending, first: number): Promise<readonly number[]> {
  const rows = await db
    .selectFrom("entries")
    .select("position")
    .where("site", "=", site)
    .where("position", ">=", first)
    .orderBy("position")
    .execute();
  return rows.map(({ position }) => position);
}

/** Tells entries that are there already from those whose id or place another entry has. */
async function told({ db, site }: Appending, entries: readonly Kept[]): Promise<Pick<Appended, "known" | "clashing">> {
  const there = new Map<string, string>();
  for (let from = 0; from < entries.length; from += idsAtOnce) {
    const ids = entries.slice(from, from + idsAtOnce).map(({ entry }) => entry.id);
    const rows = await db.selectFrom("entries").select(["id", "bytes"]).where("site", "=", site).where("id", "in", ids).execute();
    for (const row of rows) there.set(row.id, textOf(row));
  }
  const known = (one: Kept) => there.get(one.entry.id) === one.text;
  return { known: entries.filter(known).map(idOf), clashing: entries.filter((one) => !known(one)).map(idOf) };
}

function idOf({ entry }: Kept): string {
  return entry.id;
}
