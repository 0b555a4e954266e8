import { readFileSync } from "node:fs";
import { type Json, work } from "@ringwright/answers";
import { glandMoved, glandTravel, type Plan } from "@ringwright/core/plan";
import { inUnit, type Length } from "@ringwright/core/units";
import { readAllFacts } from "@ringwright/data";
import { say } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { property } from "../testing/property.ts";
import { boxMoved, boxOfPlan, drawBoxSection, pushOfPlan, roomToMove, toSvg } from "./index.ts";

const facts = readAllFacts();
const example = parse(readFileSync(new URL("../answers/examples/box.yaml", import.meta.url), "utf8")) as Record<string, Json>;

function planOf(survey: Record<string, Json>): Plan {
  const worked = work("plan", survey, facts);
  if ("malformed" in worked || !worked.found.ok) throw new Error(JSON.stringify(worked));
  return worked.found.value as Plan;
}

test("the example's plan is drawn as it was measured, with the set that was worked out", () => {
  const box = boxOfPlan(planOf(example), "Stock pump 2");
  if (!box) throw new Error("nothing to draw");
  const drawing = drawBoxSection(box);
  const stated = Object.fromEntries(
    drawing.dimensions.map(({ id, states, ink }) => [id, [Math.round(inUnit("length", states, "mm") * 10) / 10, ink]]),
  );
  expect(stated).toMatchObject({
    bore: [75, "measured"],
    depth: [92, "measured"],
    nose: [30, "measured"],
    "port-at": [31, "worked"],
    sleeve: [50, "measured"],
  });
  expect(drawing.parts.map(({ id }) => id)).toEqual(expect.arrayContaining(["ring-1", "lantern", "port", "follower", "stud"]));
  expect(drawing.notes).toEqual([]);
});

test("under the push stands what it rests on: stress ratio and friction, each within the spread that stands beside it", () => {
  const says = pushOfPlan(planOf(example))?.basis;
  const said = typeof says === "object" ? say(says) : "";
  const [ratio, ratioLow, ratioHigh, friction, low, high] = [...said.matchAll(/\d+(?:\.\d+)?/gu)].map(([number]) => Number(number));
  expect(said).toContain("weakly known");
  for (const [value = Number.NaN, least = Number.NaN, most = Number.NaN] of [
    [ratio, ratioLow, ratioHigh],
    [friction, low, high],
  ]) {
    expect(least).toBeLessThan(most);
    expect(value).toBeGreaterThanOrEqual(least);
    expect(value).toBeLessThanOrEqual(most);
  }
});

const known = new Set(["motion", "release", "shaft", "bore"]);
const parts = Object.keys(example).filter((name) => !known.has(name));

property(
  "whatever was not measured or not known, what is left of the box is drawn, over the whole way of its gland",
  [fc.subarray(parts)],
  (missing) => {
    const survey = Object.fromEntries(Object.entries(example).filter(([name]) => !missing.includes(name)));
    const plan = planOf(survey);
    const box = boxOfPlan(plan, "Stock pump 2");
    if (!box) return;
    const end = Math.min(glandTravel(plan)?.end ?? 0, roomToMove(box));
    for (const share of [0.5, 1]) {
      const moved = glandMoved(plan, (share * end) as Length);
      const drawing = moved && drawBoxSection(boxMoved(box, moved));
      expect(drawing?.notes.filter(({ id }) => id.startsWith("fault"))).toEqual([]);
    }
    const drawing = drawBoxSection(box);
    expect(drawing.notes.filter(({ id }) => id.startsWith("fault"))).toEqual([]);
    expect(drawing.shapes.length).toBeGreaterThan(0);
    expect(toSvg(drawing)).not.toMatch(/NaN|undefined/u);
  },
);
