import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { byTab, cutOff, sideways, smallTargets, violations, visit } from "../testing/browser/access.ts";
import { Device, screens as sizes } from "../testing/browser/page.ts";
import { Served } from "../testing/browser/served.ts";

const served = new Served();
const device = new Device();
let page: Page;
const boxes = new Map<string, string>();
beforeAll(async () => {
  await served.start();
  page = await device.open("phone");
  await page.goto(served.address);
  await page.locator("a.box").first().waitFor();
  await page.getByText("on this device · sent").waitFor();
  const links = (await page.evaluate(
    '[...document.querySelectorAll("a.box")].map((link) => [link.querySelector("h2").textContent, link.pathname.split("/")[2]])',
  )) as readonly (readonly [string, string])[];
  for (const [name, id] of links) boxes.set(name.replace(/,? .invented.$/u, "").replace(/,.*$/u, ""), id);
});
afterAll(async () => {
  await device.remove();
  await served.remove();
});

const on =
  (box: string, ...rest: readonly string[]) =>
  () =>
    ["/box", boxes.get(box) ?? "no such box", ...rest].join("/");
const measuring = (field: string) => on("Stock pump 2", "measure", field);

/** A screen: how it is come to, and what stands there when it has come. */
type Screen = readonly [name: string, path: () => string, stands: string, prepare?: () => Promise<void>];

const keep = () => page.getByRole("button", { name: "Keep and go on" }).click();
const number = () => page.locator("input.number").first();

const screens: readonly Screen[] = [
  ["site list", () => "/", "a.box"],
  ["new box", () => "/new-box", "form.ask"],
  ["settings", () => "/settings", "form.ask"],
  ["overview", on("White-water pump 1", "measure"), ".verdict"],
  ["question: text", measuring("name"), "h2 label"],
  ["question: text with common ones", measuring("studs.thread"), ".common"],
  ["question: one of a few", measuring("motion"), ".options"],
  ["question: yes or no", measuring("lantern.wanted"), ".options"],
  ["question: any of a few", measuring("condition.renewed"), "[type=checkbox]"],
  ["question: readings", measuring("shaft"), ".readings"],
  ["question: quantity", measuring("service.temperature"), ".unit"],
  ["question: quantity with common sizes", measuring("port.diameter"), ".common"],
  ["question: count", measuring("studs.count"), "input.number"],
  ["question: number", measuring("service.pH"), "input.number"],
  ["question: four gaps", measuring("condition.clockGaps"), ".clock"],
  ["question: several of a list", measuring("service.fluids"), ".found button"],
  ["question: one of a list", measuring("service.sleeve"), ".found button"],
  [
    "a refused number",
    measuring("follower.nose"),
    "[role=alert]",
    async () => {
      await number().fill("x");
      await keep();
    },
  ],
  [
    "a slip asked about",
    on("Starch tank agitator", "measure", "depth"),
    ".slip",
    async () => {
      await number().fill("9999");
      await keep();
    },
  ],
  ["sheet", on("Stock pump 2", "measure", "sheet"), ".line"],
  ["choose", on("Starch tank agitator", "choose"), "ol.packings a"],
  [
    "a packing",
    on("Starch tank agitator", "choose"),
    ".packing-name",
    async () => {
      await page.locator("ol.packings a").first().click();
    },
  ],
  ["rings", on("White-water pump 1", "rings"), ".rings-set"],
  ["fit start", on("Starch tank agitator", "fit"), ".primary"],
  ["fit start where devices stay outside", on("Solvent dosing pump 1", "fit"), ".card-offer"],
  ["fit list", on("White-water pump 1", "fit", "steps"), ".step-list a"],
  ["fit step with a number", on("Steam valve 12", "fit", "step-gap-as-found"), "input.number"],
  ["fit step with a caution", on("White-water pump 1", "fit", "step-guard-on"), ".cautions .chalk"],
  [
    "fit step that can't be done",
    on("White-water pump 1", "fit", "step-guard-on"),
    ".cannot",
    () => page.getByRole("button", { name: "■ Can't do it" }).click(),
  ],
  ["logbook", on("White-water pump 1", "logbook"), ".entries li"],
  [
    "workings",
    on("White-water pump 1", "rings"),
    ".steps-of-workings li",
    () => page.getByRole("button", { name: "workings: Cut", exact: true }).click(),
  ],
];

async function come([, path, stands, prepare]: Screen): Promise<void> {
  await visit(page, path());
  await prepare?.();
  await page.locator(stands).first().waitFor();
}

async function size(width: number, height: number, text = ""): Promise<void> {
  await page.setViewportSize({ width, height });
  await page.evaluate(`document.documentElement.style.fontSize = "${text}"; new Promise((drawn) =>
    requestAnimationFrame(() => requestAnimationFrame(drawn)))`);
}

/** The spacing of text that WCAG 1.4.12 names. */
async function spaced(apart: boolean): Promise<void> {
  await page.evaluate(`(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync("* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }");
    document.adoptedStyleSheets = ${apart} ? [sheet] : [];
  })()`);
}

test("the checks see what is wrong when something is", async () => {
  await visit(page, "/new-box");
  await page.locator("form.ask").waitFor();
  await page.evaluate(`document.querySelector("main").insertAdjacentHTML("beforeend", '<div id="planted"><button></button>' +
    '<p id="pale">Not dark enough</p><div id="wide">Too wide</div><a id="bare" href="/">no ring</a></div>');
    document.getElementById("pale").style.color = "#6b6b6b";
    document.getElementById("wide").style.width = "2000px";
    document.getElementById("bare").style.outline = "none"`);
  const found = (await violations(page)).join("\n");
  expect(found).toMatch(/^button-name at /mu);
  expect(found).toMatch(/^color-contrast-enhanced at #pale/mu);
  expect(await smallTargets(page)).toHaveLength(2);
  expect((await sideways(page)).join()).toMatch(/DIV/u);
  expect((await byTab(page)).join("\n")).toMatch(/focus not seen on <a id="bare"/u);
  await page.evaluate('document.getElementById("planted").remove()');
});

test("the steps of a box stand in one row on a phone", async () => {
  await size(360, 740);
  await visit(page, on("White-water pump 1", "measure")());
  await page.locator("nav.steps a").first().waitFor();
  expect(
    await page.evaluate('new Set([...document.querySelectorAll("nav.steps a")].map((step) => step.getBoundingClientRect().top)).size'),
  ).toBe(1);
});

test("every screen on phone, tablet and desktop: axe finds nothing, what is tapped is large enough, the page stays put", async () => {
  const wrong: string[] = [];
  let looked = 0;
  for (const screen of screens) {
    await size(360, 740);
    await come(screen);
    const note = (at: string, list: readonly string[]) => wrong.push(...list.map((one) => `${screen[0]}, ${at}: ${one}`));
    for (const [at, { width, height }] of Object.entries({ phone: sizes.phone, tablet: sizes.tablet, desktop: sizes.desktop })) {
      await size(width, height);
      note(at, await violations(page));
      note(at, await smallTargets(page));
      note(at, await sideways(page));
      looked += 1;
    }
    await size(320, 640);
    note("320 px", [...(await sideways(page)), ...(await cutOff(page))]);
    await spaced(true);
    note("letters, words and lines apart", [...(await sideways(page)), ...(await cutOff(page))]);
    await spaced(false);
    // The page's own 112.5 %, twice.
    await size(360, 740, "225%");
    note("text twice as large", [...(await sideways(page)), ...(await cutOff(page))]);
  }
  await size(360, 740);
  expect(wrong).toEqual([]);
  expect(looked).toBe(3 * screens.length);
  expect(device.faults).toEqual([]);
});

test("with gloves buttons are 15 mm and keys 20 mm high; a narrow phone has keys as wide as three to a row can be", async () => {
  const wrong: string[] = [];
  await visit(page, "/settings");
  await page.getByLabel("Gloves", { exact: false }).last().check();
  let keys = 0;
  let buttons = 0;
  for (const { width, height } of [sizes.phone, sizes.tablet]) {
    await size(width, height);
    for (const screen of screens) {
      await come(screen);
      const boxes = (await page.evaluate(`[...document.querySelectorAll(".primary, .key, .second")].filter((one) => one.checkVisibility())
        .map((one) => ({ is: one.className, width: one.getBoundingClientRect().width, height: one.getBoundingClientRect().height }))`)) as readonly {
        readonly is: string;
        readonly width: number;
        readonly height: number;
      }[];
      // 15 and 20 mm at 160 px to the inch; words may be shorter than a button is high, keys not.
      const wide = Math.floor(Math.min(126, (width - 2 * 4) / 3));
      for (const one of boxes) {
        const key = one.is === "key";
        if (one.height < (key ? 126 : 94) || one.width < (key ? wide : 94)) wrong.push(`${screen[0]}, ${width} px: ${JSON.stringify(one)}`);
        if (key) keys += 1;
        else buttons += 1;
      }
      wrong.push(...(await sideways(page)).map((far) => `${screen[0]}, ${width} px: ${far}`));
    }
  }
  await visit(page, "/settings");
  await page.getByLabel("Bare", { exact: false }).first().check();
  expect(wrong).toEqual([]);
  expect(keys).toBeGreaterThan(100);
  expect(buttons).toBeGreaterThan(50);
});

test("the tab key reaches everything on every screen, and one sees where it is", async () => {
  await size(1440, 900);
  const wrong: string[] = [];
  for (const screen of screens) {
    await come(screen);
    wrong.push(...(await byTab(page)).map((one) => `${screen[0]}: ${one}`));
  }
  expect(wrong).toEqual([]);
});

test("on the sheet of a phone the field that is gone to is not under the keys, nor is any with gloves on", async () => {
  await size(360, 740);
  const covered: string[] = [];
  for (const hands of ["bare", "gloves"]) {
    await come(["sheet", on("Stock pump 2", "measure", "sheet"), ".docked"]);
    if (hands === "gloves") await page.getByRole("button", { name: "Gloves", exact: true }).click();
    await page.locator(".line input").first().focus();
    for (let field = 0; field < 30; field++) {
      await page.keyboard.press("Tab");
      const under = (await page.evaluate(`(() => {
        const one = document.activeElement;
        const { top, bottom } = one.getBoundingClientRect();
        const keys = document.querySelector(".docked").getBoundingClientRect();
        return bottom > 0 && top < keys.top ? "" : one.outerHTML.slice(0, 90);
      })()`)) as string;
      if (under !== "") covered.push(`${hands}: ${under}`);
    }
  }
  await page.getByRole("button", { name: "Gloves", exact: true }).click();
  expect(covered).toEqual([]);
});

test("questions are answered and workings read without a pointer", async () => {
  await size(1440, 900);
  const { keyboard } = page;
  const focused = () => page.evaluate("document.activeElement.textContent || document.activeElement.getAttribute('aria-label')");
  const tabTo = async (selector: string) => {
    for (let press = 0; press < 60 && !(await page.evaluate(`document.activeElement.matches(${JSON.stringify(selector)})`)); press++)
      await keyboard.press("Tab");
  };
  await visit(page, "/");
  await tabTo("a.box");
  await keyboard.press("Enter");
  await page.locator(".steps").waitFor();
  await expect.poll(() => page.evaluate("document.activeElement.id")).toBe("work");
  expect(await page.title()).toMatch(/^.+ · .+ · Ringwright$/u);

  await come(["thread left", measuring("studs.threadLeft"), "input.number"]);
  expect(await focused()).toBe("How much thread can the nuts still run down?");
  await keyboard.type("35");
  await keyboard.press("Enter");
  await page.getByRole("heading", { level: 2, name: "How much thread can the nuts still run down?" }).waitFor({ state: "detached" });

  await come(["nuts free", measuring("condition.sightings.nutsFree"), ".options"]);
  await tabTo("[type=radio]");
  await keyboard.press("Space");
  await keyboard.press("Enter");
  await page.getByRole("heading", { level: 2, name: "Do the nuts run free?" }).waitFor({ state: "detached" });
  await visit(page, on("Stock pump 2", "measure")());
  await page.locator(".answer .measured", { hasText: "35 mm" }).waitFor();

  await come(["rings", on("White-water pump 1", "rings"), ".rings-set"]);
  await tabTo("button.workings");
  const opener = await focused();
  await keyboard.press("Enter");
  await page.locator(".steps-of-workings li").first().waitFor();
  await keyboard.press("Escape");
  await page.locator("dialog").waitFor({ state: "detached" });
  expect(await focused()).toBe(opener);
});

test("whoever wants less motion gets none", async () => {
  await size(1440, 900);
  /** Places of the gland on the way from one end to the other. */
  const places = async (): Promise<number> => {
    await come(["rings", on("White-water pump 1", "rings"), ".standing"]);
    await page.getByRole("button", { name: "Back to finger-tight" }).click();
    await page.waitForTimeout(600);
    await page.evaluate(`window.places = new Set(); new MutationObserver(() => window.places.add(document.querySelector(".standing").textContent))
      .observe(document.querySelector(".rings-box"), { subtree: true, childList: true, characterData: true })`);
    await page.getByRole("button", { name: "To the end" }).click();
    await page.waitForTimeout(900);
    return (await page.evaluate("window.places.size")) as number;
  };
  expect(await places()).toBeGreaterThan(2);
  await page.emulateMedia({ reducedMotion: "reduce" });
  expect(await places()).toBe(1);
  const moving: string[] = [];
  for (const screen of screens.filter(([name]) => ["overview", "question: readings", "sheet", "logbook", "workings"].includes(name))) {
    await come(screen);
    moving.push(
      ...((await page.evaluate(`[...document.querySelectorAll("*")].filter((one) => {
        const { animationName, transitionDuration } = getComputedStyle(one);
        return animationName !== "none" || transitionDuration.split(", ").some((time) => time !== "0s");
      }).map((one) => one.outerHTML.slice(0, 80)).concat(document.getAnimations().map(String))`)) as readonly string[]),
    );
  }
  await page.emulateMedia({ reducedMotion: null });
  expect(moving).toEqual([]);
});
