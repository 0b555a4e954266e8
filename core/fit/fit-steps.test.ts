import { readAllFacts } from "@ringwright/data";
import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { anyCase } from "../../testing/any-case.ts";
import { property } from "../../testing/property.ts";
import { english } from "../../words/en/index.ts";
import { isStem } from "../box/index.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type FitGiven, fitSteps, type Step, stepGroups } from "./index.ts";

const facts = readAllFacts();
const mm = (value: number): Length => quantity("length", value, "mm");

function stepsOf(given: FitGiven): readonly Step[] {
  const found = fitSteps(given, facts.fit, facts.cautions);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found.value.steps;
}

/** Any box about to be packed. */
const anyFit = fc
  .tuple(anyCase, fc.integer({ min: 1, max: 12 }), fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }), fc.boolean())
  .map(([given, rings, lantern, deep]): FitGiven => {
    const lanternAfter = lantern === undefined ? {} : { lanternAfter: Math.min(lantern, rings) };
    return {
      ...given,
      rings,
      ...lanternAfter,
      ...(deep ? { boxDepth: mm(400), ringHeight: mm(9), lanternWidth: mm(16), spacer: mm(12) } : {}),
    };
  });

property("kit before isolation, isolation before opening, and so on to the start, on every box", [anyFit], (given) => {
  const order = stepsOf(given).map((step) => stepGroups.indexOf(step.group));
  expect(order).toEqual([...order].sort((one, other) => one - other));
  expect(new Set(stepsOf(given).map((step) => step.id)).size).toBe(order.length);
});

property("every step has words, a source, reasons to tap, and cautions that are there", [anyFit], (given) => {
  for (const step of stepsOf(given)) {
    expect(allIds()).toContain(step.says.id);
    expect(step.citations.length, step.id).toBeGreaterThan(0);
    expect(step.cannot.at(-1)).toBe("other");
    for (const caution of step.cautions) expect(facts.cautions.cautions.map((fact) => fact.id)).toContain(caution);
    if (step.kind === "number") expect(step.measures, step.id).toBeDefined();
    if (step.kind === "choice") expect(step.choices.length, step.id).toBeGreaterThan(1);
  }
});

property("zero is proved before any nut moves, and the shaft turns by hand before it is started", [anyFit], (given) => {
  const ids = stepsOf(given).map((step) => step.id);
  expect(ids.indexOf("step-prove-zero")).toBeGreaterThan(0);
  expect(ids.indexOf("step-prove-zero")).toBeLessThan(ids.indexOf("step-slacken-evenly"));
  if (isStem(given.motion)) return;
  const byHand = given.motion === "stroking" ? "step-move-by-hand" : "step-turn-by-hand";
  expect(ids.indexOf(byHand)).toBeGreaterThan(0);
  expect(ids.indexOf(byHand)).toBeLessThan(ids.indexOf("step-start"));
  for (const before of ["step-guard-on", "step-all-clear"]) expect(ids.indexOf(before)).toBeLessThan(ids.indexOf("step-start"));
});

property("every ring is brought home once, from the throat, with the lantern ring in its place", [anyFit], (given) => {
  const home = stepsOf(given).filter((step) => /^step-seat|^step-lantern-in/u.test(step.id));
  const rings = home.flatMap((step) => step.ring ?? []);
  expect(rings).toEqual(Array.from({ length: given.rings }, (_, at) => at + 1));
  const lantern = home.findIndex((step) => step.id === "step-lantern-in");
  expect(lantern).toBe(given.lanternAfter === undefined ? -1 : given.lanternAfter);
});

property("no step of a stem speaks of a drip, on the way in or out", [anyFit], (given) => {
  if (!isStem(given.motion)) return;
  for (const step of stepsOf(given)) {
    const texts = [
      english.sentences[step.says.id] ?? "",
      ...[...step.choices, ...step.blanks, ...step.items].map((id) => english.names[id] ?? id),
    ];
    expect(texts.join(" ")).not.toMatch(/\bdrip|\bdrops?\b/iu);
  }
});

property(
  "depths foretold shrink by one ring each, and by the lantern ring once",
  [fc.integer({ min: 2, max: 9 }), fc.double({ min: 3, max: 25, noNaN: true }), fc.double({ min: 5, max: 40, noNaN: true })],
  (rings, height, width) => {
    const seated = stepsOf({
      motion: "turning",
      seating: "firm",
      rings,
      lanternAfter: 1,
      boxDepth: mm(500),
      ringHeight: mm(height),
      lanternWidth: mm(width),
      spacer: mm(10),
    }).filter((step) => step.predicted && (step.ring || /lantern-in|spacer-in/u.test(step.id)));
    const depths = seated.map((step) => inUnit("length", step.predicted?.value as Length, "mm"));
    expect(depths[0]).toBeCloseTo(490, 9);
    const steps = depths.slice(1).map((depth, at) => (depths[at] ?? Number.NaN) - depth);
    expect(steps[0]).toBeCloseTo(height, 9);
    expect(steps[1]).toBeCloseTo(width, 9);
    for (const step of steps.slice(2)) expect(step).toBeCloseTo(height, 9);
    for (const step of seated.filter((one) => one.ring))
      expect(inUnit("length", step.tolerance?.value as Length, "mm")).toBeCloseTo(height / 2, 9);
  },
);

test("PTFE and graphite yarn are eased home and nothing is pressed up; other fibres are tamped, pressed up, slackened right off, then finger-tight", () => {
  for (const style of ["ptfe-dry", "ptfe-lub", "eptfe-graphite", "graphite-yarn"]) {
    const ids = stepsOf({ motion: "turning", rings: 2, style }).map((step) => step.id);
    expect(ids).toContain("step-seat-ring-light-1");
    expect(ids).toContain("step-leave-light");
    expect(ids).not.toContain("step-press-up");
  }
  for (const style of ["aramid-spun", "ramie-flax-ptfe", "eg-braid", "acrylic-graphite"]) {
    const ids = stepsOf({ motion: "turning", rings: 2, style }).map((step) => step.id);
    expect(ids).toContain("step-seat-ring-firm-1");
    const close = ["step-press-up", "step-slacken-off", "step-finger-tight"].map((id) => ids.indexOf(id));
    expect(close[0]).toBeGreaterThan(0);
    expect(close).toEqual([...close].sort((one, other) => one - other));
  }
});

test("V-rings go home by fingers and stay finger-tight; a plunger's braid is tightened, waited for, slackened, left to open (MIL-HDBK-1164 p. 101)", () => {
  const v = stepsOf({ motion: "stroking", rings: 3, ringForm: "v-ring" }).map((step) => step.id);
  expect(v).toContain("step-seat-v-ring-1");
  expect(v.filter((id) => /plunger|press-up/u.test(id))).toEqual([]);
  const braid = stepsOf({ motion: "stroking", rings: 3 }).map((step) => step.id);
  expect(braid.filter((id) => id.includes("plunger"))).toEqual(["step-plunger-tighten", "step-plunger-wait", "step-plunger-expand"]);
  expect(braid.indexOf("step-plunger-expand")).toBeLessThan(braid.indexOf("step-finger-tight"));
});

test("a stem's rings are loaded one by one, then stroked with the torque put back; nobody starts it", () => {
  const ids = stepsOf({ motion: "rising-stem", rings: 2, torque: quantity("torque", 20, "N*m") }).map((step) => step.id);
  const order = [
    "step-stem-vent",
    "step-load-ring-1",
    "step-load-ring-2",
    "step-stem-load",
    "step-stem-stroke",
    "step-stem-retorque",
    "step-stem-free",
    "step-line-back",
  ];
  expect(ids.filter((id) => order.includes(id))).toEqual(order);
  expect(ids).not.toContain("step-start");
  expect(ids).not.toContain("step-finger-tight");
  expect(
    stepsOf({ motion: "rising-stem", rings: 2, torque: quantity("torque", 20, "N*m") }).find((step) => step.id === "step-load-ring-2")
      ?.predicted,
  ).toEqual({ kind: "torque", value: 20 });
});

test("isolation, the port, a ring off and the shaft by hand have no way past; counting old rings short is a make-do that is written down", () => {
  const steps = stepsOf({ motion: "turning", rings: 5, lanternAfter: 2, flush: "yes", oldRingsThroatSide: 2 });
  const step = (id: string) => steps.find((one) => one.id.startsWith(id));
  for (const id of [
    "step-permit",
    "step-prove-zero",
    "step-lantern-port",
    "step-seat-ring",
    "step-turn-by-hand",
    "step-guard-on",
    "step-flush-on",
  ]) {
    expect(step(id)?.bridge, id).toBe(false);
  }
  const inner = step("step-old-rings-throat-side");
  expect(inner?.bridge).toBe(true);
  expect(inner?.blanks).toContain("rings-left-in");
  expect(inner?.predicted).toEqual({ kind: "count", value: 2 });
});

test("flush and closed drain come before filling, filling before venting, pressure before power", () => {
  const ids = stepsOf({ motion: "turning", rings: 5, flush: "yes", release: "not-allowed" }).map((step) => step.id);
  const order = ["step-closed-drain", "step-flush-on", "step-fill", "step-vent", "step-pressurise", "step-start"];
  expect(ids.filter((id) => order.includes(id))).toEqual(order);
});

test("the first joint is at 12 and the next ones a quarter turn on, unless the plan says otherwise", () => {
  const clocks = (joints?: readonly number[]) =>
    stepsOf({ motion: "turning", seating: "firm", rings: 5, ...(joints ? { joints } : {}) }).flatMap((step) =>
      step.id.startsWith("step-seat") ? [step.says.with?.clock] : [],
    );
  expect(clocks()).toEqual([12, 3, 6, 9, 12]);
  expect(clocks([12, 4, 8, 12, 4])).toEqual([12, 4, 8, 12, 4]);
});

const setting = (id: string) => {
  const found = facts.fit.settings.find((entry) => entry.id === id);
  if (!found) throw new Error(id);
  return found;
};
const numberIn = (motion: "turning" | "stroking", id: string, which: "most" | "least") => {
  const step = stepsOf({ motion, rings: 5, lanternAfter: 2 }).find((one) => one.id === id);
  return step?.[which]?.value as Length;
};
const wait = (id: string, end: "low" | "high") =>
  stepsOf({ motion: "stroking", rings: 4 }).find((step) => step.id === id)?.wait?.[end] ?? Number.NaN;
const rounds = (motion: "stroking" | "rising-stem", id: string, end: "low" | "high") =>
  stepsOf({ motion, rings: 4 }).find((step) => step.id === id)?.rounds?.[end] ?? Number.NaN;

const asPrinted = { topic: "fit", tolerance: "printed whole numbers, met exactly but for the rounding of unit conversion" } as const;
const exact = { relative: 1e-12 } as const;

against(
  {
    ...asPrinted,
    check: "Plunger packing: tightened, waited for, slackened",
    source: { source: "bloch-geitner-maintenance", at: "p. 129" },
  },
  [
    { what: "wait between tightenings", theirs: 10, ours: () => wait("step-plunger-wait", "low") / 60, unit: "min", within: exact },
    { what: "fewest tightenings", theirs: 2, ours: () => rounds("stroking", "step-plunger-tighten", "low"), unit: "1", within: exact },
    { what: "most tightenings", theirs: 3, ours: () => rounds("stroking", "step-plunger-tighten", "high"), unit: "1", within: exact },
    {
      what: "shortest wait with the gland slack",
      theirs: 10,
      ours: () => wait("step-plunger-expand", "low") / 60,
      unit: "min",
      within: exact,
    },
    {
      what: "longest wait with the gland slack",
      theirs: 15,
      ours: () => wait("step-plunger-expand", "high") / 60,
      unit: "min",
      within: exact,
    },
  ],
);
against({ ...asPrinted, check: "Valve packing: strokes with the torque put back", source: { source: "fsa-valve-compression-2016" } }, [
  { what: "fewest strokes", theirs: 3, ours: () => rounds("rising-stem", "step-stem-retorque", "low"), unit: "1", within: exact },
  { what: "most strokes", theirs: 5, ours: () => rounds("rising-stem", "step-stem-retorque", "high"), unit: "1", within: exact },
]);
against({ ...asPrinted, check: "Runout at the box, small pumps", source: { source: "usbr-fist-4-1a", at: "p. 14" } }, [
  {
    what: "most",
    theirs: 0.003,
    ours: () => inUnit("length", numberIn("turning", "step-runout", "most"), "in"),
    unit: "in",
    within: exact,
  },
]);
against(
  {
    topic: "fit",
    check: "Entry of the follower's nose at the start",
    source: { source: "fire-pump-overhaul-manual", at: "p. 12" },
    tolerance: "ours is 3 mm, common practice; 1/8 in is 3.175 mm",
  },
  [
    {
      what: "least entry",
      theirs: 0.125,
      ours: () => inUnit("length", numberIn("turning", "step-entry", "least"), "in"),
      unit: "in",
      within: { relative: 0.06 },
    },
  ],
);

test("what has no published limit says so: groove, radial gap, evenness", () => {
  for (const id of ["groove-step", "radial-gap", "gap-difference"]) expect(setting(id).citations[0]?.source).toBe("common-practice");
});

test("a set that does not go in, depths out of order and joints that are no hours are refused by name", () => {
  const refusal = (given: Partial<FitGiven>) => {
    const found = fitSteps({ motion: "turning", rings: 5, ...given }, facts.fit, facts.cautions);
    return found.ok ? undefined : `${found.refusal.kind} ${found.refusal.input}`;
  };
  expect(refusal({ rings: 0 })).toBe("outside-range rings");
  expect(refusal({ rings: Number.NaN })).toBe("outside-range rings");
  expect(refusal({ lanternAfter: 6 })).toBe("outside-range lanternAfter");
  expect(refusal({ boxDepth: mm(40), ringHeight: mm(9) })).toBe("impossible rings");
  expect(refusal({ boxDepth: mm(-1) })).toBe("outside-range boxDepth");
  expect(refusal({ ringHeight: Number.NaN as Length })).toBe("outside-range ringHeight");
  expect(refusal({ faces: [mm(50), mm(40)] })).toBe("impossible faces");
  expect(refusal({ faces: [mm(50), mm(40), mm(41), mm(20), mm(10)] })).toBe("impossible faces[2]");
  expect(refusal({ joints: [12, 3] })).toBe("impossible joints");
  expect(refusal({ joints: [12, 3, 6, 9, 13] })).toBe("outside-range joints[4]");
  expect(refusal({ joints: [12, 3, 6, Number.NaN, 12] })).toBe("outside-range joints[3]");
  expect(refusal({})).toBeUndefined();
});
