import { gzipSync } from "node:zlib";
import type { Request } from "playwright-core";
import { drawnBox, freshDevice, keep, keyIn, makeBox, openQuestion, ownDrawing } from "./device.ts";

/** When a script was asked for: with the page; by itself, while nobody tapped; on the way to the drawing; after it. */
export type Came = "page" | "meanwhile" | "way" | "after";

export interface Script {
  readonly name: string;
  readonly came: Came;
  /** gzip, level 9. */
  readonly bytes: number;
}

/** Notes when the box itself first stands in the picture; runs in the page before anything else. */
const watch = `addEventListener("DOMContentLoaded", () => {
  const look = new MutationObserver(() => {
    if (!document.querySelector(${JSON.stringify(drawnBox)})) return;
    globalThis.drawnAt = Date.now();
    look.disconnect();
  });
  look.observe(document.body, { childList: true, subtree: true });
})`;

/** Every script that a fresh device asks for until a new box is drawn from its own shaft and bore, and a while after. */
export async function scriptsToFirstBox(address: string): Promise<readonly Script[]> {
  const { context, page, remove } = await freshDevice();
  let now: Came = "page";
  const asked: { readonly came: Came; readonly request: Request }[] = [];
  context.on("request", (request) => {
    const script = request.resourceType() === "script" || /\.m?js(?:\?|$)/u.test(request.url());
    if (script) asked.push({ came: now, request });
  });
  try {
    await page.addInitScript(watch);
    await page.goto(address);
    await page.getByRole("link", { name: "New box", exact: true }).waitFor();
    // What is asked for while nobody touches the page, it asks for by itself.
    now = "meanwhile";
    await page.waitForTimeout(3000);
    now = "way";
    await makeBox(page);
    await openQuestion(page, "shaft");
    await keyIn(page, "50");
    await keep(page);
    await page.getByRole("heading", { name: "How wide is the bore?" }).waitFor();
    await keyIn(page, "75");
    await ownDrawing(page);
    const drawnAt = (await page.evaluate("globalThis.drawnAt")) as number;
    await page.waitForTimeout(6000);
    return await Promise.all(
      asked.map(async ({ came, request }) => {
        const answered = await request.response();
        if (!answered) throw new Error("a script was asked for and did not come");
        const name = answered.url().replace(/^.*\//u, "");
        return {
          name,
          came: request.timing().startTime > drawnAt ? "after" : came,
          bytes: gzipSync(await answered.body(), { level: 9 }).length,
        };
      }),
    );
  } finally {
    await remove();
  }
}
