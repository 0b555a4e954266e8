import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { found, refusalOf } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { anyPush, MPa, mm, ring } from "../../testing/stacks.ts";
import { inUnit, type Stress } from "../units/index.ts";
import { type ElasticPart, shortening, stressAlongBox } from "./index.ts";

const soft = (part: ElasticPart, modulus = MPa(500)): ElasticPart => ({ ...part, modulus });

// One flat of M12, 0.2917 mm, on five rings of 10 mm is 0.583 % and, at 20 MPa, 0.117 MPa: worked out by hand, no wall friction.
against(
  {
    topic: "gland",
    check: "What one flat of M12 does to five frictionless rings of 10 mm with a modulus of 20 MPa",
    source: { source: "mechanics", at: "stress over modulus times height, by hand" },
    tolerance: "hand figure to three digits",
  },
  [
    {
      what: "shortening under 0.1167 MPa",
      theirs: 0.2917,
      ours: () => {
        const parts = [1, 2, 3, 4, 5].map(() => soft(ring(10, 0.5, 0, 0), MPa(20)));
        return inUnit("length", found(shortening({ shaft: mm(50), bore: mm(70), glandStress: MPa(0.11668), parts })).total, "mm");
      },
      unit: "mm",
      within: { absolute: 1e-4 },
    },
  ],
);

property("each ring gives by its own mean stress over its modulus", [anyPush], (given) => {
  const parts = given.parts.map((part) => soft(part, (10 * given.glandStress) as Stress));
  const { parts: each, total, carried } = found(shortening({ ...given, parts }));
  let glandStress = given.glandStress;
  for (const [index, part] of given.parts.entries()) {
    const alone = found(stressAlongBox({ ...given, glandStress, parts: [part] }));
    expect(each[index]).toBeCloseTo((alone.mean * part.height) / (10 * given.glandStress), 14);
    glandStress = alone.atBottom;
  }
  expect(total).toBeCloseTo(
    each.reduce((sum, one) => sum + one, 0),
    15,
  );
  expect(carried[0]).toBe(1);
  for (let n = 1; n < carried.length; n++) expect(carried[n]).toBeLessThanOrEqual(carried[n - 1] ?? 0);
});

property(
  "with one modulus for all rings, how far the movement reaches does not depend on it",
  [anyPush, fc.double({ min: 3, max: 1000, noNaN: true })],
  (given, times) => {
    const carried = (modulus: number) =>
      found(shortening({ ...given, parts: given.parts.map((part) => soft(part, (modulus * given.glandStress) as Stress)) })).carried;
    for (const [index, share] of carried(times).entries()) expect(share).toBeCloseTo(carried(5)[index] ?? Number.NaN, 9);
  },
);

test("a lantern ring does not give; what reaches it is what the rings below it give", () => {
  const parts = [soft(ring(10, 0.5, 0.1, 0.1)), ring(12, 0, 0, 0), soft(ring(10, 0.5, 0.1, 0.1)), soft(ring(10, 0.5, 0.1, 0.1))];
  const { parts: each, carried, total } = found(shortening({ shaft: mm(50), bore: mm(70), glandStress: MPa(1), parts }));
  expect(each[1]).toBe(0);
  expect(carried[1]).toBeCloseTo(((each[2] ?? 0) + (each[3] ?? 0)) / total, 12);
  // Three rings lose e^(−1/10) each: the share below the lantern is (q + q²)/(1 + q + q²).
  const q = Math.exp(-0.1);
  expect(carried[1]).toBeCloseTo((q + q * q) / (1 + q + q * q), 12);
});

test("a modulus that would squash a ring to less than half is refused by the ring's name", () => {
  const given = { shaft: mm(50), bore: mm(70), glandStress: MPa(10) };
  for (const modulus of [MPa(5), MPa(0), MPa(-1), Number.NaN as Stress]) {
    expect(
      refusalOf(shortening({ ...given, parts: [soft(ring(10, 0.5, 0.1, 0.1)), soft(ring(10, 0.5, 0.1, 0.1), modulus)] })),
    ).toMatchObject({ kind: "outside-range", input: "parts[1].modulus" });
  }
});

test("a box, a stack or a push that cannot be is refused by name", () => {
  const given = { shaft: mm(50), bore: mm(70), glandStress: MPa(1), parts: [soft(ring(10, 0.5, 0.1, 0.1))] };
  for (const [change, kind, input] of [
    [{ bore: mm(40) }, "impossible", "bore"],
    [{ parts: [soft(ring(0, 0.5, 0.1, 0.1))] }, "outside-range", "parts[0].height"],
    [{ glandStress: MPa(-1) }, "outside-range", "glandStress"],
    [{ glandStress: Number.NaN as Stress }, "outside-range", "glandStress"],
  ] as const) {
    expect(refusalOf(shortening({ ...given, ...change }))).toMatchObject({ kind, input });
  }
});

test("nothing given and no push: no shortening, and no share of nothing", () => {
  const given = { shaft: mm(50), bore: mm(70), glandStress: MPa(0), parts: [soft(ring(10, 0.5, 0.1, 0.1))] };
  expect(found(shortening(given))).toEqual({ parts: [0], total: 0, carried: [0] });
});
