import type { TestProject } from "vitest/node";
import { findBrowser } from "./find.ts";

declare module "vitest" {
  interface ProvidedContext {
    readonly browser: string;
  }
}

/** Finds the browser once for all browser tests, and says which. */
export default async function setup(project: TestProject): Promise<void> {
  const { path, how } = await findBrowser();
  process.stdout.write(`Browser tests run in ${path} (${how}).\n`);
  project.provide("browser", path);
}
