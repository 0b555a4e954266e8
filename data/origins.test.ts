import { readdirSync, readFileSync } from "node:fs";
import { sources } from "@ringwright/core/sources";
import { expect, test } from "vitest";

const files = readdirSync(new URL("./", import.meta.url), { recursive: true, encoding: "utf8" }).filter(
  (path) => path.endsWith(".json") && path.includes("/") && !path.startsWith("dist") && !path.includes("node_modules"),
);

/** Every `source` named anywhere in a file. */
function sourcesIn(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, entry]) => (name === "source" && typeof entry === "string" ? [entry] : sourcesIn(entry)));
}

const named = files.map((path) => [path, sourcesIn(JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8")))] as const);

test("facts name their sources", () => {
  expect(named.flatMap(([, list]) => list).length).toBeGreaterThan(100);
});

test("every source that a file of facts names is in the registry", () => {
  const lost = named.flatMap(([path, list]) =>
    list.filter((source) => !Object.hasOwn(sources, source)).map((source) => `${path}: ${source}`),
  );
  expect(lost).toEqual([]);
});
