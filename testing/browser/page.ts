import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { inject } from "vitest";
import { browserWords } from "./find.ts";

/** Sizes of screen that every page has to suit. */
export const screens = {
  phone: { width: 360, height: 740 },
  tablet: { width: 1024, height: 768 },
  "tablet-upright": { width: 768, height: 1024 },
  desktop: { width: 1440, height: 900 },
} as const;

/** One device: a browser with a profile on disk, which outlives a killed browser. */
export class Device {
  readonly #profile = mkdtempSync(join(tmpdir(), "ringwright-device-"));
  #context: BrowserContext | undefined;
  /** What went wrong on any of its pages; a test that does not expect it looks here. */
  readonly faults: string[] = [];
  /** Addresses asked for that are not the server's. */
  readonly strangers: string[] = [];

  /** Opens the browser, again after it was killed, and a page in it. */
  async open(screen: keyof typeof screens = "phone"): Promise<Page> {
    this.#context ??= await chromium.launchPersistentContext(this.#profile, {
      executablePath: inject("browser"),
      args: [...browserWords],
      viewport: screens[screen],
      hasTouch: screen !== "desktop",
      acceptDownloads: true,
    });
    const page = this.#context.pages()[0] ?? (await this.#context.newPage());
    page.on("pageerror", (error) => this.faults.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error" && !/ERR_CONNECTION_REFUSED|Failed to load resource/u.test(message.text()))
        this.faults.push(message.text());
    });
    page.on("request", (request) => {
      if (!/^(?:http:\/\/127\.0\.0\.1:\d+\/|blob:|data:)/u.test(request.url())) this.strangers.push(request.url());
    });
    return page;
  }

  /** Ends the whole browser as a dead battery would. */
  async kill(): Promise<void> {
    const context = this.#context;
    this.#context = undefined;
    if (!context) return;
    const session = await context.browser()?.newBrowserCDPSession();
    // The browser is gone before it could answer.
    await Promise.race([session?.send("Browser.crash").catch(() => undefined), new Promise((resolve) => setTimeout(resolve, 2000))]);
    await context.close().catch(() => undefined);
  }

  async remove(): Promise<void> {
    await this.#context?.close();
    rmSync(this.#profile, { recursive: true, force: true });
  }
}
