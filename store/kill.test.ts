import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { hashOf, readEntryText } from "@ringwright/logbook";
import fc from "fast-check";
import Database from "libsql";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildForChildren, startChild } from "../testing/child.ts";
import { idOf } from "../testing/entries.ts";
import { ownFolder } from "../testing/homes.ts";
import { pragma } from "../testing/pragma.ts";
import { counted, runs } from "../testing/property.ts";
import { open } from "./index.ts";

const site = idOf("mill where the power goes");
const { folder, clear } = ownFolder();
beforeAll(buildForChildren);
afterAll(clear);

/** When the plug is pulled: after some lines and a little, or at any moment since the start. */
const anyMoment = fc.oneof(
  { weight: 4, arbitrary: fc.record({ lines: fc.integer({ min: 2, max: 25 }), after: fc.integer({ min: 0, max: 12 }) }) },
  { weight: 1, arbitrary: fc.record({ lines: fc.constant(0), after: fc.integer({ min: 0, max: 600 }) }) },
);

test(`a program that is killed ${runs("kills")} times loses nothing that it said was kept`, { timeout: 0 }, async () => {
  const seed = Number(process.env.RINGWRIGHT_SEED ?? Date.now() % 2 ** 31);
  const moments = fc.sample(anyMoment, { numRuns: runs("kills"), seed });
  let [done, kept, seen, cursor] = [0, 0, 0, 0];
  let before: string | null = null;
  const ids = new Set<string>();
  for (const { lines, after } of moments) {
    const child = startChild(["append", folder, site]);
    await child.lines(lines);
    await setTimeout(after);
    expect(child.process.exitCode, `still running, seed ${seed}`).toBeNull();
    await child.kill();

    // The folder of a killed program opens, and its lock is gone with it.
    const store = await open(folder);
    const page = await store.since(site, cursor, Number.MAX_SAFE_INTEGER - 1);
    const counts = await store.sites();
    await store.close();
    const database = new Database(join(folder, "ringwright.db"));
    expect(pragma(database, "integrity_check")).toBe("ok");
    database.close();

    for (const text of page.texts) {
      const read = readEntryText(text);
      if (!read.ok) throw new Error(`an entry came back broken, seed ${seed}: ${text}`);
      expect(ids.has(read.entry.id)).toBe(false);
      ids.add(read.entry.id);
      expect(read.entry.seq).toBe(++seen);
      expect(read.entry.prev).toBe(before);
      before = hashOf(Buffer.from(text, "utf8"));
    }
    cursor = page.cursor;
    expect(counts).toEqual(seen === 0 ? [] : [{ site, entries: seen, cursor }]);
    const promised = child.said.filter((line) => line.startsWith("kept ")).flatMap((line) => line.split(" ").slice(1));
    for (const id of promised) expect(ids, `entry ${id} was said to be kept, seed ${seed}`).toContain(id);
    kept += promised.length;
    done++;
  }
  expect(kept).toBeGreaterThan(runs("kills"));
  expect(seen).toBeGreaterThanOrEqual(kept);
  counted("kills", done);
});
