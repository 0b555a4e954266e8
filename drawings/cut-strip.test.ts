import { inUnit, quantity } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import { expect, test } from "vitest";
import { property } from "../testing/property.ts";
import { shallowStrip, skiveStrip, squareStrip } from "./gallery/rings.ts";
import { drawCutStrip } from "./index.ts";
import { randomStrip } from "./testing/random-rings.ts";

property("both ends lean the same way by the same angle, so the ends meet when the strip is bent round", [randomStrip], (strip) => {
  const { shapes } = drawCutStrip(strip);
  const edges = shapes.filter(({ id }) => id === "strip" || id === "left-edge" || id === "right-edge");
  const section = inUnit("length", strip.section, "mm");
  const cuts = edges.flatMap(({ points, closed }) => {
    const around = closed ? [...points, points[0] ?? [0, 0]] : points;
    return around.slice(1).flatMap(([x, y], i) => {
      const [ax, ay] = around[i] ?? [0, 0];
      return Math.abs(Math.abs(y - ay) - section) < 1e-9 ? [Math.atan2(Math.abs(y - ay), (x - ax) * Math.sign(y - ay))] : [];
    });
  });
  expect(cuts).toHaveLength(2);
  for (const angle of cuts) expect(angle).toBeCloseTo(strip.angle, 9);
});

property("the strip is drawn as long as it says, on the mean line and tip to tip", [randomStrip], (strip) => {
  for (const { from, to, states, side } of drawCutStrip(strip).dimensions) {
    const span = side === "left" ? to[1] - from[1] : to[0] - from[0];
    expect(span).toBeCloseTo(inUnit("length", states, "mm"), 6);
  }
});

// 12.5 mm braid on a 50 mm sleeve: pi x 62.5 = 196.35 mm on the mean line; at 45 degrees the tips lie one section further apart (geometry).
test("a strip at 45 degrees is one section longer tip to tip than on its mean line", () => {
  const stated = Object.fromEntries(drawCutStrip(skiveStrip).dimensions.map(({ id, states }) => [id, inUnit("length", states, "mm")]));
  expect(stated.mean).toBeCloseTo(196.35, 2);
  expect((stated["tip-to-tip"] ?? 0) - (stated.mean ?? 0)).toBeCloseTo(12.5, 9);
});

test("the angle is told both ways, so that 30 from the length is not cut as 30 from square", () => {
  const notes = drawCutStrip(shallowStrip).notes.map(({ text }) => (typeof text === "string" ? text : say(text)));
  expect(notes[0]).toBe("30° from the strip's length is the same cut as 60° from square. Ask which one is meant.");
});

test("a square cut has one length and no angle to mistake", () => {
  const drawing = drawCutStrip(squareStrip);
  expect(drawing.dimensions.map(({ id }) => id)).toEqual(["section", "tip-to-tip"]);
  expect(drawing.labels).toEqual([]);
});

test("a length tip to tip that does not belong to the angle is not drawn", () => {
  const wrong = drawCutStrip({ ...skiveStrip, angle: quantity("angle", 30, "deg") });
  expect(wrong.shapes).toEqual([]);
  expect(wrong.notes[0]?.ink).toBe("attention");
  for (const change of [
    { section: quantity("length", 0, "mm") },
    { angle: quantity("angle", 1, "deg") },
    { length: quantity("length", Number.NaN, "mm") },
  ]) {
    expect(drawCutStrip({ ...skiveStrip, ...change }).shapes).toEqual([]);
  }
});
