import { material } from "@ringwright/core/materials";
import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { wordsIn } from "../../parts/words.ts";
import { lineInWords } from "./line-in-words.ts";

const { materials: facts } = readAllFacts();
const lines = facts.styles.flatMap(({ id }) => {
  const found = material({ id }, facts);
  if (!found.ok) throw new Error(id);
  return found.value.lines;
});

test("every fact of every packing is said in words, in both systems, none of it as an id", () => {
  expect(facts.styles.length).toBeGreaterThan(20);
  for (const system of ["metric", "inch"] as const) {
    const odd = lines
      .map((line) => lineInWords(line, wordsIn(system)))
      .flatMap(({ label, value, notes }) => [label, value, ...notes])
      .filter((text) => /\{|\}|undefined|NaN|material-|\b[a-z]+-[a-z]+-[a-z]+\b|[a-z]_[a-z]/u.test(text));
    expect([...new Set(odd)]).toEqual([]);
  }
});

test("a temperature limit is told in degrees, with what the sources give", () => {
  const found = material({ id: "ramie-flax-ptfe" }, facts);
  if (!found.ok) throw new Error();
  const line = found.value.lines.find(({ property }) => property === "most-temperature-in-water");
  if (!line) throw new Error();
  expect(lineInWords(line, wordsIn("metric")).value).toMatch(/^\d+\s°C$/u);
  expect(lineInWords(line, wordsIn("inch")).value).toMatch(/^\d+\s°F$/u);
});

test("figures carry no noughts that only fill up", () => {
  const told = lines.map((line) => lineInWords(line, wordsIn("metric")).value);
  expect(told.filter((value) => /\d\.\d*0(?:\D|$)/u.test(value))).toEqual([]);
  expect(told).toContain("100\u00a0°C");
});

test("what is not known has no value, and is not given one", () => {
  const unknown = lines.filter(({ line }) => line.value === null && line.names === undefined && line.notLimiting === undefined);
  expect(unknown.length).toBeGreaterThan(10);
  for (const line of unknown) expect(lineInWords(line, wordsIn("metric")).value).toBe("");
});
