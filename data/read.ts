import { readFileSync } from "node:fs";
import type { BoxPressureFacts } from "@ringwright/core/flush";
import type { ExpansionTable } from "@ringwright/core/heat";

/** Finds data/ from here or from dist/ and reads one file of facts. */
export function readFacts<T>(path: string): T {
  const here = new URL(import.meta.url.includes("/dist/") ? "../" : "./", import.meta.url);
  return JSON.parse(readFileSync(new URL(path, here), "utf8")) as T;
}

/** Reads every file of facts. */
export function readAllFacts() {
  return {
    flush: { boxPressure: readFacts<BoxPressureFacts>("limits/box-pressure.json") },
    heat: { ptfeExpansion: readFacts<ExpansionTable>("tables/ptfe-expansion.json") },
  };
}
