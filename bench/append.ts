import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { canonicalText, type Entry, noHead, uuidv7, writeEntry } from "@ringwright/logbook";
import Database from "libsql";
import { Served } from "../testing/browser/served.ts";

const batch = 100;
const rounds = 15;
let chance = 1;

/** Bytes that look random and are the same in every run. */
function bytes(count: number): Uint8Array {
  return Uint8Array.from({ length: count }, () => {
    chance = (Math.imul(chance, 1_103_515_245) + 12_345) >>> 0;
    return chance >>> 24;
  });
}

const site = uuidv7(1_800_000_000_000, bytes(10));

/** So many readings of one device, chained. */
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
      1_800_000_000_000 + index,
      bytes(10),
    );
    head = written.head;
    return written.entry;
  });
}

const middle = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Entries a second through HTTP into the embedded store, and the same texts by bare inserts into the same kind of database, in turns. */
export async function appendsBesideBareInserts(): Promise<{ readonly http: number; readonly bare: number; readonly ratio: number }> {
  const folder = mkdtempSync(join(tmpdir(), "ringwright-bench-"));
  const database = new Database(join(folder, "bare.db"));
  database.exec("pragma journal_mode = wal; pragma synchronous = full");
  database.exec("create table entry (site text, id text, text text, primary key (site, id)) without rowid");
  const insert = database.prepare("insert into entry (site, id, text) values (?, ?, ?)");
  const served = await new Served().start();
  const http: number[] = [];
  const bare: number[] = [];
  try {
    for (let round = 0; round <= rounds; round++) {
      const entries = readings(batch);
      const body = JSON.stringify({ entries });
      const posted = performance.now();
      const reply = await fetch(`${served.address}/api/v1/sites/${site}/entries`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body,
      });
      const { kept } = (await reply.json()) as { readonly kept: readonly string[] };
      const answered = performance.now();
      if (kept.length !== batch) throw new Error(`the server kept ${kept.length} of ${batch}`);
      const texts = entries.map((entry) => [entry.id, canonicalText(entry)] as const);
      const begun = performance.now();
      database.exec("begin immediate");
      for (const [id, text] of texts) insert.run(site, id, text);
      database.exec("commit");
      const done = performance.now();
      // The first round warms both up.
      if (round === 0) continue;
      http.push((1000 * batch) / (answered - posted));
      bare.push((1000 * batch) / (done - begun));
    }
  } finally {
    database.close();
    await served.remove();
    rmSync(folder, { recursive: true, force: true });
  }
  return { http: middle(http), bare: middle(bare), ratio: middle(http.map((one, index) => (bare[index] ?? Number.NaN) / one)) };
}
