import { quantity } from "@ringwright/core/units";
import { expect, test } from "vitest";
import { property } from "../testing/property.ts";
import { joints } from "./gallery/rings.ts";
import { drawJointClock } from "./index.ts";
import { randomJoints } from "./testing/random-rings.ts";

test("12 is up, 3 is right, 6 is down, 9 is left, as one faces the follower", () => {
  const drawing = drawJointClock(joints);
  const middle = (id: string) => {
    const points = drawing.shapes.find((shape) => shape.id === id)?.points ?? [];
    return [0, 1].map((axis) => Math.sign(Math.round(points.reduce((sum, point) => sum + (point[axis] ?? 0), 0)))) as [number, number];
  };
  expect([middle("joint-12"), middle("joint-3"), middle("joint-6"), middle("joint-9")].map(([x, y]) => [x || 0, y || 0])).toEqual([
    [0, 1],
    [1, 0],
    [0, -1],
    [-1, 0],
  ]);
  expect(drawing.description.map(({ with: values }) => values?.rings)).toEqual([undefined, "1, 5", "2", "3", "4"]);
});

property("every ring has its number once, on the side where its joint lies", [randomJoints], (given) => {
  const { balloons } = drawJointClock(given);
  expect(balloons.map(({ text }) => Number(text)).sort((a, b) => a - b)).toEqual(given.joints.map(({ ring }) => ring));
  for (const { ring, clock } of given.joints) {
    const at = balloons.find(({ text }) => text === String(ring))?.at ?? [0, 0];
    const turn = (clock * Math.PI) / 6;
    expect(at[0]).toBeCloseTo((given.bore * 1000 * Math.sin(turn)) / 2, 9);
    expect(at[1]).toBeCloseTo((given.bore * 1000 * Math.cos(turn)) / 2, 9);
  }
});

test("no bore, or an hour past 12, and nothing is drawn but the reason", () => {
  const mm = (value: number) => quantity("length", value, "mm");
  for (const change of [
    { bore: mm(40) },
    { shaft: mm(Number.NaN) },
    { joints: [{ ring: 1, clock: 13 }] },
    { angle: quantity("angle", 0, "deg") },
  ]) {
    const drawing = drawJointClock({ ...joints, ...change });
    expect(drawing.shapes).toEqual([]);
    expect(drawing.notes).toHaveLength(1);
  }
});
