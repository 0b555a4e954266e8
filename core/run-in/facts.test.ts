import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { anyCase } from "../../testing/any-case.ts";
import { fitSteps, stepGroups } from "../fit/index.ts";
import { runInPlan } from "./index.ts";

const facts = readAllFacts();
const listed = stepGroups.flatMap((group) => [...(facts.fit.groups[group] ?? []), ...(facts.runIn.groups[group] ?? [])]);
const settings = new Set([...facts.fit.settings, ...facts.runIn.settings].map((setting) => setting.id));

test("no step in the lists is out of reach: some box needs it, and so with every stop rule", () => {
  const cases = fc.sample(anyCase, { numRuns: 1500, seed: 20260101 });
  const met = new Set<string>();
  for (const given of cases) {
    for (const box of [
      { rings: 4 },
      { rings: 4, lanternAfter: 2, spacer: 0.01 as never, cut: "skive" as const, newShaft: "yes" as const },
    ]) {
      const fit = fitSteps({ ...given, ...box }, facts.fit, facts.cautions);
      if (fit.ok) for (const step of fit.value.steps) met.add(step.says.id);
    }
    const run = runInPlan(given, facts.runIn, facts.fit, facts.cautions);
    if (!run.ok) continue;
    for (const step of run.value.steps) met.add(step.says.id);
    for (const rule of run.value.stopRules) met.add(rule.id);
  }
  expect(listed.length).toBeGreaterThan(90);
  expect([...listed, ...facts.runIn.stopRules].map((fact) => fact.id).filter((id) => !met.has(id))).toEqual([]);
});

test("every step goes by settings that are there, and ids are used once", () => {
  const byBox = new Set(["first-wait", "interval", "move"]);
  for (const { id, wait, flats, rounds, most, least, at } of listed) {
    const named = [wait, flats, rounds, most, least, ...(at ?? [])].filter((name) => name !== undefined);
    expect(
      named.filter((name) => !settings.has(name) && !byBox.has(name)),
      id,
    ).toEqual([]);
  }
  for (const service of ["small", "normal", "slurry", "fire-pump"]) {
    for (const name of ["first-wait", "interval"]) expect(settings).toContain(`${name}-${service}`);
  }
  for (const rule of facts.runIn.stopRules)
    expect(
      Object.values(rule.shows ?? {}).filter((name) => !settings.has(name)),
      rule.id,
    ).toEqual([]);
  expect(settings.size).toBe(facts.fit.settings.length + facts.runIn.settings.length);
});

test("every setting lies within the spread that it shows, and names where it comes from", () => {
  for (const { id, use, low, high, citations } of [...facts.fit.settings, ...facts.runIn.settings]) {
    expect(use, id).toBeGreaterThanOrEqual(low);
    if (high !== undefined) expect(use, id).toBeLessThanOrEqual(high);
    expect(citations.length, id).toBeGreaterThan(0);
  }
});
