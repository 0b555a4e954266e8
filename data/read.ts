import { readFileSync } from "node:fs";

/** Finds data/ from here or from dist/ and reads one file of facts. */
export function readFacts<T>(path: string): T {
  const here = new URL(import.meta.url.includes("/dist/") ? "../" : "./", import.meta.url);
  return JSON.parse(readFileSync(new URL(path, here), "utf8")) as T;
}

/** Reads every file of facts. */
export function readAllFacts() {
  return {};
}
