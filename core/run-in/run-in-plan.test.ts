import { readAllFacts } from "@ringwright/data";
import { allIds } from "@ringwright/words";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { anyCase } from "../../testing/any-case.ts";
import { property } from "../../testing/property.ts";
import { english } from "../../words/en/index.ts";
import { isStem, turns } from "../box/index.ts";
import { stepGroups } from "../fit/index.ts";
import { inUnit, quantity, type Temperature, type Time } from "../units/index.ts";
import { type RunInGiven, type RunInPlan, runInPlan } from "./index.ts";

const facts = readAllFacts();
const plan = (given: RunInGiven) => runInPlan(given, facts.runIn, facts.fit, facts.cautions);
const found = (given: RunInGiven): RunInPlan => {
  const answer = plan(given);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
};
const ids = (given: RunInGiven) => found(given).steps.map((step) => step.id);
const pump: RunInGiven = { motion: "turning", release: "allowed", zone: "ordinary", flush: "yes", seating: "firm" };

/** All that a plan says to a person, in words. */
function texts({ steps, stopRules }: RunInPlan): readonly string[] {
  const words = (id: string) => english.sentences[id] ?? english.names[id] ?? id;
  return [
    ...steps.flatMap((step) =>
      [step.says.id, ...step.choices, ...step.blanks, ...step.items, ...(step.until ? [step.until] : [])].map(words),
    ),
    ...stopRules.map((rule) => words(rule.id)),
  ];
}

property("closing, start, run, settling, later looks: always in that order, each with words and a source", [anyCase], (given) => {
  const answer = plan(given);
  if (!answer.ok) {
    // Only one thing has no plan: a turning shaft that may let nothing out and has nothing to live on.
    expect([given.release, turns(given.motion), given.flush === "yes" || given.grease === "yes"]).toEqual(["not-allowed", true, false]);
    return;
  }
  const order = answer.value.steps.map((step) => stepGroups.indexOf(step.group));
  expect(order).toEqual([...order].sort((one, other) => one - other));
  for (const step of answer.value.steps) {
    expect(allIds()).toContain(step.says.id);
    expect(step.citations.length, step.id).toBeGreaterThan(0);
    expect(step.cannot.at(-1)).toBe("other");
    if (step.kind === "wait") expect(step.wait, step.id).toBeDefined();
    if (step.until) expect(english.names[step.until], step.until).toBeDefined();
  }
  for (const rule of answer.value.stopRules) expect(allIds()).toContain(rule.id);
  expect(new Set(answer.value.steps.map((step) => step.id)).size).toBe(order.length);
});

property("for a stem nothing ever speaks of a drip: not a step, not a choice, not a stop rule", [anyCase], (given) => {
  if (!isStem(given.motion)) return;
  expect(texts(found(given)).filter((text) => /\bdrip|\bdrops?\b/iu.test(text))).toEqual([]);
  for (const input of ["dripLow", "dripHigh"] as const) {
    expect(plan({ ...given, [input]: 40 })).toMatchObject({ ok: false, refusal: { kind: "impossible", input } });
  }
});

const toZero = /(?:tighten|flat|torque|draw|close)[^.:]*\b(?:until|to)\b[^.]*\b(?:zero|dry|stops? (?:leaking|dripping)|no (?:leak|drip))/iu;

test("an order to tighten to zero would be noticed", () => {
  for (const order of [
    "Tighten every nut until it stops dripping.",
    "One flat on each nut, to zero.",
    "Draw the nuts up until no drip is left.",
  ]) {
    expect(order).toMatch(toZero);
  }
  expect("Draw the nuts up evenly until the set is felt to close up.").not.toMatch(toZero);
});

property("no plan ever tightens a shaft in order to reach zero", [anyCase], (given) => {
  const answer = plan(given);
  if (!answer.ok) return;
  const said = texts(answer.value).filter((text) => toZero.test(text));
  expect(said.filter((text) => !/never/iu.test(text))).toEqual([]);
  if (!turns(given.motion)) return;
  expect(answer.value.stopRules.map((rule) => rule.id)).toContain("stop-never-to-zero");
  const ends = new Set(answer.value.steps.flatMap((step) => step.until ?? []));
  expect([...ends].filter((end) => !["until-steady", "until-warm", "until-rounds-done"].includes(end))).toEqual([]);
});

property("on a turning shaft every step under power has the turning shaft as its first caution", [anyCase], (given) => {
  const answer = plan(given);
  if (!answer.ok || !turns(given.motion)) return;
  for (const step of answer.value.steps.filter((one) => ["start", "run", "settle", "check"].includes(one.group))) {
    expect(step.cautions[0], step.id).toBe("caution-turning-shaft");
  }
});

property("nuts are never moved on a turning shaft before it has run wet and been read", [anyCase], (given) => {
  const answer = plan(given);
  if (!answer.ok || given.motion !== "turning") return;
  const list = answer.value.steps.map((step) => step.id);
  const move = list.indexOf("run-move");
  if (move < 0) return;
  expect(list.indexOf("run-first-wait")).toBeLessThan(move);
  expect(list.indexOf("run-read-temperature")).toBeLessThan(move);
  expect(list.indexOf("run-move")).toBeLessThan(list.indexOf("run-interval"));
});

test("before power: by hand, guard, flush, fill, vent, pressure", () => {
  const order = [
    "step-turn-by-hand",
    "step-guard-on",
    "step-flush-on",
    "step-fill",
    "step-vent",
    "step-pressurise",
    "step-start",
    "run-first-wait",
  ];
  expect(ids(pump).filter((id) => order.includes(id))).toEqual(order);
});

test("where product may not be let out, flush is read at a closed drain and no drip is counted", () => {
  const steps = ids({ ...pump, release: "not-allowed" });
  expect(steps).toContain("step-closed-drain");
  expect(steps).toContain("run-read-closed-drain");
  expect(steps).not.toContain("run-read-drip");
  expect(found({ ...pump, release: "not-allowed" }).stopRules.map((rule) => rule.id)).toContain("stop-product-at-drain");
  expect(texts(found({ ...pump, release: "not-allowed" })).filter((text) => /count the drip/iu.test(text))).toEqual([]);
});

test("nothing may come out and nothing else keeps it alive: no plan; not known: asked", () => {
  expect(plan({ ...pump, release: "not-allowed", flush: "no" })).toMatchObject({
    ok: false,
    refusal: { kind: "impossible", input: "release" },
  });
  expect(plan({ ...pump, release: "not-allowed", flush: "unknown" })).toMatchObject({
    ok: false,
    refusal: { kind: "not-known", input: "flush" },
  });
  expect(plan({ ...pump, release: "not-allowed", flush: "no", grease: "yes" }).ok).toBe(true);
});

test("nobody said whether it may be let out: asked before the start, with no way past", () => {
  const { release: _, ...unsaid } = pump;
  const step = found(unsaid).steps.find((one) => one.id === "step-release-asked");
  expect(step).toMatchObject({ group: "start", bridge: false });
  expect(plan(unsaid)).toMatchObject({ warnings: expect.arrayContaining([expect.objectContaining({ kind: "gap", input: "release" })]) });
});

test("PTFE is moved by half a flat and eased back when it grows; a packing of unknown seating is treated as gently, and said so", () => {
  const { seating: _, ...unsaid } = pump;
  const ptfe = found({ ...unsaid, style: "eptfe-graphite" });
  expect(ptfe.steps.find((step) => step.id === "run-move")?.says.with?.flats).toBe(0.5);
  expect(ptfe.steps.map((step) => step.id)).toContain("run-ease-growth");
  expect(found({ ...unsaid, style: "aramid-spun" }).steps.find((step) => step.id === "run-move")?.says.with?.flats).toBe(1);
  expect(found(unsaid).steps.find((step) => step.id === "run-move")?.says.with?.flats).toBe(0.5);
  expect(plan({ ...unsaid, style: "injectable" })).toMatchObject({ warnings: [{ kind: "gap", input: "seating" }] });
});

test("graphite braid may come to nothing by itself: temperature judges; other packing is eased back", () => {
  const rules = (style: string) => found({ ...pump, style }).stopRules.map((rule) => rule.id);
  expect(rules("eg-braid")).toContain("stop-graphite-zero");
  expect(rules("eg-braid")).not.toContain("stop-dry-and-warming");
  expect(rules("aramid-spun")).toContain("stop-dry-and-warming");
  expect(rules("aramid-spun")).not.toContain("stop-graphite-zero");
});

test("smoke comes first among the stop rules of anything that runs under power", () => {
  for (const motion of ["turning", "stroking", "slow-agitator"] as const)
    expect(found({ motion, release: "allowed" }).stopRules[0]?.id).toBe("stop-smoke");
});

test("a mixer is warmed on purpose, cooled, then slackened; grease or leak is looked at, not both", () => {
  const grease = ids({ motion: "slow-agitator", release: "allowed", grease: "yes", flush: "no" });
  const order = ["step-start", "run-warm-move", "run-warm-read", "run-warm-stop", "run-warm-tighten", "run-warm-cool", "run-warm-restart"];
  expect(grease.filter((id) => order.includes(id))).toEqual(order);
  expect(grease).toContain("run-agitator-grease");
  expect(grease).not.toContain("run-agitator-leak");
  expect(ids({ motion: "slow-agitator", release: "allowed", grease: "no", flush: "no" })).toContain("run-agitator-leak");
});

test("a V-ring set on a plunger is never moved after the start", () => {
  expect(ids({ motion: "stroking", release: "allowed", ringForm: "v-ring" })).not.toContain("run-rod-move");
  expect(ids({ motion: "stroking", release: "allowed" })).toContain("run-rod-move");
});

test("a drip aim of zero, one end only, upside down or on a rod is refused by name", () => {
  const refusal = (given: Partial<RunInGiven>) => {
    const answer = plan({ ...pump, ...given });
    return answer.ok ? undefined : answer.refusal.input;
  };
  expect(refusal({ dripLow: 0, dripHigh: 10 })).toBe("dripLow");
  expect(refusal({ dripLow: 40 })).toBe("dripHigh");
  expect(refusal({ dripLow: 40, dripHigh: 20 })).toBe("dripHigh");
  expect(refusal({ dripLow: Number.NaN, dripHigh: 20 })).toBe("dripLow");
  expect(refusal({ dripLow: 40, dripHigh: 1e308 })).toBe("dripHigh");
  expect(refusal({ motion: "stroking", dripLow: 40, dripHigh: 60 })).toBe("dripLow");
  expect(refusal({ temperatureLimit: 0 as Temperature })).toBe("temperatureLimit");
  expect(refusal({ dripLow: 40, dripHigh: 60 })).toBeUndefined();
});

// Published schedules, checked through the plan: what a fitter is told must lie where the sources lie.
const printed = { topic: "run-in", tolerance: "printed whole numbers, met exactly but for the rounding of unit conversion" } as const;
const exact = { relative: 1e-12 } as const;
const schedule = (motion: RunInGiven["motion"], id: string) => {
  const row = found({ motion, release: "allowed", flush: "yes" }).spread.schedules.find((one) => one.id === id);
  if (!row) throw new Error(id);
  return row;
};
const minutes = (seconds: number | undefined) => inUnit("time", (seconds ?? Number.NaN) as Time, "min");
const hours = (seconds: number | undefined) => inUnit("time", (seconds ?? Number.NaN) as Time, "h");
const step = (given: RunInGiven, id: string) => found(given).steps.find((one) => one.id === id);
const firePump: RunInGiven = { ...pump, service: "fire-pump", style: "eg-braid" };

against(
  {
    ...printed,
    check: "Fire pump break-in, flexible graphite",
    source: { source: "us-army-tm-5-4210-233", at: "p. 6-39, steps 20 to 27" },
  },
  [
    {
      what: "first run before anything is felt or moved",
      theirs: 5,
      ours: () => minutes(step(firePump, "run-first-wait")?.wait?.low),
      unit: "min",
      within: exact,
    },
    { what: "one move", theirs: 1, ours: () => Number(step(firePump, "run-move")?.says.with?.flats), unit: "flats", within: exact },
    {
      what: "back when hot",
      theirs: 0.5,
      ours: () => schedule("turning", "army-fire-pump").back?.low ?? Number.NaN,
      unit: "flats",
      within: exact,
    },
    {
      what: "eased back in our stop rule",
      theirs: 0.5,
      ours: () => Number(found(firePump).stopRules.find((rule) => rule.id === "stop-graphite-zero")?.says.with?.ease),
      unit: "flats",
      within: exact,
    },
    { what: "rounds", theirs: 3, ours: () => schedule("turning", "army-fire-pump").rounds ?? Number.NaN, unit: "1", within: exact },
    { what: "wait to cool", theirs: 5, ours: () => minutes(step(firePump, "run-interval")?.wait?.high), unit: "min", within: exact },
    {
      what: "short runs afterwards",
      theirs: 2,
      ours: () => minutes(step(firePump, "run-interval")?.wait?.low),
      unit: "min",
      within: exact,
    },
    {
      what: "lowest drip at the end",
      theirs: 10,
      ours: () => schedule("turning", "army-fire-pump").drip?.low ?? Number.NaN,
      unit: "1/min",
      within: exact,
    },
    {
      what: "highest drip at the end",
      theirs: 15,
      ours: () => schedule("turning", "army-fire-pump").drip?.high ?? Number.NaN,
      unit: "1/min",
      within: exact,
    },
  ],
);
against({ ...printed, check: "Interval between moves, normal service", source: { source: "usbr-fist-4-1a", at: "s. 2.5, p. 14" } }, [
  { what: "shortest", theirs: 15, ours: () => minutes(step(pump, "run-interval")?.wait?.low), unit: "min", within: exact },
  { what: "longest", theirs: 30, ours: () => minutes(step(pump, "run-interval")?.wait?.high), unit: "min", within: exact },
]);
against({ ...printed, check: "Wait before the first move", source: { source: "mil-hdbk-1164", at: "p. 77" } }, [
  { what: "shortest", theirs: 10, ours: () => minutes(step(pump, "run-first-wait")?.wait?.low), unit: "min", within: exact },
  { what: "longest", theirs: 15, ours: () => minutes(step(pump, "run-first-wait")?.wait?.high), unit: "min", within: exact },
]);
against({ ...printed, check: "Slurry: between moves", source: { source: "slurry-pump-troubleshooting" } }, [
  {
    what: "at least",
    theirs: 1,
    ours: () => hours(step({ ...pump, service: "slurry" }, "run-interval")?.wait?.low),
    unit: "h",
    within: exact,
  },
]);
against({ ...printed, check: "Irrigation pump: one move", source: { source: "irrigation-pump-tip" } }, [
  {
    what: "a quarter turn",
    theirs: 0.25,
    ours: () => (schedule("turning", "irrigation").step?.low ?? Number.NaN) / 6,
    unit: "turn",
    within: exact,
  },
  { what: "interval", theirs: 10, ours: () => minutes(schedule("turning", "irrigation").interval?.low), unit: "min", within: exact },
]);
against({ ...printed, check: "Largest move", source: { source: "fire-pump-overhaul-manual" } }, [
  {
    what: "a sixth of a turn",
    theirs: 1 / 6,
    ours: () => (step(pump, "run-move")?.flats?.high ?? Number.NaN) / 6,
    unit: "turn",
    within: exact,
  },
]);
against({ ...printed, check: "Free leak before the final setting", source: { source: "pump-service-repack-notes" } }, [
  { what: "shortest", theirs: 4, ours: () => hours(schedule("turning", "service-notes").firstWait?.low), unit: "h", within: exact },
  { what: "longest", theirs: 6, ours: () => hours(schedule("turning", "service-notes").firstWait?.high), unit: "h", within: exact },
]);
const mixer: RunInGiven = { motion: "slow-agitator", release: "allowed" };
against({ ...printed, check: "Mixer warmed on purpose", source: { source: "mixer-manual-2", at: "p. 17" } }, [
  { what: "one move", theirs: 0.25, ours: () => (step(mixer, "run-warm-move")?.flats?.low ?? Number.NaN) / 6, unit: "turn", within: exact },
  { what: "between moves", theirs: 10, ours: () => minutes(step(mixer, "run-warm-wait")?.wait?.low), unit: "min", within: exact },
  {
    what: "outside of the box",
    theirs: 125,
    ours: () => inUnit("temperature", step(mixer, "run-warm-read")?.most?.value as Temperature, "degF"),
    unit: "°F",
    within: exact,
  },
]);
against({ ...printed, check: "Rod: box above the liquid", source: { source: "bloch-geitner-maintenance", at: "p. 127" } }, [
  {
    what: "usual rise",
    theirs: 50,
    ours: () => {
      const liquid = quantity("temperature", 100, "degF");
      const most = step({ motion: "stroking", release: "allowed", temperature: liquid }, "run-rod-temperature")?.most?.value as Temperature;
      return inUnit("temperature", most, "degF") - 100;
    },
    unit: "°F",
    within: { relative: 1e-9 },
  },
]);
against({ ...printed, check: "Valve packing: torque again in service", source: { source: "fsa-valve-compression-2016" } }, [
  {
    what: "after",
    theirs: 3,
    ours: () => hours(found({ motion: "rising-stem" }).steps.find((one) => one.says.id === "run-stem-retorque")?.at) / 24,
    unit: "days",
    within: exact,
  },
]);

test("the spread is as wide as its rows, and every row has a source and an end", () => {
  const { spread } = found(pump);
  expect(spread.schedules.length).toBeGreaterThan(10);
  expect([minutes(spread.interval?.low), minutes(spread.interval?.high)].map(Math.round)).toEqual([2, 60]);
  expect([spread.step?.low, spread.step?.high]).toEqual([0.5, 1.5]);
  expect([minutes(spread.firstWait?.low), hours(spread.firstWait?.high)]).toEqual([5, 6]);
  for (const row of facts.runIn.schedules) expect(english.names[row.end], row.id).toBeDefined();
  expect(found({ motion: "rising-stem" }).spread.schedules.map((row) => row.id)).toEqual(["stem-consolidation"]);
});

test("tightening is held 15 K below the limit while the box still climbs", () => {
  const at = found({ ...pump, temperatureLimit: quantity("temperature", 80, "degC") }).holdAt as Temperature;
  expect(inUnit("temperature", at, "degC")).toBeCloseTo(65, 9);
});
