import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { coverageFactor } from "./coverage.ts";

const row = (degrees: number, p95: number, p99: number, digits: number) =>
  (
    [
      [p95, 95],
      [p99, 99],
    ] as const
  ).map(([theirs, percent]) => ({
    what: `${degrees} degrees of freedom, ${percent} %`,
    theirs,
    ours: () => coverageFactor(degrees, percent),
    unit: "1",
    within: { absolute: 0.5 * 10 ** -digits + 1e-9 },
  }));

against(
  {
    topic: "uncertainty",
    check: "Coverage factors of Student's t",
    source: { source: "jcgm-100-2008", at: "table G.2", seen: "memory" },
    tolerance: "half a unit of the last printed digit",
  },
  [
    ...row(1, 12.71, 63.66, 2),
    ...row(2, 4.3, 9.92, 2),
    ...row(3, 3.18, 5.84, 2),
    ...row(5, 2.57, 4.03, 2),
    ...row(10, 2.23, 3.17, 2),
    ...row(16, 2.12, 2.92, 2),
    ...row(20, 2.09, 2.85, 2),
    ...row(30, 2.04, 2.75, 2),
    ...row(50, 2.01, 2.68, 2),
    ...row(100, 1.984, 2.626, 3),
    ...row(Number.POSITIVE_INFINITY, 1.96, 2.576, 3),
  ],
);

test("degrees of freedom that are no whole number are cut down, never rounded up", () => {
  expect(coverageFactor(16.99, 99)).toBe(coverageFactor(16, 99));
  expect(coverageFactor(0.3)).toBe(coverageFactor(1));
});

property(
  "the more readings stand behind it, the narrower the interval, down to the normal one",
  [fc.double({ min: 0.1, max: 1e6, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true })],
  (degrees, times) => {
    for (const percent of [95, 99] as const) {
      expect(coverageFactor(degrees * times, percent)).toBeLessThanOrEqual(coverageFactor(degrees, percent));
      expect(coverageFactor(degrees, percent)).toBeGreaterThan(coverageFactor(Number.POSITIVE_INFINITY, percent));
    }
    expect(coverageFactor(degrees, 99)).toBeGreaterThan(coverageFactor(degrees, 95));
  },
);
