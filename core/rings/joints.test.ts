import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { joints } from "./joints.ts";

function hours(rings: number, first?: number, step?: number): readonly number[] {
  const answer = joints({ rings, ...(first === undefined ? {} : { first }), ...(step === undefined ? {} : { step }) });
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value.joints;
}

test("joints go to 12, 3, 6, 9 and round again, seen facing the follower", () => {
  expect(hours(5)).toEqual([12, 3, 6, 9, 12]);
  expect(hours(1)).toEqual([12]);
  expect(hours(8)).toEqual([12, 3, 6, 9, 12, 3, 6, 9]);
});

// 120° as a Japanese marine text has it (Nippon Foundation, section 206).
test("at 120° three rings share the clock: 12, 4, 8", () => {
  expect(hours(4, 12, 4)).toEqual([12, 4, 8, 12]);
});

/** Degrees from one clock hour to another the shorter way, from their directions on the dial. */
function apart(one: number, other: number): number {
  const point = (hour: number) => [Math.sin((hour * Math.PI) / 6), Math.cos((hour * Math.PI) / 6)] as const;
  const [a, b] = [point(one), point(other)];
  return (Math.acos(Math.max(-1, Math.min(1, a[0] * b[0] + a[1] * b[1]))) * 180) / Math.PI;
}

// Axial-flow pump maker's manual, p. 80: 90 to 120°; FSA 2016: 90 to 180°.
property(
  "neighbouring joints are 90 to 180° apart and every hour is on the clock, for any count, start and step",
  [fc.integer({ min: 2, max: 100 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 3, max: 6 })],
  (rings, first, step) => {
    const found = hours(rings, first, step);
    expect(found).toHaveLength(rings);
    expect(found[0]).toBe(first);
    for (const [k, hour] of found.entries()) {
      expect(hour).toBeGreaterThanOrEqual(1);
      expect(hour).toBeLessThanOrEqual(12);
      const before = found[k - 1];
      if (before !== undefined) expect(apart(before, hour)).toBeGreaterThan(90 - 1e-4);
    }
  },
);

test("no rings, an hour off the clock and joints closer than 90° are refused by name", () => {
  for (const [question, input] of [
    [{ rings: 0 }, "rings"],
    [{ rings: Number.NaN }, "rings"],
    [{ rings: 5, first: 0 }, "first"],
    [{ rings: 5, first: 13 }, "first"],
    [{ rings: 5, step: 2 }, "step"],
    [{ rings: 5, step: 7 }, "step"],
  ] as const) {
    expect(joints(question)).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
});
