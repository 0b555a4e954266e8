import { setTimeout } from "node:timers/promises";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildForChildren, startProgram } from "../../testing/child.ts";
import { chainOf, idOf } from "../../testing/entries.ts";
import { ownFolder } from "../../testing/homes.ts";
import { counted, runs } from "../../testing/property.ts";

const site = idOf("mill whose server is killed");
const { folder, clear } = ownFolder();
beforeAll(() => buildForChildren("cli"));
afterAll(clear);

const path = `/api/v1/sites/${site}/entries`;

async function running() {
  const child = startProgram(["serve"], { PORT: "0", CI: "1", RINGWRIGHT_DATA: folder });
  await child.lines(1);
  const [, address] = /(http:\/\/\S+)$/u.exec(child.said[0] ?? "") ?? [];
  if (address === undefined) throw new Error(`no address: ${child.complaints()}`);
  return { child, address };
}

async function idsAt(address: string): Promise<ReadonlySet<string>> {
  const ids = new Set<string>();
  for (let since = 0, more = true; more; ) {
    const page = (await (await fetch(`${address}${path}?since=${since}`)).json()) as {
      readonly entries: readonly { readonly id: string }[];
      readonly cursor: number;
      readonly more: boolean;
    };
    for (const { id } of page.entries) ids.add(id);
    ({ cursor: since, more } = page);
  }
  return ids;
}

test(`a server that is killed ${runs("server-kills")} times while entries come in has lost nothing that it acknowledged`, {
  timeout: 0,
}, async () => {
  const seed = Number(process.env.RINGWRIGHT_SEED ?? Date.now() % 2 ** 31);
  const moments = fc.sample(
    fc.record({ pushes: fc.integer({ min: 1, max: 12 }), after: fc.integer({ min: 0, max: 20 }), size: fc.integer({ min: 1, max: 40 }) }),
    {
      numRuns: runs("server-kills"),
      seed,
    },
  );
  const acknowledged = new Set<string>();
  let done = 0;
  for (const { pushes, after, size } of moments) {
    const { child, address } = await running();
    const kept = await idsAt(address);
    for (const id of acknowledged) expect(kept, `seed ${seed}`).toContain(id);
    const told = chainOf({ site, device: idOf(`device ${seed} ${done}`) }, 200 * size);
    let killed: Promise<void> | undefined;
    try {
      for (let from = 0; from < told.length; from += size) {
        if (from / size === pushes) killed = setTimeout(after).then(() => child.kill());
        const entries = told.slice(from, from + size).map(({ entry }) => entry);
        const reply = await fetch(`${address}${path}`, {
          method: "POST",
          headers: { "content-type": "application/json" },
          body: JSON.stringify({ entries }),
        });
        for (const id of ((await reply.json()) as { readonly kept: readonly string[] }).kept) acknowledged.add(id);
      }
    } catch (error) {
      // Cut off in the middle: that push was not acknowledged.
      if (!(error instanceof TypeError) || killed === undefined) throw error;
    }
    await (killed ?? child.kill());
    done++;
  }
  expect(acknowledged.size).toBeGreaterThan(runs("server-kills"));
  const { child, address } = await running();
  const kept = await idsAt(address);
  for (const id of acknowledged) expect(kept, `seed ${seed}`).toContain(id);
  await child.kill();
  counted("server-kills", done);
});
