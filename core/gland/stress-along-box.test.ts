import fc from "fast-check";
import { expect, test } from "vitest";
import decay from "../../data/tables/stress-decay.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { found, refusalOf, warnings } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { anyPush, anyStack, MPa, mm, ring } from "../../testing/stacks.ts";
import type { Citation } from "../sources/index.ts";
import { inUnit, type Length, type Stress } from "../units/index.ts";
import { type Part, type Push, stressAlongBox } from "./index.ts";

const along = (given: Push) => found(stressAlongBox(given));
const inMPa = (stress: Stress) => inUnit("stress", stress, "MPa");

/** Shaft 50, bore 70, five rings of 10 mm, stress ratio 0.5, friction 0.1 on both walls. */
const five: Push = { shaft: mm(50), bore: mm(70), glandStress: MPa(0.5), parts: [1, 2, 3, 4, 5].map(() => ring(10, 0.5, 0.1, 0.1)) };

// The decay law worked out by hand for this box: b = 2 μK / s = 0.01 per mm.
against(
  {
    topic: "gland",
    check: "Axial stress after each of five rings, 0.5 MPa at the gland",
    source: { source: "mechanics", at: "σ e^(−2 μ K n) by hand, equal friction on both walls" },
    tolerance: "hand figures to four digits",
  },
  [0.5, 0.4524, 0.4094, 0.3704, 0.3352, 0.3033].map((theirs, n) => ({
    what: `after ${n} rings`,
    theirs,
    ours: () => inMPa(along(five).profile[n]?.axial ?? (Number.NaN as Stress)),
    unit: "MPa",
    within: { absolute: 5e-5 },
  })),
);

against(
  {
    topic: "gland",
    check: "Share that reaches the bottom, and mean stress, standing and turning",
    source: { source: "mechanics", at: "(1 − e^(−bL)) / (bL) by hand" },
    tolerance: "hand figures to four digits",
  },
  (
    [
      ["share at the bottom, standing", 0.6065, false, "share"],
      ["mean over gland stress, standing", 0.7869, false, "mean"],
      ["share at the bottom, turning", 0.747, true, "share"],
      ["mean over gland stress, turning", 0.8674, true, "mean"],
    ] as const
  ).map(([what, theirs, turning, member]) => ({
    what,
    theirs,
    ours: () => {
      const { share = Number.NaN, mean } = along({ ...five, turning });
      return member === "share" ? share : mean / five.glandStress;
    },
    unit: "1",
    within: { absolute: 5e-5 },
  })),
);

against(
  {
    topic: "gland",
    check: "Mean radial stress on a turning shaft, 0.5 MPa at the gland",
    source: { source: "mechanics", at: "K times the mean axial stress by hand, no axial friction on the shaft" },
    tolerance: "hand figure to four digits",
  },
  [
    {
      what: "K σ_m",
      theirs: 0.2168,
      ours: () => 0.5 * inMPa(along({ ...five, turning: true }).mean),
      unit: "MPa",
      within: { absolute: 5e-5 },
    },
  ],
);

const constant = decay.constant;
const single = (height: number): Push => ({
  shaft: mm(constant.d),
  bore: mm(constant.D),
  glandStress: MPa(constant.sigma0),
  parts: [ring(height, constant.K, constant.mu_s, constant.mu_h)],
});

against(
  {
    topic: "gland",
    check: "Axial stress along a box, against a differential equation solved numerically",
    source: decay.citation as Citation,
    tolerance: "the solver's own error, 1e-12 of the value",
  },
  [
    ...constant.x.slice(1).map((depth, index) => ({
      what: `at ${depth} mm`,
      theirs: constant.sigma[index + 1] ?? Number.NaN,
      ours: () => inMPa(along(single(depth)).atBottom),
      unit: "MPa",
      within: { relative: 1e-12 },
    })),
    {
      what: "friction torque on the shaft from the mean stress",
      theirs: constant.shaft_torque,
      ours: () => (constant.mu_s * constant.K * inMPa(along(single(constant.L)).mean) * constant.L * Math.PI * constant.d ** 2) / 2,
      unit: "N·mm",
      within: { relative: 1e-12 },
    },
  ],
);

/** A box whose ratio and friction follow the stress, as many thin parts, each with the values of the stress at its middle. */
function refined(count: number): Push["parts"] {
  const { sigma0, L, d, D } = decay.variable;
  const height = L / count;
  const parts: Part[] = [];
  const ratioAt = (stress: number) => 0.5 + 0.02 * stress;
  const shaftAt = (stress: number) => 0.06 + 0.1 / (1 + stress);
  let stress = sigma0;
  for (let n = 0; n < count; n++) {
    const slope = (at: number) => (-4 * ratioAt(at) * (shaftAt(at) * d + 0.12 * D) * at) / (D * D - d * d);
    const middle = stress + (slope(stress) * height) / 2;
    const part = ring(height, ratioAt(middle), shaftAt(middle), 0.12);
    parts.push(part);
    stress = inMPa(along({ shaft: mm(d), bore: mm(D), glandStress: MPa(stress), parts: [part] }).atBottom);
  }
  return parts;
}

// Ratio 0.5 + 0.02 σ and friction 0.06 + 0.1/(1 + σ), σ in MPa: the closed form holds in each thin part, the solver in all of it.
against(
  {
    topic: "gland",
    check: "Ratio and friction that change with the stress: a stack of 100 thin parts against the differential equation",
    source: decay.citation as Citation,
    tolerance: "what is left of cutting the box into 100 slices, 2e-6",
  },
  [20, 40, 60, 80, 100].map((count, index) => ({
    what: `at ${decay.variable.x[index + 1]} mm`,
    theirs: decay.variable.sigma[index + 1] ?? Number.NaN,
    ours: () =>
      inMPa(
        along({ shaft: mm(50), bore: mm(70), glandStress: MPa(10), parts: refined(100) }).profile[count]?.axial ?? (Number.NaN as Stress),
      ),
    unit: "MPa",
    within: { relative: 2e-6 },
  })),
);

test("twice as many thin parts come four times nearer to the solved equation", () => {
  const solved = decay.variable.sigma.at(-1) ?? Number.NaN;
  const error = (count: number) =>
    Math.abs(inMPa(along({ shaft: mm(50), bore: mm(70), glandStress: MPa(10), parts: refined(count) }).atBottom) - solved);
  for (const count of [5, 10, 20]) expect(error(count) / error(2 * count)).toBeGreaterThan(3.5);
});

property("the stress falls or stays from part to part, and never turns negative", [anyPush], (given) => {
  const { profile, mean, atBottom } = along(given);
  expect(profile.length).toBe(given.parts.length + 1);
  for (let n = 1; n < profile.length; n++) {
    expect(profile[n]?.axial).toBeLessThanOrEqual(profile[n - 1]?.axial ?? -1);
    expect(profile[n]?.depth).toBeCloseTo((profile[n - 1]?.depth ?? 0) + (given.parts[n - 1]?.height ?? 0), 12);
  }
  expect(atBottom).toBeGreaterThanOrEqual(0);
  expect(mean).toBeLessThanOrEqual(given.glandStress * (1 + 1e-12));
  expect(mean).toBeGreaterThanOrEqual(atBottom * (1 - 1e-12));
});

property("a turning shaft lets at least as much through as a standing one, everywhere", [anyPush], (given) => {
  const standing = along({ ...given, turning: false }).profile;
  const turning = along({ ...given, turning: true }).profile;
  for (let n = 0; n < standing.length; n++) expect(turning[n]?.axial).toBeGreaterThanOrEqual((standing[n]?.axial ?? 0) * (1 - 1e-12));
});

property(
  "where ratio times friction is the same on both walls, what a ring takes depends only on its height in sections, not on the diameter",
  [fc.double({ min: 5, max: 500, noNaN: true }), fc.double({ min: 2, max: 40, noNaN: true }), fc.double({ min: 0, max: 0.3, noNaN: true })],
  (shaft, section, friction) => {
    const { share = Number.NaN } = along({
      shaft: mm(shaft),
      bore: mm(shaft + 2 * section),
      glandStress: MPa(1),
      parts: [ring(section, 0.5, friction, friction)],
    });
    expect(share).toBeCloseTo(Math.exp(-2 * friction * 0.5), 9);
  },
);

property(
  "cutting a part in two changes nothing at the bottom and nothing in the mean",
  [anyPush, fc.nat(), fc.double({ min: 0.01, max: 0.99, noNaN: true })],
  (given, pick, at) => {
    const index = pick % given.parts.length;
    const parts = given.parts.flatMap((part, n) =>
      n === index
        ? [
            { ...part, height: (part.height * at) as Length },
            { ...part, height: (part.height * (1 - at)) as Length },
          ]
        : [part],
    );
    const whole = along(given);
    const cut = along({ ...given, parts });
    expect(cut.atBottom / whole.atBottom).toBeCloseTo(1, 9);
    expect(cut.mean / whole.mean).toBeCloseTo(1, 9);
  },
);

property(
  "where in the stack a lantern ring or spacer sits makes no odds to what reaches the bottom",
  [anyStack, fc.nat(), fc.nat()],
  (given, from, to) => {
    const lantern: Part = { ...ring(12, 0, 0, 0) };
    const put = (at: number) => [...given.parts.slice(0, at), lantern, ...given.parts.slice(at)];
    const push = (parts: readonly Part[]) => along({ ...given, glandStress: MPa(2), parts }).atBottom;
    const places = given.parts.length + 1;
    expect(push(put(from % places)) / push(put(to % places))).toBeCloseTo(1, 10);
    expect(push(put(from % places)) / push(given.parts)).toBeCloseTo(1, 10);
  },
);

property("twice the push is twice the stress everywhere", [anyPush], (given) => {
  const once = along(given);
  const twice = along({ ...given, glandStress: (2 * given.glandStress) as Stress });
  expect(twice.atBottom / once.atBottom).toBeCloseTo(2, 10);
  expect(twice.mean / once.mean).toBeCloseTo(2, 10);
});

property(
  "slackening is the push turned round: what reached the bottom, put at the gland of the upturned stack and held in, gives the push again",
  [anyPush],
  (given) => {
    const pushed = along(given);
    const parts = given.parts.toReversed();
    const back = along({ ...given, parts, glandStress: pushed.atBottom, movement: "slacken" });
    expect(back.atBottom / given.glandStress).toBeCloseTo(1, 9);
    expect(back.mean / pushed.mean).toBeCloseTo(1, 9);
  },
);

property(
  "after slackening no place carries more than before, and no less than the gland does now or before it did",
  [anyPush, fc.double({ min: 0.01, max: 1, noNaN: true })],
  (given, left) => {
    const now = (given.glandStress * left) as Stress;
    const slackened = along({ ...given, glandStress: now, glandStressBefore: given.glandStress, movement: "slacken" });
    const stressBefore = (depth: number) => {
      const at = along(given).profile.findIndex((point) => point.depth >= depth * (1 - 1e-12));
      return along(given).profile[at]?.axial ?? Number.NaN;
    };
    const bottom = along(given).atBottom;
    expect(slackened.atBottom).toBeLessThanOrEqual(bottom * (1 + 1e-9));
    expect(slackened.mean).toBeLessThanOrEqual(along(given).mean * (1 + 1e-9));
    for (let n = 1; n < slackened.profile.length; n++) {
      expect(slackened.profile[n]?.depth).toBeGreaterThan(slackened.profile[n - 1]?.depth ?? 0);
    }
    for (const { depth, axial } of slackened.profile) {
      expect(axial).toBeGreaterThanOrEqual(Math.min(now, stressBefore(depth)) * (1 - 1e-9));
    }
    expect(slackened.profile.at(-1)?.depth).toBeCloseTo(along(given).profile.at(-1)?.depth ?? Number.NaN, 12);
  },
);

test("slackened a little, the bottom keeps what it had; the stress peaks inside the box", () => {
  const before = MPa(0.5);
  const slackened = along({ ...five, glandStress: MPa(0.4), glandStressBefore: before, movement: "slacken" });
  const peak = Math.max(...slackened.profile.map((point) => point.axial));
  expect(slackened.atBottom / along(five).atBottom).toBeCloseTo(1, 12);
  // Both curves meet where one has risen and the other fallen to √(0.4 · 0.5).
  expect(inMPa(peak as Stress)).toBeCloseTo(Math.sqrt(0.4 * 0.5), 12);
});

// q is half of the axial stress at ratio 0.5: 0.25 MPa at the gland, 0.152 MPa at the bottom.
test("what presses on the walls is the ratio times the axial stress, and only rings press", () => {
  const parts = [ring(10, 0.5, 0.1, 0.1), ring(12, 0, 0, 0), ...five.parts.slice(1)];
  const { radial = [], profile } = along({ ...five, parts, radial: true });
  expect(radial.map(({ part }) => part)).toEqual([0, 2, 3, 4, 5]);
  expect(inMPa(radial[0]?.glandSide ?? (Number.NaN as Stress))).toBeCloseTo(0.25, 12);
  expect(inMPa(radial.at(-1)?.throatSide ?? (Number.NaN as Stress))).toBeCloseTo(0.1516, 4);
  for (const { part, from, to, throatSide } of radial) {
    expect(from).toBe(profile[part]?.depth);
    expect(to).toBe(profile[part + 1]?.depth);
    expect(throatSide).toBe(0.5 * (profile[part + 1]?.axial ?? Number.NaN));
  }
  expect(along(five).radial).toBeUndefined();
});

test("after slackening, too, the wall stress of a ring is read at the ring's own faces", () => {
  const { radial = [] } = along({ ...five, glandStress: MPa(0.4), glandStressBefore: MPa(0.5), movement: "slacken", radial: true });
  expect(radial.map(({ to }) => inUnit("length", to, "mm"))).toEqual([10, 20, 30, 40, 50].map((depth) => expect.closeTo(depth, 9)));
  expect(inMPa(radial.at(-1)?.throatSide ?? (Number.NaN as Stress))).toBeCloseTo(0.1516, 4);
});

test("how the rings were put in is asked for, and the answer says what it does not know", () => {
  expect(warnings(stressAlongBox(five), "gap")).toEqual(["seating-unknown"]);
  expect(warnings(stressAlongBox({ ...five, seating: "each-tamped" }))).toEqual(["seating-each-tamped"]);
  expect(warnings(stressAlongBox({ ...five, seating: "rammed" }))).toEqual(["seating-rammed"]);
  expect(warnings(stressAlongBox({ ...five, turning: true }))).toContain("turning-friction-around");
  expect(warnings(stressAlongBox({ ...five, movement: "slacken" }))).toEqual(["slackened-at-most", "slackened-friction-reversed"]);
});

test("slackened right off, or from nothing to nothing, there is no stress to hold in", () => {
  for (const before of [0.5, 0]) {
    const off = along({ ...five, glandStress: MPa(0), glandStressBefore: MPa(before), movement: "slacken" });
    expect(off).toMatchObject({ atBottom: 0, mean: 0 });
    expect(off.profile.length).toBe(6);
  }
  const known = stressAlongBox({ ...five, glandStressBefore: MPa(1), movement: "slacken" });
  expect(warnings(known)).toEqual(["slackened-friction-reversed"]);
  // The stress before is only looked at when slackening.
  expect(along({ ...five, glandStressBefore: MPa(0.1) })).toEqual(along(five));
});

test("ratio or friction beyond what is known of packings is flagged once, not once a ring", () => {
  const parts = five.parts.map((part) => ({ ...part, ratio: 0.2 }));
  expect(warnings(stressAlongBox({ ...five, parts }), "outside-validity")).toEqual(["outside-validity"]);
});

test("no push at all is an answer, without a share", () => {
  expect(along({ ...five, glandStress: 0 as Stress })).toMatchObject({ atBottom: 0, mean: 0 });
  expect(along({ ...five, glandStress: 0 as Stress }).share).toBeUndefined();
});

test("what cannot be is refused by the name of its field", () => {
  const bad = (change: Partial<Push>) => stressAlongBox({ ...five, ...change });
  const part = (change: Partial<Part>) => bad({ parts: [ring(10, 0.5, 0.1, 0.1), { ...ring(10, 0.5, 0.1, 0.1), ...change }] });
  for (const [answer, kind, input] of [
    [bad({ shaft: mm(70) }), "impossible", "bore"],
    [bad({ shaft: mm(0) }), "outside-range", "shaft"],
    [bad({ bore: Number.NaN as Length }), "outside-range", "bore"],
    [bad({ glandStress: MPa(-1) }), "outside-range", "glandStress"],
    [bad({ glandStress: Number.POSITIVE_INFINITY as Stress }), "outside-range", "glandStress"],
    [bad({ parts: [] }), "outside-range", "parts"],
    [part({ height: 0 as Length }), "outside-range", "parts[1].height"],
    [part({ ratio: -0.1 }), "outside-range", "parts[1].ratio"],
    [part({ ratio: 1.1 }), "outside-range", "parts[1].ratio"],
    [part({ frictionShaft: Number.NaN }), "outside-range", "parts[1].frictionShaft"],
    [part({ frictionBore: 2 }), "outside-range", "parts[1].frictionBore"],
    [bad({ movement: "slacken", glandStressBefore: MPa(0.1) }), "impossible", "glandStressBefore"],
  ] as const) {
    expect(refusalOf(answer)).toMatchObject({ kind, input });
  }
});

test("a box as thin as paper and as long as a leg has no stress left at the bottom, and no number breaks", () => {
  const thin = { shaft: mm(50), bore: mm(50.001), glandStress: MPa(1000), parts: [ring(1900, 1, 1, 1)] };
  expect(along(thin).atBottom).toBe(0);
  expect(Number.isFinite(along(thin).mean)).toBe(true);
  expect(refusalOf(stressAlongBox({ ...thin, movement: "slacken" }))).toMatchObject({ kind: "outside-range" });
});
