import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { type Length, quantity } from "../units/index.ts";
import { ringDepth } from "./index.ts";

const mm = (value: number): Length => quantity("length", value, "mm");
const verdict = (found: number, predicted: number, ringHeight: number) => {
  const answer = ringDepth({ found: mm(found), predicted: mm(predicted), ringHeight: mm(ringHeight) });
  return answer.ok ? answer.value.verdict : answer.refusal.input;
};

property(
  "a ring missing or doubled always stops the fitter; a millimetre of braid never does",
  [fc.integer({ min: 60, max: 200 }), fc.double({ min: 4, max: 25, noNaN: true })],
  (depth, height) => {
    expect(verdict(depth + height, depth, height)).toBe("stop");
    expect(verdict(depth - height, depth, height)).toBe("stop");
    expect(verdict(depth + 1, depth, height)).toBe("go-on");
    expect(verdict(depth - 1, depth, height)).toBe("go-on");
  },
);

test("half a ring is already too much", () => {
  expect(verdict(55, 50, 10)).toBe("stop");
  expect(verdict(54.9, 50, 10)).toBe("go-on");
});

test("a depth that no box has is refused by name", () => {
  expect(verdict(-1, 50, 10)).toBe("found");
  expect(verdict(50, Number.NaN, 10)).toBe("predicted");
  expect(verdict(50, 50, 0)).toBe("ringHeight");
  expect(verdict(50, 50, 1e308)).toBe("ringHeight");
});
