import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { probabilityBelow } from "./normal.ts";

// scipy.stats.norm.cdf, SciPy 1.17.1
const scipy = [
  [-8, 6.22096057427174e-16],
  [-3, 0.0013498980316300933],
  [-1.959963984540054, 0.025],
  [-1, 0.15865525393145707],
  [-0.5, 0.3085375387259869],
  [0.1, 0.539827837277029],
  [0.5, 0.6914624612740131],
  [1, 0.8413447460685429],
  [2, 0.9772498680518208],
  [3, 0.9986501019683699],
  [5, 0.9999997133484281],
  [7.5, 0.9999999999999681],
] as const;

against(
  {
    topic: "uncertainty",
    check: "Normal distribution",
    source: { source: "python-scipy", at: "stats.norm.cdf, version 1.17.1" },
    tolerance: "good to about 14 digits; beyond seven standard uncertainties to seven digits of a chance that is nil",
  },
  scipy.map(([z, theirs]) => ({
    what: `below ${z} standard uncertainties`,
    theirs,
    ours: () => probabilityBelow(10 + 0.2 * z, 10, 0.2),
    unit: "1",
    within: { relative: z === -8 ? 1e-7 : 1e-13 },
  })),
);

test("without uncertainty a limit is passed or not, and a limit met exactly has even odds", () => {
  expect(probabilityBelow(10.01, 10, 0)).toBe(1);
  expect(probabilityBelow(9.99, 10, 0)).toBe(0);
  expect(probabilityBelow(10, 10, 0)).toBe(0.5);
});

const z = fc.double({ min: -60, max: 60, noNaN: true });
property("probabilities lie between 0 and 1, and both sides of a limit make 1", [z], (x) => {
  const below = probabilityBelow(x, 0, 1);
  expect(below).toBeGreaterThanOrEqual(0);
  expect(below).toBeLessThanOrEqual(1);
  expect(below + probabilityBelow(-x, 0, 1)).toBeCloseTo(1, 13);
});
property("a higher limit is never less likely to hold", [z, fc.double({ min: 0, max: 10, noNaN: true })], (x, step) => {
  expect(probabilityBelow(x + step, 0, 1)).toBeGreaterThanOrEqual(probabilityBelow(x, 0, 1) - 1e-15);
});
