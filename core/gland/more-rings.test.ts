import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { found, refusalOf, warnings } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { MPa, mm, ring } from "../../testing/stacks.ts";
import { moreRings, stressAlongBox } from "./index.ts";

const box = { shaft: mm(50), bore: mm(70), ringHeight: mm(10), rings: 7, otherRings: 5, frictionBore: 0.1, frictionShaft: 0.1 };
/** Same friction on both walls, so that ratio times friction is what is asked for. */
const withProduct = (product: number) => ({ ...box, ratio: 0.9, frictionShaft: product / 0.9, frictionBore: product / 0.9 });

// Remaining share of the gland stress after n rings, e^(−2 μ K n), by hand.
against(
  {
    topic: "gland",
    check: "Share of the gland stress left after rings of equal ratio times friction",
    source: { source: "mechanics", at: "e^(−2 μ K n) by hand" },
    tolerance: "hand figures to three digits",
  },
  (
    [
      [0.02, 5, 0.819],
      [0.02, 10, 0.67],
      [0.05, 3, 0.741],
      [0.05, 8, 0.449],
      [0.1, 5, 0.368],
      [0.1, 7, 0.247],
      [0.2, 4, 0.202],
      [0.2, 10, 0.018],
    ] as const
  ).map(([product, rings, theirs]) => ({
    what: `${rings} rings, ratio times friction ${product}`,
    theirs,
    ours: () => found(moreRings({ ...withProduct(product), rings })).share,
    unit: "1",
    within: { absolute: 5e-4 },
  })),
);

// The maker says that going from 7 rings to 5 can cut the needed gland stress by more than half.
against(
  {
    topic: "gland",
    check: "Seven rings instead of five ask for twice the gland stress where ratio times friction is 0.173",
    source: { source: "packing-maker-answer", at: "fewer rings, stiff rough packing" },
    tolerance: "at the threshold; more only above it",
  },
  [
    {
      what: "needed, times",
      theirs: 2,
      ours: () => 1 / found(moreRings(withProduct(0.1733))).needed,
      unit: "1",
      within: { relative: 1e-3 },
    },
  ],
);

test("two rings fewer halve the gland stress only for a rough packing; usual ones gain a fifth", () => {
  expect(1 / found(moreRings(withProduct(0.2))).needed).toBeGreaterThan(2);
  expect(1 / found(moreRings(withProduct(0.05))).needed).toBeLessThan(1.25);
});

property(
  "what is said of n rings is what a stack of n rings does",
  [
    fc.integer({ min: 1, max: 12 }),
    fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    fc.double({ min: 0, max: 0.25, noNaN: true }),
    fc.boolean(),
  ],
  (rings, ratio, friction, turning) => {
    const { share, otherShare } = found(
      moreRings({
        shaft: box.shaft,
        bore: box.bore,
        ringHeight: box.ringHeight,
        rings,
        ratio,
        frictionShaft: friction,
        frictionBore: 0.1,
        turning,
      }),
    );
    const stack = (count: number) =>
      found(
        stressAlongBox({
          shaft: box.shaft,
          bore: box.bore,
          glandStress: MPa(1),
          parts: Array.from({ length: count }, () => ring(10, ratio, friction, 0.1)),
          turning,
        }),
      ).share;
    expect(share).toBeCloseTo(stack(rings) ?? Number.NaN, 12);
    expect(otherShare).toBeCloseTo(stack(rings + 1) ?? Number.NaN, 12);
    expect(otherShare).toBeLessThanOrEqual(share);
  },
);

test("adding a ring says that it does not make the box tighter; taking two away does not", () => {
  expect(warnings(moreRings({ ...withProduct(0.05), rings: 5, otherRings: 6 }))).toContain("more-rings-not-tighter");
  expect(warnings(moreRings(withProduct(0.05)))).not.toContain("more-rings-not-tighter");
});

test("no rings, half a metre of them or a ring without height is refused by name", () => {
  for (const [change, input] of [
    [{ rings: 0 }, "rings"],
    [{ rings: 101, otherRings: 5 }, "rings"],
    [{ otherRings: 0 }, "otherRings"],
    [{ ringHeight: mm(0) }, "ringHeight"],
    [{ ratio: 1.5 }, "ratio"],
    [{ frictionShaft: -0.1 }, "frictionShaft"],
    [{ frictionBore: Number.NaN }, "frictionBore"],
  ] as const) {
    expect(refusalOf(moreRings({ ...withProduct(0.05), ...change }))).toMatchObject({ kind: "outside-range", input });
  }
});
