import fc from "fast-check";
import { expect, test } from "vitest";
import { inUnit, quantity } from "../units/index.ts";
import { surfaceSpeed } from "./surface-speed.ts";

const speedOf = (d: number, dUnit: string, rpm: number) => {
  const answer = surfaceSpeed({ shaft: quantity("length", d, dUnit), rotation: quantity("rotation", rpm, "rpm") });
  return answer.ok ? answer.value.speed : Number.NaN;
};

// Packing makers' printed rule: feet per minute = 3.14 × inches × rpm / 12 (packing selection guide, introduction).
test("feet per minute as the printed shop rule gives them, within its rounded pi", () => {
  for (const [inches, rpm] of [
    [2, 1750],
    [1.875, 3550],
    [4, 900],
  ] as const) {
    const printed = (3.14 * inches * rpm) / 12;
    expect(Math.abs(inUnit("speed", speedOf(inches, "in", rpm) as never, "ft/min") / printed - 1)).toBeLessThan(6e-4);
  }
});

test("a shaft that does not turn has no surface speed", () => {
  expect(speedOf(50, "mm", 0)).toBe(0);
});

test("twice the shaft or twice the turns is twice the speed", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), fc.double({ min: 1, max: 20000, noNaN: true }), (mm, rpm) => {
      expect(speedOf(2 * mm, "mm", rpm) / speedOf(mm, "mm", rpm)).toBeCloseTo(2, 12);
      expect(speedOf(mm, "mm", 2 * rpm) / speedOf(mm, "mm", rpm)).toBeCloseTo(2, 12);
    }),
  );
});

test("no shaft, a negative or endless speed is refused by name", () => {
  for (const [shaft, rotation, input] of [
    [0, 10, "shaft"],
    [Number.NaN, 10, "shaft"],
    [0.05, -1, "rotation"],
    [0.05, Infinity, "rotation"],
  ] as const) {
    const answer = surfaceSpeed({ shaft: shaft as never, rotation: rotation as never });
    expect(answer).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
});
