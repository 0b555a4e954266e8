import type { Page } from "playwright-core";
import { freshDevice, keep, makeBox, openQuestion, ownDrawing } from "./device.ts";

/** One tap, and how long after it the screen had changed; milliseconds. */
interface Tap {
  readonly what: string;
  readonly toPaint: number;
}

interface Seen {
  readonly events: readonly { readonly start: number; readonly took: number }[];
  readonly tasks: readonly { readonly start: number; readonly took: number }[];
  readonly drawn: readonly { readonly start: number; readonly took: number }[];
}

/** Notes what the browser itself says of taps, long tasks and redrawings; runs in the page before anything else. */
const watch = `{
  const seen = (globalThis.seen = { events: [], tasks: [], drawn: [] });
  const note = (type, list, more) =>
    new PerformanceObserver((found) => {
      for (const { startTime, duration, name } of found.getEntries())
        if (type !== "measure" || name === "live-drawing") list.push({ start: startTime, took: duration });
    }).observe({ type, buffered: true, ...more });
  note("event", seen.events, { durationThreshold: 16 });
  note("longtask", seen.tasks, {});
  note("measure", seen.drawn, {});
}`;

export interface Watched {
  readonly taps: readonly Tap[];
  /** Longest task while the first page came up, and longest afterwards; ms. */
  readonly atStart: number;
  readonly longest: number;
  /** Redrawings of the box after a key. */
  readonly drawn: readonly number[];
}

/** Taps through a box on a device this many times slower than this machine. */
export async function tapped(address: string, slower: number): Promise<Watched> {
  const { context, page, remove } = await freshDevice();
  try {
    await page.addInitScript(watch);
    const session = await context.newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
    await page.goto(address);
    await page.getByRole("link", { name: "New box", exact: true }).waitFor();
    await page.waitForTimeout(2000);
    const stood = await clock(page);
    await makeBox(page);
    await openQuestion(page, "shaft");
    const made: { what: string; start: number }[] = [];
    await walk(page, async (what, tap) => {
      made.push({ what, start: await clock(page) });
      await tap();
      // Whatever the tap set off is over before the next.
      await page.waitForTimeout(250);
    });
    await page.waitForTimeout(500);
    const { events, tasks, drawn } = (await page.evaluate("globalThis.seen")) as Seen;
    const longest = (from: number, to: number) =>
      Math.max(0, ...tasks.filter(({ start }) => start >= from && start < to).map(({ took }) => took));
    /** What was seen between one tap and the next. */
    const after = (at: number, list: typeof events) =>
      list
        .filter(({ start }) => start >= (made[at]?.start ?? Infinity) && start < (made[at + 1]?.start ?? Infinity))
        .map(({ took }) => took);
    return {
      // What was painted within 16 ms is not listed by the browser.
      taps: made.map(({ what }, at) => ({ what, toPaint: Math.max(16, ...after(at, events)) })),
      atStart: longest(0, stood),
      longest: longest(stood, Infinity),
      drawn: made.flatMap(({ what }, at) => (what === "key" ? after(at, drawn) : [])),
    };
  } finally {
    await remove();
  }
}

const clock = async (page: Page) => (await page.evaluate("performance.now()")) as number;

/** Keys, choices, units, steps of the work, and the follower, in the order of the work. */
async function walk(page: Page, tap: (what: string, doing: () => Promise<void>) => Promise<void>): Promise<void> {
  const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true });
  const key = (name: string) => tap("key", () => button(name).tap());
  for (const one of "49.97") await key(one);
  for (const one of ["Rub out", "Rub out"]) await key(one);
  for (const one of "98") await key(one);
  const hows = page.locator(".how-taken .option");
  for (let at = 0; at < (await hows.count()); at++) await tap("choice", () => hows.nth(at).tap());
  const units = page.locator("header .units button");
  for (const at of [1, 0, 1, 0]) await tap("units", () => units.nth(at).tap());
  await tap("keep", () => keep(page));
  await page.getByRole("heading", { name: "How wide is the bore?" }).waitFor();
  for (const one of "75.02") await key(one);
  await tap("keep", () => keep(page));
  await page.getByRole("heading", { name: "How deep is the box?" }).waitFor();
  for (const one of "92") await key(one);
  await ownDrawing(page);
  for (const one of ["Rub out", "5", "Rub out", "2"]) await key(one);
  await tap("keep", () => keep(page));
  const steps = page.locator("nav.steps a");
  for (let round = 0; round < 3; round++)
    for (const at of [1, 3, 4, 0, 2]) await tap(round === 0 ? "step, first time" : "step", () => steps.nth(at).tap());
  await page.locator(".travel .bar button").first().waitFor();
  const follower = page.locator(".travel .bar button");
  for (const at of [1, 1, 1, 1, 0, 0, 3, 2, 1, 1, 3, 0, 0, 2]) await tap("follower", () => follower.nth(at).tap());
  for (const at of [1, 0]) await tap("units", () => units.nth(at).tap());
}
