import { readFileSync } from "node:fs";
import { surveyField } from "@ringwright/answers";
import { fontFiles } from "@ringwright/card";
import { plan, type Survey } from "@ringwright/core/plan";
import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { addressOfFont } from "./fonts.ts";
import { figuresOf, fileName } from "./issued-figures.ts";

const { question } = JSON.parse(readFileSync(new URL("../../../answers/examples/plan.json", import.meta.url), "utf8"));
const read = surveyField.read(question, "", { typed: new Map() });
const found = read.ok ? plan(read.value as Survey, readAllFacts()) : undefined;
if (!found?.ok) throw new Error("the example has no plan");

test("a card's entry keeps each worked-out figure as it was printed, with the program's version, and fits into an entry", () => {
  const figures = figuresOf(found, "metric", "1.2.3");
  expect(figures).toMatchObject({ program: "1.2.3", units: "metric" });
  const text = JSON.stringify(figures);
  // Cut length of the example by Neale's rule for a square cut on a 50 mm bar of 12.5 mm stock: π (50 + 12.5) = 196 mm.
  expect(text).toContain("196");
  expect(text.length).toBeLessThan(60_000);
  expect(JSON.stringify(figuresOf(found, "inch", "1.2.3"))).not.toBe(text);
});

test("this page keeps every font file that the card asks for", () => {
  const files = Object.values(fontFiles).flat();
  expect(files.length).toBeGreaterThanOrEqual(10);
  expect(files.filter((file) => addressOfFont(file) === "")).toEqual([]);
});

test("a card's file is named for its box and its day, in letters that every file system takes", () => {
  expect(fileName("Stock pump 2, coupling-side box", "2031-04-30T14:05:09+02:00")).toBe("Stock-pump-2-coupling-side-box-2031-04-30.pdf");
  expect(fileName(" Пресс № 3/лев. ", "2031-04-30T14:05:09+02:00")).toBe("Пресс-3-лев-2031-04-30.pdf");
  expect(fileName("../…", "2031-04-30T14:05:09+02:00")).toBe("box-2031-04-30.pdf");
  expect(fileName(undefined, "2031-04-30T14:05:09+02:00")).toBe("box-2031-04-30.pdf");
});
