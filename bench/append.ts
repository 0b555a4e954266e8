import { mkdtempSync, rmSync } from "node:fs";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { canonicalText, type Entry, noHead, uuidv7, writeEntry } from "@ringwright/logbook";
import Database from "libsql";
import { Served } from "../testing/browser/served.ts";

/** Rounds that are timed, after as many or more that are not: a server that has just started is slower, and soon is no more. */
const rounds = 40;
const warming = 60;
let chance = 1;
let clock = 1_800_000_000_000;

/** Bytes that look random and are the same in every run. */
function bytes(count: number): Uint8Array {
  return Uint8Array.from({ length: count }, () => {
    chance = (Math.imul(chance, 1_103_515_245) + 12_345) >>> 0;
    return chance >>> 24;
  });
}

const site = uuidv7(1_800_000_000_000, bytes(10));

/** So many readings of one device, chained, later than all before. */
function readings(count: number): readonly Entry[] {
  const device = uuidv7(1_800_000_000_000, bytes(10));
  const box = uuidv7(1_800_000_000_000, bytes(10));
  let head = noHead;
  return Array.from({ length: count }, (_, index) => {
    const written = writeEntry(
      {
        site,
        box,
        kind: "reading",
        body: { what: "drip", state: "running", value: 30 + (index % 20) },
        by: "bench",
        device,
        at: { device: "2031-04-30T14:05:09.120+02:00", serverOffsetMs: 0 },
        after: [],
      },
      head,
      clock++,
      bytes(10),
    );
    head = written.head;
    return written.entry;
  });
}

const middle = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** What the peer keeps of each entry, in a table of its own. */
interface Peer {
  readonly table: string;
  readonly keep: string;
  row(entry: Entry, text: string, position: number): readonly (string | number | null | Buffer)[];
}

/** The text under its id, and no more. */
const textAlone: Peer = {
  table: "create table entry (site text, id text, text text, primary key (site, id)) without rowid",
  keep: "insert into entry values (?, ?, ?)",
  row: (entry, text) => [entry.site, entry.id, text],
};

/** The columns and keys of our own table: they refuse a second entry at the same place, and find those of a box. */
const sameTable: Peer = {
  table: `create table entry (site text not null, position integer not null, id text not null, box text, device text not null, seq integer not null,
    bytes blob not null, primary key (site, position), unique (site, id), unique (site, device, seq));
    create index entry_box on entry (site, box, position)`,
  keep: "insert into entry values (?, ?, ?, ?, ?, ?, ?)",
  row: ({ id, box, device, seq }, text, position) => [site, position, id, box, device, seq, Buffer.from(text)],
};

/** A database with the settings of the store, its statement prepared once; says in milliseconds how long one transaction took. */
function bareInserts(file: string, { table, keep, row }: Peer) {
  const database = new Database(file);
  database.exec("pragma journal_mode = wal; pragma synchronous = full");
  database.exec(table);
  const statement = database.prepare(keep);
  let position = 0;
  return {
    insert(entries: readonly Entry[]): number {
      const rows = entries.map((entry) => row(entry, canonicalText(entry), ++position));
      const begun = performance.now();
      database.exec("begin immediate");
      for (const values of rows) statement.run(values);
      database.exec("commit");
      return performance.now() - begun;
    },
    close: () => database.close(),
  };
}

/** Sends a push on a connection that stays open, and says in milliseconds when its answer was read. */
async function push(address: string, agent: Agent, entries: readonly Entry[]): Promise<number> {
  const body = JSON.stringify({ entries });
  const begun = performance.now();
  const answer = await new Promise<string>((answered, failed) => {
    const headers = { "content-type": "application/json", "content-length": Buffer.byteLength(body) };
    const asked = request(`${address}/api/v1/sites/${site}/entries`, { method: "POST", agent, headers }, (reply) => {
      let said = "";
      reply
        .setEncoding("utf8")
        .on("data", (part: string) => {
          said += part;
        })
        .on("end", () => answered(said));
    });
    asked.on("error", failed).end(body);
  });
  const { kept = [] } = JSON.parse(answer) as { readonly kept?: readonly string[] };
  const took = performance.now() - begun;
  if (kept.length !== entries.length) throw new Error(`the server kept ${kept.length} of ${entries.length}`);
  return took;
}

/** Entries a second through HTTP into the embedded store, and the same texts by bare inserts into the same kind of database, in turns. */
export async function appendsBesideBareInserts(batch: number) {
  const folder = mkdtempSync(join(tmpdir(), "ringwright-bench-"));
  const same = bareInserts(join(folder, "same.db"), sameTable);
  const alone = bareInserts(join(folder, "alone.db"), textAlone);
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const served = await new Served().start();
  const times: { readonly http: number; readonly same: number; readonly alone: number }[] = [];
  try {
    for (let round = 0; round < warming + rounds; round++) {
      const entries = readings(batch);
      const took = { http: await push(served.address, agent, entries), same: same.insert(entries), alone: alone.insert(entries) };
      if (round >= warming) times.push(took);
    }
  } finally {
    agent.destroy();
    same.close();
    alone.close();
    await served.remove();
    rmSync(folder, { recursive: true, force: true });
  }
  const rate = (name: "http" | "same" | "alone") => middle(times.map((took) => (1000 * batch) / took[name]));
  const ratio = (name: "same" | "alone") => middle(times.map((took) => took.http / took[name]));
  return { http: rate("http"), same: { rate: rate("same"), ratio: ratio("same") }, alone: { rate: rate("alone"), ratio: ratio("alone") } };
}
