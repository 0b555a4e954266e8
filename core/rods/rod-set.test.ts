import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { found, refusalOf, warnings } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { type GaugePressure, inUnit, type Length, quantity } from "../units/index.ts";
import { type RodSetGiven, rodSet } from "./index.ts";

const facts = readAllFacts().rods;
const mm = (value: number) => quantity("length", value, "mm");
const inch = (value: number) => quantity("length", value, "in");

const plunger: RodSetGiven = { rod: mm(60), bore: mm(80), stroke: mm(120), rings: 4, lubricated: true, service: "liquid" };
const answer = (change: Partial<RodSetGiven>) => rodSet({ ...plunger, ...change }, facts);
const set = (change: Partial<RodSetGiven>) => found(answer(change));

against(
  {
    topic: "rods",
    check: "How far a gas rod may be worn below its size",
    source: { source: "undersize-rods-page", at: "0.002 in per inch; 0.003 in in all over about 1000 psi" },
    tolerance: "exact",
  },
  (
    [
      [1, 500, 0.002],
      [2, 500, 0.004],
      [3, 999, 0.006],
      [1, 1500, 0.002],
      [3, 1500, 0.003],
    ] as const
  ).map(([rod, pressure, theirs]) => ({
    what: `${rod} in rod at ${pressure} psi`,
    theirs,
    ours: () => {
      const found = set({
        rod: inch(rod),
        bore: inch(rod + 1),
        rodSmallest: inch(rod - 0.001),
        service: "gas",
        pressure: quantity("pressure", pressure, "psi"),
      });
      return inUnit("length", found.undersizeLimit ?? (Number.NaN as Length), "in");
    },
    unit: "in",
    within: { absolute: 1e-12 },
  })),
);

against(
  {
    topic: "rods",
    check: "How much warmer than its liquid a box may be found",
    source: { source: "bloch-geitner-maintenance", at: "50 °F above the liquid" },
    tolerance: "printed as 28 K too",
  },
  [{ what: "rise", theirs: 28, ours: () => set({}).warmth, unit: "K", within: { absolute: 0.5 } }],
);

test("a set without a lubricator that is taller than the stroke is a limit; with one it is not", () => {
  const tall = { stroke: mm(35) };
  expect(set({ ...tall, lubricated: false }).withinStroke).toBe(false);
  expect(warnings(answer({ ...tall, lubricated: false }), "limit")).toEqual(["rod-set-over-stroke"]);
  expect(set({ ...tall, lubricated: true }).withinStroke).toBe(true);
  expect(warnings(answer({ ...tall, lubricated: true }), "limit")).toEqual([]);
});

test("three to five sections are usual; twelve rings and two rings are not", () => {
  for (const rings of [3, 4, 5]) expect(warnings(answer({ rings }), "limit")).toEqual([]);
  expect(warnings(answer({ rings: 12 }), "limit")).toEqual(["rod-set-tall"]);
  expect(warnings(answer({ rings: 2 }), "limit")).toEqual(["rod-set-low"]);
});

test("a worn rod makes the section larger, and past its limit it is said", () => {
  expect(inUnit("length", set({}).section, "mm")).toBeCloseTo(10, 9);
  expect(set({}).undersize).toBeUndefined();
  expect(inUnit("length", set({ rodSmallest: mm(59) }).section, "mm")).toBeCloseTo(10.5, 9);
  expect(inUnit("length", set({ rodSmallest: mm(59) }).undersize ?? mm(0), "mm")).toBeCloseTo(1, 9);
  // 3/32 in is 2.38 mm.
  expect(warnings(answer({ rodSmallest: mm(57.7) }), "limit")).toEqual([]);
  expect(warnings(answer({ rodSmallest: mm(57.5) }), "limit")).toEqual(["rod-too-thin"]);
  expect(warnings(answer({ rodSmallest: mm(59.9), service: "gas" }), "limit")).toEqual(["rod-too-thin"]);
});

test("with the pressure not said, the tighter limit of a gas rod holds", () => {
  const gas = { rod: inch(3), bore: inch(4), rodSmallest: inch(2.999), service: "gas" } as const;
  expect(inUnit("length", set(gas).undersizeLimit ?? mm(0), "in")).toBeCloseTo(0.003, 12);
});

property(
  "sliding force is contact stress times area, with the stress falling towards the bottom by friction on the bore",
  [
    fc.double({ min: 0.1, max: 20, noNaN: true }),
    fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    fc.double({ min: 0.01, max: 0.2, noNaN: true }),
    fc.double({ min: 0.01, max: 0.2, noNaN: true }),
  ],
  (stress, ratio, frictionRunning, frictionBore) => {
    const glandStress = quantity("stress", stress, "MPa");
    const { friction = Number.NaN } = set({ glandStress, ratio, frictionRunning, frictionBore });
    // F = μ K σ π d (1 − e^(−bL)) / b, b = 4 K μ_b D / (D² − d²), lengths in m.
    const b = (4 * ratio * frictionBore * 0.08) / (0.08 ** 2 - 0.06 ** 2);
    const expected = (frictionRunning * ratio * glandStress * Math.PI * 0.06 * (1 - Math.exp(-b * 0.04))) / b;
    expect(friction / expected).toBeCloseTo(1, 9);
  },
);

test("without all four of stress, ratio and frictions there is no sliding force, and nothing is made up", () => {
  expect(set({ ratio: 0.5, frictionRunning: 0.1, frictionBore: 0.1 }).friction).toBeUndefined();
});

test("what cannot be is refused by the name of its field", () => {
  for (const [change, kind, input] of [
    [{ rod: mm(0) }, "outside-range", "rod"],
    [{ bore: mm(60) }, "impossible", "bore"],
    [{ bore: Number.NaN as Length }, "outside-range", "bore"],
    [{ stroke: mm(0) }, "outside-range", "stroke"],
    [{ rings: 0 }, "outside-range", "rings"],
    [{ ringHeight: mm(0) }, "outside-range", "ringHeight"],
    [{ lanternHeight: mm(-1) }, "outside-range", "lanternHeight"],
    [{ pressure: -1 as GaugePressure }, "outside-range", "pressure"],
    [{ rodSmallest: mm(61) }, "outside-range", "rodSmallest"],
    [{ glandStress: quantity("stress", 1, "MPa"), ratio: 1.5, frictionRunning: 0.1, frictionBore: 0.1 }, "outside-range", "ratio"],
    [{ glandStress: quantity("stress", -1, "MPa"), ratio: 0.5, frictionRunning: 0.1, frictionBore: 0.1 }, "outside-range", "glandStress"],
  ] as const) {
    expect(refusalOf(answer(change))).toMatchObject({ kind, input });
  }
});
