import { readdirSync, readFileSync } from "node:fs";
import { sources } from "@ringwright/core/sources";
import { quantity } from "@ringwright/core/units";
import { expect, test } from "vitest";
import { inSi } from "./si.ts";

const here = new URL("./", import.meta.url);
const files = readdirSync(here, { recursive: true, encoding: "utf8" }).filter(
  (path) => path.endsWith(".json") && path.includes("/") && !path.startsWith("dist"),
);

/** Every value under a name, however deep. */
function under(name: string, fact: unknown): readonly unknown[] {
  if (typeof fact !== "object" || fact === null) return [];
  return Object.entries(fact).flatMap(([key, entry]) => [...(key === name ? [entry] : []), ...under(name, entry)]);
}

test("every source that a fact names is a source of the program", () => {
  expect(files.length).toBeGreaterThan(5);
  const named = files.flatMap((path) =>
    under("source", JSON.parse(readFileSync(new URL(path, here), "utf8"))).map((source) => ({ path, source })),
  );
  expect(named.length).toBeGreaterThan(30);
  expect(named.filter(({ source }) => typeof source === "string" && !Object.hasOwn(sources, source))).toEqual([]);
});

test("every file of facts says where its facts come from", () => {
  const without = files.filter((path) => {
    const text = JSON.parse(readFileSync(new URL(path, here), "utf8")) as unknown;
    return under("source", text).length === 0 && under("origin", text).length === 0 && under("made_by", text).length === 0;
  });
  expect(without).toEqual([]);
});

test("facts are printed in the units of their source and read in SI", () => {
  const read = inSi({
    limits: [{ value: [0.002, "in"], note: "as printed" }],
    wide: [
      [50, "mm"],
      [20, "degC"],
    ],
    plain: [1, 2],
    empty: null,
  });
  expect(read).toEqual({
    limits: [{ value: quantity("length", 0.002, "in"), note: "as printed" }],
    wide: [quantity("length", 50, "mm"), quantity("temperature", 20, "degC")],
    plain: [1, 2],
    empty: null,
  });
});

test("a unit that the program does not have stops the reading, with the value", () => {
  expect(() => inSi({ value: [3, "cubit"] })).toThrow("3 cubit");
});
