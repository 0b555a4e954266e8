import type { Step } from "@ringwright/core/fit";
import { expect, test } from "vitest";
import { verdictOn } from "./verdict.ts";

const plain: Step = {
  id: "step-x",
  group: "fit",
  kind: "number",
  says: { id: "step-count-in" },
  measures: "length",
  items: [],
  blanks: [],
  choices: [],
  cautions: [],
  cannot: [],
  bridge: true,
  citations: [],
};
const ids = (step: Step, found: number, expected?: number) => verdictOn(step, found, expected).says.map(({ id }) => id);

/** A ring of 11 mm whose face is expected 70 mm from the box face: half a ring is 5.5 mm. */
const ring: Step = { ...plain, predicted: { kind: "length", value: 0.07 }, tolerance: { kind: "length", value: 0.0055 } };

test("a ring within half its height goes on, from half on it stops and says which way to look", () => {
  expect(verdictOn(ring, 0.0754)).toMatchObject({ tone: "fine" });
  expect(verdictOn(ring, 0.0646)).toMatchObject({ tone: "fine" });
  expect(ids(ring, 0.0755)).toContain("fitting-stop-deeper");
  expect(ids(ring, 0.0645)).toContain("fitting-stop-shallower");
  expect(verdictOn(ring, 0.0755).tone).toBe("stop");
  expect(verdictOn(ring, 0.0645).tone).toBe("stop");
});

test("the difference is found less expected, by what the job kept and not by what the plan says now", () => {
  expect(verdictOn(ring, 0.072).off).toBeCloseTo(0.002, 12);
  expect(verdictOn(ring, 0.072, 0.08).off).toBeCloseTo(-0.008, 12);
  expect(verdictOn(ring, 0.072, 0.08).tone).toBe("stop");
});

test("zero is nought and nothing else, under pressure or under vacuum", () => {
  const zero: Step = { ...plain, measures: "pressure", predicted: { kind: "pressure", value: 0 } };
  expect(verdictOn(zero, 0).tone).toBe("fine");
  for (const found of [1, -1, 40_000]) expect(ids(zero, found)).toEqual(["fitting-not-zero"]);
  expect(verdictOn(zero, 1).tone).toBe("stop");
});

test("a limit passed is said with the limit; a number within it goes on", () => {
  const most: Step = { ...plain, most: { kind: "length", value: 0.0005 } };
  const least: Step = { ...plain, least: { kind: "length", value: 0.003 } };
  expect(verdictOn(most, 0.0006)).toMatchObject({ tone: "look", says: [{ id: "fitting-over", with: { limit: { value: 0.0005 } } }] });
  expect(ids(most, 0.0005)).toEqual(["fitting-in-range"]);
  expect(ids(least, 0.0029)).toEqual(["fitting-under"]);
  expect(ids(least, 0.003)).toEqual(["fitting-in-range"]);
});

test("old rings fewer or more than expected are to be looked for", () => {
  const count: Step = { ...plain, measures: "count", predicted: { kind: "count", value: 4 } };
  expect(ids(count, 4)).toEqual(["fitting-fits"]);
  expect(verdictOn(count, 3)).toMatchObject({ tone: "look", says: [{ id: "fitting-count-less", with: { off: 1 } }] });
  expect(verdictOn(count, 6)).toMatchObject({ tone: "look", says: [{ id: "fitting-count-more", with: { off: 2 } }] });
});

test("where nothing was expected and there is no limit, nothing is said of the number", () => {
  expect(verdictOn(plain, 0.05)).toEqual({ tone: "fine", says: [] });
});
