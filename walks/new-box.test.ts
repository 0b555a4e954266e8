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

/** How many boxes of that name the server has. */
async function boxesNamed(wanted: string): Promise<number> {
  const { opens } = (await (await fetch(`${served.address}/api/v1/sites`)).json()) as { opens: string };
  const { boxes } = (await (await fetch(`${served.address}/api/v1/sites/${opens}/boxes`)).json()) as { boxes: { name?: string }[] };
  return boxes.filter(({ name }) => name === wanted).length;
}

test("a new box: what was typed outlives a killed browser, and the box reaches the server", async () => {
  let page = await device.open("phone");
  await page.goto(served.address);
  await page.getByRole("link", { name: "New box" }).click();
  await page.getByLabel("What is the box called?").fill("Broke pump 7, coupling-side box");
  await page.getByLabel("Turns all the time: pump, fan").check();
  await page.waitForTimeout(300);
  await device.kill();

  page = await device.open("phone");
  await page.goto(`${served.address}/new-box`);
  await expect.poll(() => page.getByLabel("What is the box called?").inputValue()).toBe("Broke pump 7, coupling-side box");
  expect(await page.getByLabel("Turns all the time: pump, fan").isChecked()).toBe(true);
  await page.getByRole("button", { name: "Measure this box" }).click();
  await page.getByRole("heading", { level: 1, name: "Broke pump 7, coupling-side box" }).waitFor();
  await page.getByText("on this device · sent").waitFor();

  expect(await boxesNamed("Broke pump 7, coupling-side box")).toBe(1);
  expect(device.faults).toEqual([]);
  expect(device.strangers).toEqual([]);
});

test("with the server gone a box is kept on the device, and sent when it comes back", async () => {
  const page = await device.open("phone");
  await page.goto(`${served.address}/new-box`);
  await served.stop("SIGKILL");
  await page.getByLabel("What is the box called?").fill("Broke pump 8");
  await page.getByLabel("Strokes: plunger, piston rod").check();
  await page.getByRole("button", { name: "Measure this box" }).click();
  await page.getByRole("heading", { level: 1, name: "Broke pump 8" }).waitFor();
  await page.getByText("no signal · kept on this device").waitFor();
  await served.start();
  await page.evaluate('dispatchEvent(new Event("online"))');
  await page.getByText("on this device · sent").waitFor();
  expect(await boxesNamed("Broke pump 8")).toBe(1);
});
