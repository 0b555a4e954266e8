import { readFileSync } from "node:fs";
import { factsFrom } from "./assemble.ts";

/** Finds data/ from here or from dist/ and reads one file of facts. */
export function readFacts<T>(path: string): T {
  const here = new URL(import.meta.url.includes("/dist/") ? "../" : "./", import.meta.url);
  return JSON.parse(readFileSync(new URL(path, here), "utf8")) as T;
}

/** All facts from the files beside this one. */
export function readAllFacts() {
  return factsFrom(readFacts);
}
