import { readFileSync } from "node:fs";
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

test("choosing: a packing that passes is taken at a tap; one that does not asks why, under its reason", async () => {
  const page = await device.open("phone");
  await page.goto(served.address);
  await page.getByRole("link", { name: /Starch tank agitator/u }).click();
  await page.getByRole("heading", { name: "Packings that pass" }).waitFor();
  await page.getByText(/that do not pass/u).click();
  await page.locator("ul.packings a").first().click();
  await page.getByText("Does not pass here.", { exact: false }).waitFor();
  await page.getByRole("button", { name: "Pack it with this" }).click();
  await page.getByText("Say why: the logbook keeps it with the choice.").waitFor();
  await page.getByRole("link", { name: "All packings" }).click();
  await page.locator("ol.packings a").first().click();
  await page.getByRole("button", { name: "Pack it with this" }).click();
  await page.getByText("chosen for this box").waitFor();
  expect(device.faults).toEqual([]);
});

test("where devices stay outside the card comes first; it is drawn on the device and written down", async () => {
  const page = await device.open("phone");
  await page.goto(served.address);
  await page.getByRole("link", { name: /Solvent dosing pump 1/u }).click();
  await page.getByText("Ordinary devices stay outside", { exact: false }).first().waitFor();
  expect(await page.locator(".primary").allInnerTexts()).toEqual(["Print the card"]);
  await page.getByRole("button", { name: "Print the card" }).click();
  await page.getByText("Letter", { exact: true }).click();
  await page.getByRole("button", { name: "Make the card" }).click();
  const save = page.getByRole("link", { name: "Save it" });
  await save.waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), save.click()]);
  const bytes = readFileSync(await download.path());
  expect(bytes.subarray(0, 5).toString("latin1")).toBe("%PDF-");
  expect(bytes.length).toBeGreaterThan(50_000);
  await page.getByRole("button", { name: "Close" }).click();
  await page.getByRole("link", { name: "Logbook" }).click();
  await page.getByText("Letter paper").waitFor();
  expect(device.faults).toEqual([]);
});

test("fitting goes on where it was left, though server and browser were killed, and the start waits for what has no way past", async () => {
  let page = await device.open("phone");
  await page.goto(served.address);
  await page.getByRole("link", { name: /White-water pump 1/u }).click();
  await page.getByRole("link", { name: "Go on: step 65" }).click();
  await page.getByRole("heading", { name: "Guard on and fast." }).waitFor();
  await served.stop("killed");
  await page.getByRole("button", { name: "Done", exact: true }).click();
  await page.getByRole("heading", { name: /Tools and rags/u }).waitFor();
  await page.getByRole("button", { name: "Done", exact: true }).click();
  await page.getByRole("heading", { name: /Permit handed back/u }).waitFor();
  await page.getByLabel("Handed back by").fill("day fitter");
  await page.waitForTimeout(300);
  await device.kill();
  await served.start();

  page = await device.open("phone");
  await page.goto(served.address);
  await page.getByRole("link", { name: /White-water pump 1/u }).click();
  await page.getByRole("link", { name: "Go on: step 67" }).click();
  await expect.poll(() => page.getByLabel("Handed back by").inputValue()).toBe("day fitter");
  await page.getByRole("button", { name: "■ Can't do it" }).click();
  await page.getByText("There is no make-do for this step", { exact: false }).first().waitFor();
  await page.getByRole("button", { name: "Back" }).click();
  await page.getByRole("link", { name: "List" }).click();
  await page.getByRole("link", { name: /Operator starts it/u }).click();
  await page.getByText("Not written down, and there is no way past:").waitFor();
  await page.getByRole("link", { name: "Go to step 67" }).waitFor();
  expect(await page.getByRole("button", { name: "Done", exact: true }).count()).toBe(0);
  expect(device.strangers).toEqual([]);
});
