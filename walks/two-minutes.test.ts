import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { bare, readPdf } from "../card/testing/read-pdf.ts";
import { Device } from "../testing/browser/page.ts";
import { Served } from "../testing/browser/served.ts";
import { root } from "../testing/root.ts";

const served = new Served();
const device = new Device();
const other = new Device();
beforeAll(async () => {
  await served.start();
});
afterAll(async () => {
  await device.remove();
  await other.remove();
  await served.remove();
});

const name = "Broke pump 7, drive-end box";
const read = [
  ["How thick is the shaft where the packing runs?", "49.97"],
  ["How wide is the bore?", "75.0"],
  ["How deep is the box?", "92"],
] as const;

/** Figures of a plan as data, as both ways of asking for it reply. */
interface Reply {
  readonly ok: boolean;
  readonly answer: {
    readonly parts: {
      readonly section: { readonly section: { readonly value: number } };
      readonly "ring-set": { readonly rings: readonly unknown[] };
      readonly "ring-cut": { readonly cutLength: { readonly value: number } };
    };
  };
}

async function answered(path: string): Promise<unknown> {
  const response = await fetch(`${served.address}/api/v1/${path}`);
  expect(response.status).toBe(200);
  return response.json();
}

/** What `ringwright plan --json` says of a survey. */
function planned(survey: unknown): Reply {
  const program = fileURLToPath(new URL("cli/bin/ringwright.js", root));
  const { status, stdout } = spawnSync(process.execPath, [program, "plan", "-", "--json"], {
    input: JSON.stringify(survey),
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  expect(status).toBe(0);
  return JSON.parse(stdout) as Reply;
}

/** A hand at a phone, which counts its taps. */
class Hand {
  taps = 0;
  readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  async on(what: Locator): Promise<void> {
    await what.tap();
    this.taps += 1;
  }
  async key(named: string): Promise<void> {
    await this.on(this.page.getByRole("button", { name: named, exact: true }));
  }
}

test("a new box to its card on a phone, by taps; server, terminal and screen say the same of it", async () => {
  const page = await device.open("phone");
  await page.goto(served.address);
  const hand = new Hand(page);
  await hand.on(page.getByRole("link", { name: "New box" }));
  await hand.on(page.getByLabel("What is the box called?"));
  await page.keyboard.type(name);
  await hand.on(page.getByLabel("Turns all the time: pump, fan"));
  await hand.on(page.getByRole("group", { name: "May ordinary phones and tablets go there?" }).getByLabel("Yes"));
  await hand.key("Measure this box");
  await page.getByRole("heading", { level: 1, name }).waitFor();
  const address = new URL(page.url()).pathname;
  const box = address.split("/")[2] ?? "";

  await hand.on(page.locator("a.primary"));
  for (const [asks, size] of read) {
    // Chapters ask other things in between; what a set needs is one tap away in the overview.
    while (!(await page.getByRole("heading", { level: 2, name: asks }).isVisible())) await hand.key("Later");
    for (const key of size) await hand.key(key);
    await hand.on(page.getByLabel(asks.includes("deep") ? "depth gauge" : "caliper", { exact: true }));
    await hand.key("Keep and go on");
    await page.getByRole("heading", { level: 2, name: asks }).waitFor({ state: "detached" });
  }
  expect(await page.locator(".live svg").textContent()).toContain("Ø75.0");

  await hand.on(page.getByRole("link", { name: "Rings", exact: true }));
  await page.locator(".rings-set tbody tr").first().waitFor();
  const toRings = hand.taps;
  const onScreen = (await page.locator(".rings").allInnerTexts()).join(" ").replace(/\s+/gu, " ");
  const ringsOnScreen = await page.locator(".rings-set tbody tr").count();

  await hand.on(page.getByRole("link", { name: "Fit", exact: true }));
  await hand.key("Print the card");
  await hand.key("Make the card");
  const save = page.getByRole("link", { name: "Save it" });
  await save.waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), hand.on(save)]);
  const bytes = readFileSync(await download.path());
  expect(bytes.subarray(0, 5).toString("latin1")).toBe("%PDF-");
  expect((await readPdf(new Uint8Array(bytes))).pages[0]?.text).toContain(bare(name));
  await page.getByText("on this device · sent").waitFor();

  await served.stop("asked");
  await served.start();
  const fresh = await other.open("phone");
  await fresh.goto(served.address);
  await fresh.getByRole("link", { name: new RegExp(name, "u") }).tap();
  await fresh.getByRole("heading", { level: 1, name }).waitFor();
  await fresh.getByRole("link", { name: "Measure", exact: true }).tap();
  for (const [, size] of read) await fresh.locator(".answer .measured", { hasText: `${size} mm` }).waitFor();

  const { opens } = (await answered("sites")) as { readonly opens: string };
  const { survey } = (await answered(`sites/${opens}/boxes/${box}`)) as { readonly survey: unknown };
  const reply = planned(survey);
  expect(await answered(`sites/${opens}/boxes/${box}/plan`)).toEqual(reply);
  const { section, "ring-set": set, "ring-cut": cut } = reply.answer.parts;
  // By hand: half of bore less shaft; a strip whose middle lies on the mean of both diameters.
  expect(section.section.value).toBeCloseTo((0.075 - 0.04997) / 2, 9);
  expect(cut.cutLength.value).toBeCloseTo((Math.PI * (0.075 + 0.04997)) / 2, 9);
  expect(ringsOnScreen).toBe(set.rings.length);
  expect(onScreen).toContain(`${set.rings.length} rings of`);
  expect(onScreen).toContain(`gap to fill ${(1000 * section.section.value).toFixed(1)}`);
  expect(onScreen).toContain(`each ring ${Math.round(1000 * cut.cutLength.value)} mm`);
  // As many taps as this way has: one more is one more each time a box is measured.
  expect([toRings, hand.taps]).toEqual([26, 30]);
  expect([...device.faults, ...other.faults, ...device.strangers]).toEqual([]);
});
