import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { type Angle, formatNumber, formatQuantity, quantity } from "./index.ts";

test("lengths are shown in the reader's unit, rounded to the tool in the hand", () => {
  expect(formatQuantity("length", quantity("length", 188.4956, "mm"), { decimals: 0 })).toBe("188\u00a0mm");
  expect(formatQuantity("length", quantity("length", 1.75, "in"), { system: "inch", digits: 4 })).toBe("1.750\u00a0in");
});

test("a number below one keeps its leading zero, nothing shows as minus nought, and groups are set off by a thin space", () => {
  expect(formatNumber(0.5, 1)).toBe("0.5");
  expect(formatNumber(-0.04, 1)).toBe("0.0");
  expect(formatNumber(-1.25, 2)).toBe("−1.25");
  expect(formatNumber(1450, 0)).toBe("1450");
  expect(formatNumber(49400, 0)).toBe("49\u2009400");
});

property(
  "no number is shown starting with its decimal mark",
  [fc.double({ noNaN: true, min: -1e6, max: 1e6 }), fc.nat({ max: 6 })],
  (value, decimals) => {
    expect(formatNumber(value, decimals)).toMatch(/^−?\d/u);
  },
);

test("a number that the shown unit cannot hold is shown in SI, not as infinite", () => {
  expect(formatQuantity("angle", -1e307 as Angle, { digits: 3 })).toBe("−1e+307\u00a0rad");
  expect(formatQuantity("angle", 1 as Angle, { decimals: 1 })).toBe("57.3°");
});
