import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { browserWords, findBrowser } from "../../testing/browser/find.ts";

/** A tablet that never saw the app: a browser with an empty profile, and one page. */
export interface Fresh {
  readonly context: BrowserContext;
  readonly page: Page;
  remove(): Promise<void>;
}

export async function freshDevice(): Promise<Fresh> {
  const profile = mkdtempSync(join(tmpdir(), "ringwright-bench-device-"));
  const { path } = await findBrowser();
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: path,
    args: [...browserWords],
    viewport: { width: 1024, height: 768 },
    hasTouch: true,
  });
  return {
    context,
    page: context.pages()[0] ?? (await context.newPage()),
    async remove() {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/** From the list of boxes to a new one, open at its measurements. */
export async function makeBox(page: Page): Promise<void> {
  await page.getByRole("link", { name: "New box", exact: true }).tap();
  await page.getByLabel("What is the box called?").fill("Broke pump 7");
  await page.getByText("Turns all the time: pump, fan").tap();
  await page.locator(".option", { hasText: /^Yes$/u }).last().tap();
  await page.getByRole("button", { name: "Measure this box" }).tap();
  await page.getByRole("heading", { level: 1, name: "Broke pump 7" }).waitFor();
}

/** Goes from the overview to the question of a field. */
export async function openQuestion(page: Page, field: string): Promise<void> {
  const link = page.locator(`main a[href$="/measure/${field}"]`).first();
  if (!(await link.isVisible())) await page.locator("details:not(.on-paper) > summary", { hasText: /./u }).first().tap();
  await link.tap();
  await page.locator("form.guided").waitFor();
}

/** Types a size on the app's own keys. */
export async function keyIn(page: Page, size: string): Promise<void> {
  for (const key of size) await page.getByRole("button", { name: key, exact: true }).tap();
}

export const keep = (page: Page) => page.getByRole("button", { name: "Keep and go on" }).tap();

/** The picture on Measure when the box itself stands in it, and no typical one in its place. */
export const drawnBox = ".live:not(:has(figcaption strong)) .drawing > svg";
export const ownDrawing = (page: Page) => page.locator(drawnBox).first().waitFor();

export const middle = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** The value that 95 of a hundred do not exceed. */
export const ninetyFifth = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.ceil(0.95 * values.length) - 1] ?? Number.NaN;
