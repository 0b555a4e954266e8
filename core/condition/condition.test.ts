import { ask as askByName } from "@ringwright/answers";
import { readAllFacts } from "@ringwright/data";
import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type ConditionQuestion, condition } from "./index.ts";

const facts = readAllFacts();
const mm = (value: number) => quantity("length", value, "mm");
const inch = (value: number) => quantity("length", value, "in");
const ask = (given: ConditionQuestion) => condition(given, facts.condition, facts.uncertainty);

function found(given: ConditionQuestion) {
  const answer = ask(given);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}
function verdict(id: string, given: ConditionQuestion) {
  const one = found(given).verdicts.find((entry) => entry.id === id);
  if (!one) throw new Error(`no verdict on ${id}`);
  return one;
}
const outcome = (given: ConditionQuestion, item: string, limit: string) =>
  verdict(item, given).limits.find((entry) => entry.id === limit)?.outcome;

const limit = (what: string, id: string, given: ConditionQuestion, item: string, theirs: number, unit: string) => ({
  what,
  theirs,
  ours: () => inUnit("length", (verdict(item, given).limits.find((entry) => entry.id === id)?.value ?? Number.NaN) as Length, unit),
  unit,
  within: { relative: 1e-12 },
});
const dial = { runout: inch(0.0015) };
const exact = "a limit is looked up, not worked out";
against(
  {
    topic: "condition",
    check: "Runout after the shaft was renewed",
    source: { source: "mil-hdbk-1164", at: "pages on pumps, 91 and 95" },
    tolerance: exact,
  },
  [limit("any shaft", "runout-after-renewal", dial, "runout", 0.002, "in")],
);
against({ topic: "condition", check: "Runout of small pumps", source: { source: "usbr-fist-4-1a", at: "2.5, p. 14" }, tolerance: exact }, [
  limit("any shaft", "runout-small-pumps", dial, "runout", 0.003, "in"),
]);
against({ topic: "condition", check: "Runout by shaft diameter", source: { source: "iso-9908-1993", at: "4.10.5" }, tolerance: exact }, [
  limit("shaft 40 mm", "runout-iso-small", { ...dial, shaft: mm(40) }, "runout", 50, "um"),
  limit("shaft 50 mm", "runout-iso-middle", { ...dial, shaft: mm(50) }, "runout", 80, "um"),
  limit("shaft 100 mm", "runout-iso-middle", { ...dial, shaft: mm(100) }, "runout", 80, "um"),
  limit("shaft 120 mm", "runout-iso-large", { ...dial, shaft: mm(120) }, "runout", 100, "um"),
]);
against({ topic: "condition", check: "Depth of the box", source: { source: "neale-1995", at: "fig. 25.11" }, tolerance: "exact" }, [
  limit(
    "turning shaft, section 10 mm, with lantern ring",
    "depth-with-lantern",
    { boxDepth: mm(80), section: mm(10), lantern: true },
    "box-depth",
    70,
    "mm",
  ),
]);
against(
  { topic: "condition", check: "Gap of a slurry pump's throat", source: { source: "lobanoff-ross", at: "p. 238" }, tolerance: "exact" },
  [limit("shaft 100 mm", "clearance-scaled", { throatClearance: mm(0.3), shaft: mm(100) }, "throat-clearance", 0.7, "mm")],
);

describe("runout", () => {
  test("0.0015 in passes every limit", () => {
    for (const shaft of [mm(40), mm(75), mm(150)]) {
      expect(verdict("runout", { runout: inch(0.0015), shaft })).toMatchObject({
        verdict: "good",
        decidedBy: "all-limits",
        passes: 6,
        of: 6,
      });
    }
  });
  test("0.0025 in fails the military handbook and passes the bureau's, so it is to be attended to", () => {
    const given = { runout: inch(0.0025), shaft: mm(50) };
    expect(outcome(given, "runout", "runout-after-renewal")).toBe("fail");
    expect(outcome(given, "runout", "runout-small-pumps")).toBe("pass");
    expect(verdict("runout", given)).toMatchObject({ verdict: "attend", decidedBy: "split-limits", passes: 4, of: 6 });
  });
  test("0.3 mm fails them all", () => {
    expect(verdict("runout", { runout: mm(0.3), shaft: mm(50) })).toMatchObject({ verdict: "renew", decidedBy: "all-limits", passes: 0 });
  });
  test("without a shaft diameter the graded limit is left out, not guessed", () => {
    expect(verdict("runout", { runout: inch(0.0015) }).of).toBe(5);
  });
  test("is required for critical service and optional otherwise", () => {
    expect(verdict("runout", { critical: true })).toMatchObject({ verdict: "not-measured", required: true });
    expect(verdict("runout", {})).toMatchObject({ verdict: "not-measured", required: false });
    expect(found({ critical: true }).missing).toContain("runout");
    expect(found({}).missing).not.toContain("runout");
  });
  test("a house limit decides, with who set it, and the published ones stay in sight", () => {
    const house = { item: "runout", value: mm(0.08), setBy: "rotating equipment", why: "slow pump" };
    const one = verdict("runout", { runout: inch(0.0025), shaft: mm(50), houseLimits: [house] });
    expect(one).toMatchObject({
      verdict: "good",
      decidedBy: "house-limit",
      houseLimit: { setBy: "rotating equipment", why: "slow pump", outcome: "pass" },
    });
    expect(one.limits).toHaveLength(6);
    expect(verdict("runout", { runout: mm(0.1), shaft: mm(50), houseLimits: [house] }).verdict).toBe("renew");
    expect(verdict("runout", { runout: mm(0.082), shaft: mm(50), houseLimits: [house] })).toMatchObject({
      verdict: "cannot-tell",
      decidedBy: "house-limit",
    });
  });
});

describe("the points of the survey", () => {
  test("shaft lift and alignment are asked for on every pump, alignment again after a new sleeve", () => {
    expect(found({}).missing).toEqual(expect.arrayContaining(["shaft-lift", "coarse-alignment", "sleeve-wear", "sleeve-scoring"]));
    expect(found({}).verdicts.some((one) => one.id === "alignment-again")).toBe(false);
    expect(verdict("alignment-again", { renewed: ["sleeve"] })).toMatchObject({ verdict: "not-measured", required: true });
    expect(verdict("alignment-again", { renewed: ["shaft"], sightings: { alignmentAgain: "uneven" } }).verdict).toBe("attend");
  });
  test("a valve stem has neither lift nor coupling nor runout", () => {
    const ids = found({ motion: "rising-stem" }).verdicts.map((one) => one.id);
    for (const id of ["shaft-lift", "coarse-alignment", "runout", "end-float"]) expect(ids).not.toContain(id);
    expect(ids).toContain("sleeve-finish");
  });
  test("rough spots are dressed, a scored sleeve is renewed", () => {
    const by = (scoring: string) => verdict("sleeve-scoring", { sightings: { scoring } }).verdict;
    expect([by("none"), by("rough-spots"), by("scored"), by("not-known")]).toEqual(["good", "attend", "renew", "not-measured"]);
  });
  test("hardness by number, or coated, or by file; a file that cuts does not tell", () => {
    expect(verdict("sleeve-hardness", { hardness: 300 }).verdict).toBe("good");
    expect(verdict("sleeve-hardness", { hardness: 180 }).verdict).toBe("attend");
    expect(verdict("sleeve-hardness", { hardness: 252 }).verdict).toBe("cannot-tell");
    const by = (surface: string) => verdict("sleeve-hardness", { sightings: { surface } }).verdict;
    expect([by("coated"), by("file-skates"), by("file-cuts"), by("not-known")]).toEqual(["good", "good", "cannot-tell", "not-measured"]);
  });
  test("finish by comparator against 0.4 µm, a stem also against 0.8; else by nail", () => {
    const ra = (um: number) => quantity("length", um, "um");
    expect(verdict("sleeve-finish", { finish: ra(0.2) }).verdict).toBe("good");
    expect(verdict("sleeve-finish", { finish: ra(0.4) }).verdict).toBe("cannot-tell");
    expect(verdict("sleeve-finish", { finish: ra(1.6) }).verdict).toBe("attend");
    expect(verdict("sleeve-finish", { finish: ra(1.6) }).of).toBe(1);
    expect(verdict("sleeve-finish", { finish: ra(1.6), motion: "rising-stem" }).of).toBe(2);
    expect(verdict("sleeve-finish", { sightings: { nailCatches: "yes" } }).verdict).toBe("attend");
  });
  test("a follower wider than half a millimetre is bushed or renewed, a throat may want an end ring", () => {
    expect(verdict("follower-clearance", { followerClearance: mm(0.4) }).verdict).toBe("good");
    expect(verdict("follower-clearance", { followerClearance: mm(0.7) })).toMatchObject({
      verdict: "renew",
      advice: ["follower-clearance-renew"],
    });
    expect(verdict("throat-clearance", { throatClearance: mm(0.7) })).toMatchObject({
      verdict: "attend",
      advice: ["throat-clearance-attend"],
    });
  });
  test("the rule by shaft diameter stands beside, and does not decide", () => {
    const small = verdict("throat-clearance", { throatClearance: mm(0.4), shaft: mm(40) });
    expect(small).toMatchObject({ verdict: "good", of: 1 });
    expect(small.limits).toMatchObject([
      { outcome: "pass", beside: false },
      { outcome: "fail", beside: true },
    ]);
  });
  test("a box too shallow for its section is said to be, by motion and lantern", () => {
    const deep = (boxDepth: number, lantern: boolean) =>
      verdict("box-depth", { boxDepth: mm(boxDepth), shaft: mm(50), bore: mm(70), lantern });
    expect([deep(60, true).verdict, deep(60, false).verdict, deep(72, true).verdict]).toEqual(["attend", "good", "good"]);
    expect(verdict("box-depth", { motion: "stroking", boxDepth: mm(35), section: mm(10) }).verdict).toBe("good");
    expect(verdict("box-depth", { motion: "rising-stem", boxDepth: mm(35), section: mm(10) })).toMatchObject({
      verdict: "cannot-tell",
      decidedBy: "no-limit",
    });
    expect(verdict("box-depth", { boxDepth: mm(60) })).toMatchObject({ verdict: "cannot-tell", decidedBy: "basis-missing" });
  });
  test("a reading within its uncertainty of the only limit cannot be told from it", () => {
    expect(verdict("follower-clearance", { followerClearance: mm(0.51) })).toMatchObject({
      verdict: "cannot-tell",
      decidedBy: "too-close",
    });
    expect(verdict("follower-clearance", { followerClearance: mm(0.51), uncertainties: { followerClearance: mm(0.002) } }).verdict).toBe(
      "renew",
    );
  });
  test("the gravest verdict stands for the box; nothing looked at is no verdict", () => {
    expect(found({}).overall).toBe("not-measured");
    expect(found({ runout: inch(0.0015) }).overall).toBe("good");
    expect(found({ runout: inch(0.0015), sightings: { studsSound: "no" } }).overall).toBe("renew");
  });
});

describe("what to do follows from the verdict and what it rests on", () => {
  const said = (id: string, given: ConditionQuestion) => {
    const { verdict: word, decidedBy, advice } = verdict(id, given);
    return [word, decidedBy, ...advice];
  };
  const lift = (um: number) => said("shaft-lift", { shaftLift: quantity("length", um, "um") });
  const groove = (um: number) => said("sleeve-wear", { sleeveGroove: quantity("length", um, "um") });
  test("every limit passed: nothing to do", () => expect(lift(40)).toEqual(["good", "all-limits"]));
  test("passed by some, failed by others: a person decides, and the site may set its own", () =>
    expect(lift(200)).toEqual(["attend", "split-limits", "shaft-lift-attend", "condition-set-house-limit"]));
  test("every limit failed: renew", () => expect(lift(600)).toEqual(["renew", "all-limits", "shaft-lift-renew"]));
  test("close to the strictest and well within the others may be good or not: measure finer", () =>
    expect(lift(77)).toEqual(["cannot-tell", "too-close", "condition-measure-finer"]));
  test("beyond the strict ones and close to the mildest may be bad or not: measure finer", () =>
    expect(groove(395)).toEqual(["cannot-tell", "too-close", "condition-measure-finer"]));
  test("close to one limit where others already quarrel changes nothing", () =>
    expect(groove(252).slice(0, 2)).toEqual(["attend", "split-limits"]));
  test("no limit for this motion: the site may set its own", () =>
    expect(said("box-depth", { motion: "rising-stem", boxDepth: mm(35), section: mm(10) })).toEqual([
      "cannot-tell",
      "no-limit",
      "condition-set-house-limit",
    ]));
  test("a limit that goes by the section needs the diameters", () =>
    expect(said("box-depth", { boxDepth: mm(60) })).toEqual(["cannot-tell", "basis-missing", "condition-needs-diameters"]));
  test("a missing diameter of a rule that only stands beside does not matter", () =>
    expect(said("throat-clearance", { throatClearance: mm(0.2) })).toEqual(["good", "all-limits"]));
  test("close to the house limit: measure finer, whatever the published ones say", () => {
    const houseLimits = [{ item: "runout", value: mm(0.08), setBy: "site" }];
    expect(said("runout", { runout: mm(0.082), houseLimits })).toEqual(["cannot-tell", "house-limit", "condition-measure-finer"]);
    expect(said("runout", { runout: mm(0.2), houseLimits })).toEqual(["renew", "house-limit", "runout-renew"]);
  });
  test("a house limit for hardness is a plain number", () => {
    const houseLimits = [{ item: "sleeve-hardness", number: 400, setBy: "site" }];
    const one = verdict("sleeve-hardness", { hardness: 300, houseLimits });
    expect(one).toMatchObject({ verdict: "attend", decidedBy: "house-limit", houseLimit: { value: 400, unit: "1", outcome: "fail" } });
    expect(one.houseLimit).not.toHaveProperty("why");
  });
  test("a reading known exactly that meets its limit keeps it", () => {
    const exactly = { followerClearance: mm(0.5), uncertainties: { followerClearance: 0 as Length } };
    expect(said("follower-clearance", exactly)).toEqual(["good", "all-limits"]);
  });
});

describe("the verdict carries what it rests on", () => {
  test("the reading with its uncertainty, and where each limit stands in its source", () => {
    const one = verdict("runout", { runout: mm(0.04), shaft: mm(50) });
    // A dial read to 0.01 mm, right within 0.005 mm: root sum of squares of 0.01/√12 and 0.005/√3.
    expect(one.measured).toMatchObject({ value: 4e-5, unit: "m" });
    expect((one.measured?.standardUncertainty ?? 0) * 1e6).toBeCloseTo(4.082, 3);
    expect(one.limits[0]).toMatchObject({ source: "iso-9908-1993", at: "4.10.5" });
    expect(verdict("shaft-lift", { shaftLift: mm(0.04) }).limits[0]).not.toHaveProperty("at");
  });
  test("how a limit was seen reaches the reply: as the value says, else as its source does", () => {
    const reply = askByName("condition", { motion: "turning", runout: "0.04 mm", shaft: "50 mm", shaftLift: "0.04 mm" }, facts);
    const verdicts = (reply as unknown as { answer: { verdicts: { id: string; limits: { source: string; seen: string }[] }[] } }).answer
      .verdicts;
    const limits = verdicts.flatMap((one) => one.limits);
    expect(limits.find(({ source }) => source === "iso-9908-1993")).toMatchObject({ seen: "quoted" });
    expect(limits.length).toBeGreaterThan(3);
    for (const { seen } of limits) expect(["read", "quoted", "memory", "derived", "practice"]).toContain(seen);
  });
  test("a box without a word on its lantern is held against the depth without one", () => {
    expect(verdict("box-depth", { boxDepth: mm(60), section: mm(10) }).limits.map((entry) => entry.id)).toEqual(["depth-without-lantern"]);
  });
  test("each step of the workings has a number for every symbol of its rule", () => {
    const answer = ask({
      shaft: mm(50),
      bore: mm(70),
      lantern: true,
      runout: mm(0.05),
      throatClearance: mm(0.3),
      boxDepth: mm(72),
      finish: mm(0.0004),
      hardness: 300,
      clockGaps: [mm(10.4), mm(10.1), mm(9.6), mm(9.9)],
      houseLimits: [
        { item: "runout", value: mm(0.08), setBy: "site" },
        { item: "sleeve-hardness", number: 280, setBy: "site" },
      ],
    });
    if (!answer.ok) throw new Error("refused");
    for (const [rule, inputs] of answer.workings) expect(inputs.filter(Number.isFinite), rule.id).toHaveLength(rule.inputs.length);
    const value = (id: string) => answer.workings.filter(([rule]) => rule.id === id).map(([, inputs, result]) => [...inputs, result]);
    expect(value("clearance-scaled")[0]?.[0]).toBe(mm(50));
    expect(value("depth-with-lantern")[0]?.[0]).toBeCloseTo(0.01, 12);
    const houses = answer.workings.filter(([rule]) => rule.id === "house-limit").map(([rule, , result]) => `${result} ${rule.unit}`);
    expect(houses).toEqual([`${mm(0.08)} m`, "280 1"]);
  });
});

describe("bad input is refused by name", () => {
  const refusal = (given: ConditionQuestion) => {
    const answer = ask(given);
    if (!answer.ok) expect(allIds().has(answer.refusal.says.id), answer.refusal.says.id).toBe(true);
    return answer.ok ? "ok" : `${answer.refusal.kind} ${answer.refusal.input}`;
  };
  test("readings", () => {
    for (const bad of [mm(-0.1), Number.NaN as Length, Number.POSITIVE_INFINITY as Length, 1e308 as Length]) {
      expect(refusal({ runout: bad })).toBe("outside-range runout");
      expect(refusal({ shaft: bad })).toBe("outside-range shaft");
      expect(refusal({ clockGaps: [mm(10), mm(10), bad, mm(10)] })).toBe("outside-range clockGaps[2]");
      expect(refusal({ runout: mm(0.05), uncertainties: { runout: bad } })).toBe("outside-range uncertainties.runout");
    }
    expect(refusal({ hardness: -1 })).toBe("outside-range hardness");
    expect(refusal({ clockGaps: [mm(10), mm(10)] })).toBe("impossible clockGaps");
    expect(refusal({ shaft: mm(70), bore: mm(50) })).toBe("impossible bore");
  });
  test("house limits", () => {
    const setBy = "stores";
    expect(refusal({ houseLimits: [{ item: "sparkle", value: mm(1), setBy }] })).toBe("not-known houseLimits[0].item");
    expect(refusal({ houseLimits: [{ item: "sleeve-scoring", value: mm(1), setBy }] })).toBe("not-known houseLimits[0].item");
    expect(refusal({ houseLimits: [{ item: "runout", setBy }] })).toBe("missing houseLimits[0].value");
    expect(refusal({ houseLimits: [{ item: "sleeve-hardness", value: mm(1), setBy }] })).toBe("missing houseLimits[0].number");
    expect(refusal({ houseLimits: [{ item: "runout", value: mm(-1), setBy }] })).toBe("outside-range houseLimits[0].value");
  });
  test("a runout of 2 mm, which no packed shaft has, is asked about, not blocked", () => {
    const answer = ask({ runout: mm(2) });
    expect(answer).toMatchObject({ ok: true });
    if (answer.ok) expect(answer.warnings.filter((warning) => warning.kind === "slip").map((warning) => warning.input)).toEqual(["runout"]);
  });
});

test("every id that a verdict can carry has its sentence, and every limit an origin", () => {
  const ids = allIds();
  const wanted = facts.condition.flatMap((item) => [
    ...(item.field ? [`${item.id}-${item.fail}`, ...(item.limits.length > 1 ? [`${item.id}-attend`] : [])] : []),
    ...Object.entries(item.seen ?? {}).flatMap(([seen, word]) => (word === "good" ? [] : [`${item.id}-${seen}`])),
    ...item.limits.map((entry) => entry.id),
  ]);
  // Only limits that quarrel can split; these two have a second one that stands beside or is for another motion.
  const unsplit = new Set(["follower-clearance-attend"]);
  expect([...new Set(wanted)].filter((id) => !ids.has(id) && !unsplit.has(id))).toEqual([]);
  for (const id of [
    "condition-look-first",
    "condition-measure-finer",
    "condition-set-house-limit",
    "condition-needs-diameters",
    "gap-agreement-attend",
  ]) {
    expect(ids.has(id), id).toBe(true);
  }
  for (const item of facts.condition) {
    expect(item.limits.length > 0 || item.seenSource !== undefined, item.id).toBe(true);
    for (const entry of item.limits)
      expect(
        [entry.value, entry.perShaft, entry.perSection].filter((one) => one !== undefined),
        entry.id,
      ).toHaveLength(1);
  }
});

const order = ["good", "cannot-tell", "attend", "renew"];
const measuredItems = [
  ["shaft-lift", "shaftLift"],
  ["runout", "runout"],
  ["sleeve-wear", "sleeveGroove"],
  ["follower-clearance", "followerClearance"],
  ["throat-clearance", "throatClearance"],
  ["sleeve-finish", "finish"],
] as const;
property(
  "a worse reading never passes more limits, never fails fewer, and never turns a bad verdict good",
  [
    fc.constantFrom(...measuredItems),
    fc.integer({ min: 1, max: 1000 }),
    fc.integer({ min: 0, max: 1000 }),
    fc.integer({ min: 20, max: 150 }),
  ],
  ([id, field], microns, more, shaft) => {
    const at = (um: number) => verdict(id, { [field]: quantity("length", um, "um"), shaft: mm(shaft) });
    const [better, worse] = [at(microns), at(microns + more)];
    const count = (one: typeof better, what: string) => one.limits.filter((entry) => !entry.beside && entry.outcome === what).length;
    expect(worse.passes).toBeLessThanOrEqual(better.passes);
    expect(count(worse, "fail")).toBeGreaterThanOrEqual(count(better, "fail"));
    if (better.verdict === "renew") expect(worse.verdict).toBe("renew");
    if (worse.verdict === "good") expect(better.verdict).toBe("good");
    expect(order).toContain(better.verdict);
    expect(better.of).toBe(count(better, "pass") + count(better, "fail") + count(better, "close"));
  },
);

property(
  "with a house limit the verdict is good, cannot tell, then bad, as the reading grows",
  [fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 500 })],
  (house, reading, more) => {
    const um = (value: number) => quantity("length", value, "um");
    const rank = (value: number) =>
      order.indexOf(verdict("runout", { runout: um(value), houseLimits: [{ item: "runout", value: um(house), setBy: "site" }] }).verdict);
    expect(rank(reading + more)).toBeGreaterThanOrEqual(rank(reading));
  },
);
