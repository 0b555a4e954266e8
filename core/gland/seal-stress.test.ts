import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { found, refusalOf, warnings } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { anyStack, mm, ring } from "../../testing/stacks.ts";
import { type GaugePressure, inUnit, quantity, type Stress } from "../units/index.ts";
import { sealStress, stressAlongBox } from "./index.ts";

const bar = (value: number) => quantity("pressure", value, "bar");
const rings = (count: number, friction: number) => ({
  shaft: mm(50),
  bore: mm(70),
  parts: Array.from({ length: count }, () => ring(10, 0.5, friction, friction)),
});

// Pressure over ratio, and that times e^(2 μ K n), by hand.
against(
  {
    topic: "gland",
    check: "Gland stress that would hold the pressure: at the first ring, and at the last of five",
    source: { source: "mechanics", at: "p / K and (p / K) e^(2 μ K n) by hand" },
    tolerance: "hand figures to three digits",
  },
  (
    [
      [3, 0.04, 0.6, 0.73],
      [3, 0.1, 0.6, 0.99],
      [10, 0.04, 2, 2.44],
      [10, 0.1, 2, 3.3],
      [10, 0.2, 2, 5.44],
      [16, 0.2, 3.2, 8.7],
    ] as const
  ).flatMap(([pressure, friction, lower, upper]) => {
    const answer = () => found(sealStress({ ...rings(5, friction), pressure: bar(pressure), motion: "rising-stem" }));
    const what = `${pressure} bar, ratio times friction ${friction / 2}`;
    return [
      { what: `${what}, first ring`, theirs: lower, ours: () => inUnit("stress", answer().lower, "MPa") },
      { what: `${what}, last ring`, theirs: upper, ours: () => inUnit("stress", answer().upper, "MPa") },
    ].map((row) => ({ ...row, unit: "MPa", within: { absolute: 0.005 } }));
  }),
);

against(
  {
    topic: "gland",
    check: "Gland stress over pressure for five rings, ratio 0.5 and friction 0.1",
    source: { source: "mechanics", at: "e^0.5 / 0.5 by hand" },
    tolerance: "hand figure to four digits",
  },
  [
    {
      what: "last ring",
      theirs: 3.297,
      ours: () => found(sealStress({ ...rings(5, 0.1), pressure: bar(10), motion: "rising-stem" })).upper / bar(10),
      unit: "1",
      within: { absolute: 5e-4 },
    },
  ],
);

const sealing = anyStack.filter(({ parts }) => parts.some(({ ratio }) => ratio > 0));

property("the first ring seals no later than the last", [sealing, fc.double({ min: 0, max: 400, noNaN: true })], (stack, pressure) => {
  const { lower, upper } = found(sealStress({ ...stack, pressure: bar(pressure), motion: "rising-stem" }));
  expect(lower).toBeLessThanOrEqual(upper * (1 + 1e-12));
});

property(
  "at the upper stress every ring presses at least as hard as the pressure, right to its inner face",
  [sealing, fc.double({ min: 0.1, max: 400, noNaN: true })],
  (stack, pressure) => {
    const glandStress = found(sealStress({ ...stack, pressure: bar(pressure), motion: "rising-stem" })).upper;
    fc.pre(glandStress <= 1e9);
    const { profile } = found(stressAlongBox({ ...stack, glandStress: (glandStress * (1 + 1e-9)) as Stress }));
    for (const [index, { ratio }] of stack.parts.entries()) {
      if (ratio > 0) expect(ratio * (profile[index + 1]?.axial ?? 0)).toBeGreaterThanOrEqual(bar(pressure));
    }
  },
);

test("for a shaft that turns the answer says that it is no setting; for a stem it does not", () => {
  const given = { ...rings(5, 0.1), pressure: bar(10) };
  expect(warnings(sealStress({ ...given, motion: "turning" }))).toContain("seal-stress-standstill-only");
  expect(warnings(sealStress({ ...given, motion: "slow-agitator" }))).toContain("seal-stress-standstill-only");
  expect(warnings(sealStress({ ...given, motion: "rising-stem" }))).not.toContain("seal-stress-standstill-only");
});

test("where rings differ, the first to seal may lie deep in the box, and the last may be the one at the gland", () => {
  // A stiff ring at the gland, ratio 0.3, and a soft one below, ratio 0.9, no friction: 10 bar need 3.33 MPa at the first and 1.11 MPa at the second.
  const parts = [ring(10, 0.3, 0, 0), ring(10, 0.9, 0, 0)];
  const { lower, upper } = found(sealStress({ ...rings(0, 0), parts, pressure: bar(10), motion: "rising-stem" }));
  expect(inUnit("stress", lower, "MPa")).toBeCloseTo(1 / 0.9, 9);
  expect(inUnit("stress", upper, "MPa")).toBeCloseTo(1 / 0.3, 9);
});

test("a stack without a ring, and a pressure that is none, are refused by name", () => {
  const given = { ...rings(2, 0.1), pressure: bar(10), motion: "rising-stem" } as const;
  expect(refusalOf(sealStress({ ...given, parts: [ring(12, 0, 0, 0)] }))).toMatchObject({ kind: "impossible", input: "parts" });
  expect(refusalOf(sealStress({ ...given, bore: mm(50) }))).toMatchObject({ kind: "impossible", input: "bore" });
  expect(refusalOf(sealStress({ ...given, parts: [ring(10, 2, 0, 0)] }))).toMatchObject({ input: "parts[0].ratio" });
  for (const pressure of [-1, 1e9, Number.NaN]) {
    expect(refusalOf(sealStress({ ...given, pressure: pressure as GaugePressure }))).toMatchObject({
      kind: "outside-range",
      input: "pressure",
    });
  }
});
