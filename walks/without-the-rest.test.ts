import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { visit } from "../testing/browser/access.ts";
import { Device } from "../testing/browser/page.ts";
import { Served } from "../testing/browser/served.ts";
import { english as catalogue } from "../words/en/index.ts";

const served = new Served();
const device = new Device();
beforeAll(async () => {
  await served.start();
});
afterAll(async () => {
  await device.remove();
  await served.remove();
});

/** A word with a stroke or a capital inside it, as ids have and English seldom has. */
const joined = /(?<![\p{L}\d-])(?:\p{Ll}[\p{L}\d]*(?:-[\p{L}\d]+)+|\p{Ll}+\p{Lu}\p{L}*)(?![\p{L}\d-])/gu;
const words = (text: string) => [...text.matchAll(joined)].map(([word]) => word);
/** Words of that kind that our English has, and units. */
const english = new Set([...Object.values(catalogue.sentences), ...Object.values(catalogue.names), "kPa", "mA", "pH"].flatMap(words));

/** What looks like an id among the words of a text. */
function idsIn(text: string): readonly string[] {
  return [...new Set(words(text).filter((word) => !english.has(word)))];
}

/** Everything a person reads on the page or has read out. */
async function everyText(page: Page): Promise<string> {
  return (await page.evaluate(`(() => {
    const told = (one) => ["aria-label", "title", "placeholder"].map((name) => one.getAttribute(name) ?? "");
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const said = [document.title, ...[...document.querySelectorAll("body *")].flatMap(told)];
    while (texts.nextNode()) said.push(texts.currentNode.data);
    return said.join("\\n");
  })()`)) as string;
}

test("while packings and steps are still on their way, measuring speaks in words", async () => {
  expect(idsIn("Kept: measure-next, studs.propertyClass, o'clock at 2.5 kPa")).toEqual(["measure-next", "propertyClass"]);
  const page = await device.open("phone");
  await page.goto(served.address);
  await page.locator("a.box").first().waitFor();
  await page.getByText("on this device · sent").waitFor();
  let blocked = 0;
  await page.route(/\/assets\/rest-[^/]*\.js$/u, (route) => {
    blocked += 1;
    return route.abort();
  });
  await page.reload();
  await page.locator("a.box").first().waitFor();
  const found: string[] = [];
  const links = async (of: string) =>
    (await page.evaluate(
      `[...document.querySelectorAll("${of}")].map((link) => [(link.querySelector("span") ?? link).textContent, link.pathname])`,
    )) as readonly (readonly [string, string])[];
  const boxes = (await links("a.box")).map(([, path]) => path.split("/")[2]);
  const named = new Set(words((await page.locator("a.box h2").allTextContents()).join("\n")));
  const look = async (where: string) => {
    for (const id of idsIn(await everyText(page))) if (!named.has(id)) found.push(`${id} on ${where}`);
  };
  const asked = new Map<string, string>();
  for (const box of boxes) {
    await visit(page, `/box/${box}/measure`);
    await page.locator(".chapter").first().waitFor();
    await look(`the overview of ${box}`);
    for (const [ask, path] of await links("a.answer")) {
      if (!asked.has(ask)) asked.set(ask, path);
    }
    await visit(page, `/box/${box}/measure/sheet`);
    await page.locator(".line").first().waitFor();
    await look(`the sheet of ${box}`);
  }
  await expect.poll(() => blocked).toBeGreaterThan(0);
  expect(boxes.length).toBe(7);
  expect(asked.size).toBeGreaterThan(60);
  for (const [ask, path] of asked) {
    await visit(page, path);
    await page.getByRole("heading", { level: 2, name: ask, exact: true }).waitFor();
    // What cannot be read is refused in words too.
    const number = page.locator("input.number").first();
    if ((await number.count()) > 0) {
      await number.fill("x");
      await page.locator("button.primary").click();
      await page.locator(".attention").first().waitFor();
    }
    await look(ask);
  }
  expect(found).toEqual([]);
});

test("a step that can't be brought says so, and comes when it is asked for again", async () => {
  const page = await device.open("phone");
  await page.unrouteAll();
  await page.goto(served.address);
  await page.locator("a.box").first().waitFor();
  const pieces = /\/assets\/(?:rest|fit)-[^/]*\.js$/u;
  await page.route(pieces, (route) => route.abort());
  await page.reload();
  await page.locator("a.box").first().click();
  await page.getByRole("link", { name: "Fit", exact: true }).click();
  await page.getByText("This part of the program is not on this device yet").waitFor();
  await page.unroute(pieces);
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByText("Now it is run in").waitFor();
});
