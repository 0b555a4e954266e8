import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { buildForChildren, type Child, startProgram } from "../../testing/child.ts";
import { chainOf, idOf } from "../../testing/entries.ts";
import { type Scratch, scratchDatabase } from "../../testing/postgres/scratch.ts";

let database: Scratch;
beforeAll(async () => {
  buildForChildren("cli");
  database = await scratchDatabase(inject("postgres"));
});
afterAll(() => database.drop());

async function started(): Promise<{ readonly child: Child; readonly address: string }> {
  const child = startProgram(["serve"], { PORT: "0", CI: "1", DATABASE_URL: database.url });
  await child.lines(1);
  const [, address] = /(http:\/\/127\.0\.0\.1:\d+)$/u.exec(child.said[0] ?? "") ?? [];
  if (address === undefined) throw new Error(`no address: ${child.complaints()}`);
  return { child, address };
}

test("with DATABASE_URL entries are kept in PostgreSQL: the invented site once, and what is pushed, over a restart", async () => {
  const site = idOf("mill on PostgreSQL");
  const told = chainOf({ site, device: idOf("device on PostgreSQL") }, 20);
  const first = await started();
  await first.child.lines(3);
  expect(first.child.said[1]).toMatch(/^Entries are kept in the database postgres:\/\//u);
  const pushed = await fetch(`${first.address}/api/v1/sites/${site}/entries`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ entries: told.map(({ entry }) => entry) }),
  });
  expect(await pushed.json()).toMatchObject({ kept: told.map(({ entry }) => entry.id), refused: [] });
  const sites = await (await fetch(`${first.address}/api/v1/sites`)).json();
  expect((sites as { sites: readonly object[] }).sites).toHaveLength(2);
  first.child.process.kill("SIGTERM");
  expect(await first.child.ended).toBe(0);

  const second = await started();
  expect(await (await fetch(`${second.address}/api/v1/sites`)).json()).toEqual(sites);
  const page = (await (await fetch(`${second.address}/api/v1/sites/${site}/entries`)).json()) as { readonly entries: readonly object[] };
  expect(page.entries).toEqual(told.map(({ entry }) => entry));
  second.child.process.kill("SIGTERM");
  expect(await second.child.ended).toBe(0);
});
