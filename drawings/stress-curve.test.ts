import { inUnit, quantity } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import { expect, test } from "vitest";
import { property } from "../testing/property.ts";
import { push } from "./gallery/rings.ts";
import { drawStressCurve } from "./index.ts";
import { randomPush } from "./testing/random-rings.ts";

property("every point of a curve lies at its distance from the throat and at its share of the push", [randomPush], (given) => {
  const { shapes } = drawStressCurve(given);
  const [, top] = shapes.find(({ id }) => id === "whole")?.points[0] ?? [0, 0];
  for (const { motion, points } of given.curves) {
    const line = shapes.find(({ id }) => id === motion)?.points ?? [];
    expect(line).toHaveLength(points.length);
    for (const [i, { fromThroat, share }] of points.entries()) {
      expect(line[i]?.[0]).toBeCloseTo(inUnit("length", fromThroat, "mm"), 9);
      expect(line[i]?.[1]).toBeCloseTo(share * top, 9);
    }
  }
});

test("turning is drawn through and standing dashed, each named by what reaches the bottom ring", () => {
  const drawing = drawStressCurve(push);
  expect(drawing.shapes.filter(({ id }) => id === "turning" || id === "standing").map(({ layer }) => layer)).toEqual(["curve", "dashed"]);
  const said = drawing.labels
    .filter(({ place }) => place === "left")
    .map(({ lines }) => (typeof lines[0]?.text === "object" ? say(lines[0].text) : ""));
  // exp(-0.24 x 62.5 / 50) = 0.741 and exp(-0.4 x 62.5 / 50) = 0.607
  expect(said).toEqual(["turning 74%", "standing 61%"]);
});

test("rings are numbered under the curve where they lie, the lantern ring is named", () => {
  const drawing = drawStressCurve(push);
  expect(drawing.balloons.map(({ text, at }) => [text, at[0]])).toEqual([
    ["1", 6.25],
    ["2", 18.75],
    ["3", 47.25],
    ["4", 59.75],
    ["5", 72.25],
  ]);
  expect(drawing.labels.some(({ lines }) => lines.some(({ text }) => typeof text !== "string" && say(text) === "lantern"))).toBe(true);
});

test("a share beyond the whole push, or none at all, is not drawn", () => {
  const at = (share: number) => ({ fromThroat: quantity("length", 10, "mm"), share });
  for (const points of [[at(0.5), at(1.2)], [at(Number.NaN), at(1)], []]) {
    expect(drawStressCurve({ ...push, curves: [{ motion: "turning", points }] }).shapes).toEqual([]);
  }
  expect(drawStressCurve({ ...push, parts: [] }).shapes).toEqual([]);
});
