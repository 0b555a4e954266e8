import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { Device } from "../testing/browser/page.ts";
import { Served } from "../testing/browser/served.ts";

const served = new Served();
const device = new Device();
beforeAll(async () => {
  await served.start();
});
afterAll(async () => {
  await device.remove();
  await served.remove();
});

const tap = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

/** A new box of an invented pump, open at its measurements; gives its address. */
async function newBox(page: Page, name: string, zone: "Yes" | "Don't know"): Promise<string> {
  await page.goto(`${served.address}/new-box`);
  await page.getByLabel("What is the box called?").fill(name);
  await page.getByLabel("Turns all the time: pump, fan").check();
  await page.getByLabel(zone, { exact: true }).last().check();
  await tap(page, "Measure this box");
  await page.getByRole("heading", { level: 1, name }).waitFor();
  return page.url();
}

/** What the entries on this device say of some fields, as their bodies. */
async function bodies(page: Page, box: string, fields: readonly string[]): Promise<readonly string[]> {
  const texts = (await page.evaluate(
    `new Promise((done) => {
      const opening = indexedDB.open("ringwright");
      opening.onsuccess = () => {
        const all = opening.result.transaction("entries").objectStore("entries").getAll();
        all.onsuccess = () => { opening.result.close(); done(all.result.map(({ text }) => text)); };
      };
    })`,
  )) as readonly string[];
  return texts
    .map((text) => JSON.parse(text) as { box: string; kind: string; body: { field?: string } })
    .filter(({ box: of, body }) => box.includes(of ?? "-") && fields.includes(body.field ?? ""))
    .map(({ kind, body }) => JSON.stringify([kind, body]))
    .sort();
}

const measured = ["shaft", "bore", "depth"];

test("shaft, bore and depth by taps and on the sheet give the same entries, and the box is drawn", async () => {
  const page = await device.open("tablet");
  const guided = await newBox(page, "Broke pump 7", "Yes");
  await page.goto(`${guided}/shaft`);
  for (const [asked, size] of [
    ["How thick is the shaft", "49.97"],
    ["How wide is the bore?", "75.0"],
    ["How deep is the box?", "92"],
  ] as const) {
    await page.getByRole("heading", { name: asked }).waitFor();
    for (const key of size) await tap(page, key);
    await tap(page, "Keep and go on");
  }
  await expect.poll(() => bodies(page, guided, measured)).toHaveLength(3);
  await page.goto(guided);
  await page.getByText("49.97 mm").waitFor();
  expect(await page.locator(".live svg").textContent()).toContain("Ø75.0");

  const sheet = await newBox(page, "Broke pump 8", "Yes");
  await page.goto(`${sheet}/sheet`);
  await page.getByRole("textbox", { name: "How thick is the shaft" }).focus();
  await page.keyboard.type("49.97\n\n75.0\n\n92\n");
  await expect.poll(() => bodies(page, sheet, measured)).toHaveLength(3);
  expect(await bodies(page, sheet, measured)).toEqual(await bodies(page, guided, measured));
  expect(device.faults).toEqual([]);
});

test("what was typed outlives a killed browser; a tenfold slip is asked about and put right with one tap", async () => {
  let page = await device.open("phone");
  const box = await newBox(page, "Broke pump 9", "Yes");
  await page.goto(`${box}/shaft`);
  const field = () => page.getByRole("textbox", { name: "How thick is the shaft" });
  await field().fill("5");
  await page.waitForTimeout(300);
  await device.kill();

  page = await device.open("phone");
  await page.goto(`${box}/shaft`);
  await expect.poll(() => field().inputValue()).toBe("5");
  await tap(page, "Keep and go on");
  await tap(page, "No, it is 50 mm");
  await page.getByRole("heading", { name: "How wide is the bore?" }).waitFor();
  await expect
    .poll(() => bodies(page, box, ["shaft"]))
    .toEqual([JSON.stringify(["measured", { field: "shaft", value: { readings: [{ typed: "50 mm", unit: "m", value: 0.05 }] } }])]);
});

test("read again with the first hidden: apart, then a third, and all are kept; where the zone is not known the card comes first", async () => {
  const page = await device.open("phone");
  const box = await newBox(page, "Broke pump 10", "Don't know");
  await page.getByText("Ordinary devices stay outside. Take the card; enter readings afterwards.").waitFor();
  await page.goto(`${box}/bore`);
  const field = page.getByRole("textbox", { name: "How wide is the bore?" });
  await field.fill("75.0");
  await page.getByLabel("caliper", { exact: true }).check();
  await tap(page, "Read it again");
  expect(await page.getByText("75.0").count()).toBe(0);
  await field.fill("75.9");
  await tap(page, "Keep and go on");
  await tap(page, "Read it a third time");
  await field.fill("75.1");
  await tap(page, "Keep and go on");
  await expect.poll(() => bodies(page, box, ["bore"])).toHaveLength(1);
  const [kept = ""] = await bodies(page, box, ["bore"]);
  expect([...kept.matchAll(/"typed":"([^"]+)"/gu)].map(([, typed]) => typed)).toEqual(["75.0 mm", "75.9 mm", "75.1 mm"]);
});
