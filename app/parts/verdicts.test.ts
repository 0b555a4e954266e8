import type { Verdict } from "@ringwright/core/condition";
import { answerOf, plan } from "@ringwright/core/plan";
import { parseQuantity, quantity } from "@ringwright/core/units";
import { readAllFacts } from "@ringwright/data";
import { english } from "@ringwright/words";
import { expect, test } from "vitest";
import { readLimit } from "./read-limit.ts";
import { fieldOf, mayHaveLimit, rulerOf } from "./ruler-of.ts";

const facts = readAllFacts();
const mm = (value: number) => quantity("length", value, "mm");
const found = plan(
  {
    motion: "turning",
    shaft: { readings: [mm(50)] },
    bore: { readings: [mm(75)] },
    condition: {
      critical: true,
      runout: mm(0.06),
      houseLimits: [{ item: "runout", value: mm(0.075), setBy: "reliability engineer (invented)" }],
      sightings: { scoring: "scored" },
    },
  },
  facts,
);
const verdicts = (found.ok && answerOf(found.value.box.condition)?.verdicts) || [];
const verdict = (id: string): Verdict => {
  const one = verdicts.find((each) => each.id === id);
  if (!one) throw new Error(`nothing is said about ${id}`);
  return one;
};

test("a ruler carries every limit of the verdict, the site's own, and what was measured", () => {
  const ruler = rulerOf(verdict("runout"));
  // ISO 9908:1993 gives 80 µm for shafts of 50 to 100 mm; the others go by inches.
  expect(ruler?.limits).toContainEqual({ value: expect.closeTo(0.00008, 12), source: { id: "opinion-by-iso-9908-1993" } });
  expect(ruler?.limits).toHaveLength(verdict("runout").limits.length);
  expect(ruler?.house).toEqual({ value: expect.closeTo(0.000075, 12), setBy: "reliability engineer (invented)" });
  expect(ruler?.measured?.value).toBeCloseTo(0.00006, 12);
});

test("what was looked at and not measured has no ruler", () => {
  expect(rulerOf(verdict("sleeve-scoring"))).toBeUndefined();
});

test("every source of a published limit has a short name, for a ruler on a phone", () => {
  const sources = new Set(facts.condition.flatMap(({ limits }) => limits.map(({ source }) => source)));
  expect(sources.size).toBeGreaterThan(5);
  expect([...sources].filter((source) => (english.sentences[`opinion-by-${source}`] ?? "x".repeat(99)).length > 24)).toEqual([]);
});

test("every judged point leads to where it is measured or looked at", () => {
  expect(verdicts.map(({ id }) => fieldOf(id, facts)).every((field) => field !== undefined)).toBe(true);
  expect(fieldOf("runout", facts)).toBe("condition.runout");
  expect(fieldOf("box-depth", facts)).toBe("depth");
  expect(fieldOf("nuts-free", facts)).toBe("condition.sightings.nutsFree");
});

test("a site can set a limit where there is a figure to hold against it", () => {
  expect(["runout", "sleeve-hardness", "nuts-free"].map((id) => mayHaveLimit(id, facts))).toEqual(["m", "1", undefined]);
});

test("a limit is read with its unit, a hardness without; what is neither is not taken", () => {
  const read = (typed: string, unit: "m" | "1") => readLimit(typed, unit, (text) => parseQuantity(text, "length", "mm"));
  expect(read("0.003 in", "m")).toEqual({ value: expect.closeTo(0.0000762, 12), unit: "m", typed: "0.003 in" });
  expect(read("0,05", "m")).toMatchObject({ value: expect.closeTo(0.00005, 12) });
  expect(read("250", "1")).toBe(250);
  for (const nonsense of ["", "soon", "0 mm", "-1 mm", "2 bar"]) expect(read(nonsense, "m")).toBeUndefined();
  for (const nonsense of ["", "hard", "0", "250 HB"]) expect(read(nonsense, "1")).toBeUndefined();
});
