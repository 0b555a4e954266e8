import { chmodSync, copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildForChildren, startChild } from "../../testing/child.ts";
import { chainOf, idOf } from "../../testing/entries.ts";
import { ownFolder } from "../../testing/homes.ts";
import { pragma } from "../../testing/pragma.ts";
import { open } from "../index.ts";
import { storeOver } from "../over.ts";
import { faultOfFolder } from "./faults.ts";
import { homeOf, openDatabase } from "./home.ts";

const site = idOf("mill");
const device = idOf("tablet");
const top = ownFolder();
let folder = "";
let count = 0;
beforeAll(buildForChildren);
beforeEach(() => {
  folder = join(top.folder, `data ${++count}`);
});
afterAll(top.clear);

describe("the folder of a store", () => {
  test("is made when it is missing, marked as ours, and opens again", async () => {
    await (await open(join(folder, "deeper"))).close();
    expect(JSON.parse(readFileSync(join(folder, "deeper", "ringwright.json"), "utf8"))).toMatchObject({ program: "ringwright" });
    await (await open(join(folder, "deeper"))).close();
  });

  test("may be empty, or hold what a file system puts there, or a mark that broke off", async () => {
    mkdirSync(join(folder, "lost+found"), { recursive: true });
    await (await open(folder)).close();
    truncateSync(join(folder, "ringwright.json"), 5);
    await expect(open(folder)).rejects.toMatchObject({ id: "store-foreign" });
    const other = join(top.folder, "broken off");
    mkdirSync(other);
    writeFileSync(join(other, "ringwright.json"), '{"prog');
    await (await open(other)).close();
  });

  test.each([
    ["letter.txt", "Dear"],
    ["ringwright.db", "something of that name"],
    ["ringwright.json", '{"program":"another"}'],
    ["ringwright.json", "null"],
  ])("of somebody else is left as it is: %s", async (name, text) => {
    mkdirSync(folder);
    writeFileSync(join(folder, name), text);
    await expect(open(folder)).rejects.toMatchObject({ id: "store-foreign", shown: { folder } });
    expect(readdirSync(folder)).toEqual([name]);
    expect(readFileSync(join(folder, name), "utf8")).toBe(text);
  });

  test("that can't be made or written to is said", async () => {
    writeFileSync(folder, "a file");
    await expect(open(folder)).rejects.toMatchObject({ id: "store-unwritable" });
    await expect(open(join(folder, "below"))).rejects.toMatchObject({ id: "store-unwritable" });
  });

  test("whose files this account may read and not write is said", async () => {
    await (await open(folder)).close();
    for (const name of readdirSync(folder)) chmodSync(join(folder, name), 0o444);
    chmodSync(folder, 0o555);
    chmodSync(top.folder, 0o755);
    // Root may write anywhere, so the child is nobody.
    const child = startChild(["hold", folder, ""], process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {});
    await child.lines(1);
    await child.kill();
    chmodSync(folder, 0o755);
    expect(child.said).toEqual([`fault store-unwritable ${JSON.stringify({ folder })}`]);
  });

  test("holds everything in one file when it is closed", async () => {
    const store = await open(folder);
    const chain = chainOf({ site, device }, 5);
    await store.append(site, chain);
    await store.close();
    mkdirSync(`${folder} copied`);
    for (const name of ["ringwright.json", "ringwright.db"]) copyFileSync(join(folder, name), join(`${folder} copied`, name));
    const copy = await open(`${folder} copied`);
    expect((await copy.since(site, 0, 10)).texts).toEqual(chain.map(({ text }) => text));
    await copy.close();
  });

  test("whose database is damaged is said, and the file stays", async () => {
    await (await open(folder)).close();
    const noise = Buffer.alloc(20_000, "noise ");
    writeFileSync(join(folder, "ringwright.db"), noise);
    await expect(open(folder)).rejects.toMatchObject({ id: "store-damaged", shown: { folder } });
    expect(readFileSync(join(folder, "ringwright.db")).equals(noise)).toBe(true);
    await expect(open(folder)).rejects.toMatchObject({ id: "store-damaged" });
  });
});

describe("a second start on one folder", () => {
  test("is told the address of the first, in the same program", async () => {
    const first = await open(folder, { address: "http://tablet:7000" });
    await expect(open(folder)).rejects.toMatchObject({ id: "store-in-use", shown: { folder, address: "http://tablet:7000" } });
    await first.append(site, chainOf({ site, device }, 3));
    await first.close();
    expect(existsSync(join(folder, "ringwright.address"))).toBe(false);
    const second = await open(folder);
    expect(await second.sites()).toMatchObject([{ entries: 3 }]);
    await second.close();
  });

  test("is told the address of the first, in another program; killing that one frees the folder", async () => {
    const child = startChild(["hold", folder, "http://first:7000"]);
    await child.lines(1);
    expect(child.said).toEqual(["open"]);
    await expect(open(folder)).rejects.toMatchObject({ id: "store-in-use", shown: { address: "http://first:7000" } });
    const second = startChild(["hold", folder, "http://second:7000"]);
    await second.lines(1);
    expect(second.said[0]).toContain("fault store-in-use");
    await second.kill();
    await child.kill();
    const store = await open(folder);
    await store.close();
  });
});

describe("a full disk", () => {
  test("is said, nothing is half kept, and reading goes on", async () => {
    mkdirSync(folder);
    const database = openDatabase(folder);
    const ours = (fault: unknown) => faultOfFolder(folder, fault);
    const store = storeOver(await homeOf(database, ours, () => undefined));
    const chain = chainOf({ site, device, said: (index) => `${index} ${"long ".repeat(100)}` }, 1500);
    await store.append(site, chain.slice(0, 50));
    database.pragma(`max_page_count = ${Number(pragma(database, "page_count")) + 20}`);
    await expect(store.append(site, chain.slice(50))).rejects.toMatchObject({ id: "store-full", shown: { folder } });
    await expect(store.append(site, chain.slice(50))).rejects.toMatchObject({ id: "store-full" });
    expect((await store.since(site, 0, 2000)).texts).toEqual(chain.slice(0, 50).map(({ text }) => text));
    expect(await store.sites()).toEqual([{ site, entries: 50, cursor: 50 }]);
    database.pragma("max_page_count = 1000000");
    expect((await store.append(site, chain)).kept).toHaveLength(1450);
    expect(pragma(database, "integrity_check")).toBe("ok");
    await store.close();
  });

  test("a commit reaches the disk before it is said: the settings of the file", () => {
    mkdirSync(folder);
    const database = openDatabase(folder);
    const settings = ["journal_mode", "synchronous", "foreign_keys"].map((name) => pragma(database, name));
    expect(settings).toEqual(["wal", 2, 1]);
    database.close();
    const again = new Database(join(folder, "ringwright.db"));
    expect(pragma(again, "journal_mode")).toBe("wal");
    again.close();
  });
});
