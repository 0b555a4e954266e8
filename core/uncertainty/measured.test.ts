import { readAllFacts } from "@ringwright/data";
import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { coverageFactor, hows, measured } from "./index.ts";

const facts = readAllFacts().uncertainty;
const mm = (value: number) => quantity("length", value, "mm");
const toMm = (value: Length) => inUnit("length", value, "mm");

function found(given: Parameters<typeof measured>[0]) {
  const answer = measured(given, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

// JCGM 100:2008 4.4.3 works out twenty temperatures: mean 100.14, s 1.49, s/√20 0.33 (seen from memory); the same numbers here as millimetres.
const twenty = [
  96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2, 101.57, 101.84,
  102.36, 102.72,
];
against(
  {
    topic: "uncertainty",
    check: "Twenty repeated readings",
    source: { source: "jcgm-100-2008", at: "4.4.3 and table 1, as millimetres", seen: "memory" },
    tolerance: "half a unit of the last printed digit",
  },
  [
    {
      what: "mean",
      theirs: 100.14,
      ours: () => toMm(found({ readings: twenty.map(mm), resolution: mm(0) }).mean.mean),
      unit: "mm",
      within: { absolute: 0.0051 },
    },
    {
      what: "standard uncertainty of the mean",
      theirs: 0.33,
      ours: () => toMm(found({ readings: twenty.map(mm), resolution: mm(0) }).standardUncertainty),
      unit: "mm",
      within: { absolute: 0.005 },
    },
  ],
);
against(
  {
    topic: "uncertainty",
    check: "Two parts that the guide gives in closed form",
    source: { source: "jcgm-100-2008", at: "F.2.2.1: a step δx of the scale has u = 0.29 δx; 4.3.7: half-width a has u = a/√3" },
    tolerance: "half a unit of the last printed digit",
  },
  [
    {
      what: "one reading on a scale of 1 mm",
      theirs: 0.29,
      ours: () => toMm(found({ readings: [mm(50)], resolution: mm(1) }).standardUncertainty),
      unit: "mm",
      within: { absolute: 0.005 },
    },
  ],
);

describe("the uncertainty of a dimension", () => {
  test("one reading with a resolution and nothing said about the tool has only the step of the scale", () => {
    const { standardUncertainty, spread } = found({ readings: [mm(50)], resolution: mm(0.1) });
    expect(toMm(standardUncertainty)).toBeCloseTo(0.1 / Math.sqrt(12), 15);
    expect(spread).toBe(0);
  });

  test("scatter, step and tool add up as squares", () => {
    const { standardUncertainty } = found({ readings: [mm(50.1), mm(49.9)], resolution: mm(0.02), how: "caliper" });
    const caliper = 0.05; // what data/limits/instruments.json says of a caliper
    expect(toMm(standardUncertainty)).toBeCloseTo(Math.sqrt(0.02 / 2 + 0.02 ** 2 / 12 + caliper ** 2 / 3), 12);
  });

  test("with nothing said at all it is as rough as not knowing makes it, and says so", () => {
    const answer = measured({ readings: [mm(50)] }, facts);
    expect(answer).toMatchObject({ ok: true, warnings: [{ kind: "gap", input: "how", says: { id: "how-not-known" } }] });
    expect(found({ readings: [mm(50)] }).standardUncertainty).toBe(found({ readings: [mm(50)], how: "unknown" }).standardUncertainty);
  });

  test("a rougher tool never makes a dimension surer", () => {
    const order = ["micrometer", "bore-gauge", "caliper", "caliper-at-mouth", "rule", "wire"] as const;
    const u = order.map((how) => found({ readings: [mm(50)], how }).standardUncertainty);
    expect([...u].sort((a, b) => a - b)).toEqual(u);
  });

  test("every way of measuring there is has its figures", () => {
    for (const how of hows) expect(found({ readings: [mm(50)], how }).standardUncertainty, how).toBeGreaterThan(0);
  });
});

describe("the interval that holds the dimension in about 95 of 100 cases", () => {
  test("two readings and a perfect tool: twelve times the uncertainty, for one degree of freedom", () => {
    const { expanded, standardUncertainty } = found({ readings: [mm(50), mm(50.1)], resolution: mm(0) });
    expect(expanded / standardUncertainty).toBeCloseTo(12.706, 3);
  });
  test("one reading: twice the uncertainty, for the tool is taken as known", () => {
    const { expanded, standardUncertainty } = found({ readings: [mm(50)], how: "caliper" });
    expect(expanded / standardUncertainty).toBeCloseTo(1.96, 3);
  });
  test("a rough tool outweighs the scatter of three readings", () => {
    // ν = (n - 1) u⁴ / u_s⁴ by Welch and Satterthwaite, cut to a whole number.
    const readings = [50, 50.3, 50.6].map(mm);
    const { expanded, standardUncertainty } = found({ readings, resolution: mm(1) });
    const [us, ur] = [0.3 / Math.sqrt(3), 1 / Math.sqrt(12)];
    const degrees = (2 * (us * us + ur * ur) ** 2) / us ** 4;
    expect(expanded / standardUncertainty).toBeCloseTo(coverageFactor(Math.floor(degrees)), 9);
    expect(degrees).toBeGreaterThan(25);
  });
});

describe("what is said beside the figures", () => {
  const said = (given: Parameters<typeof measured>[0]) => {
    const answer = measured(given, facts);
    return answer.ok ? answer.warnings.map((warning) => `${warning.kind} ${warning.input} ${warning.says.id}`) : [];
  };
  test("a scale without a word on the tool", () => {
    expect(said({ readings: [mm(50)], resolution: mm(0.1) })).toEqual(["gap how how-not-said"]);
    expect(said({ readings: [mm(50)], how: "caliper" })).toEqual([]);
    expect(said({ readings: [mm(50)], how: "unknown" })).toEqual(["gap how how-not-known"]);
  });
  test("a mean that no shaft has; but one slip is not asked about twice", () => {
    expect(said({ readings: [mm(2)], how: "caliper", field: "shaft" })).toEqual(["slip readings slip-meant-either"]);
    expect(said({ planes: [[mm(2)]], how: "caliper", field: "shaft" })[0]).toContain("slip planes ");
    expect(said({ readings: [mm(50), mm(50), mm(5)], how: "caliper", field: "shaft" })).toEqual(["slip readings[2] slip-against-siblings"]);
    expect(said({ planes: [[mm(50), mm(50)], [mm(5)]], how: "caliper" })).toEqual(["slip planes[1][0] slip-against-siblings"]);
    expect(said({ readings: [mm(2)], how: "caliper" })).toEqual([]);
  });
  test("each step of the workings has a number for every symbol of its rule", () => {
    const answer = measured({ planes: [[mm(50), mm(50.2)], [mm(49.9)]], how: "caliper" }, facts);
    if (!answer.ok) throw new Error("refused");
    for (const [rule, inputs] of answer.workings) expect(inputs.filter(Number.isFinite), rule.id).toHaveLength(rule.inputs.length);
    const mean = answer.workings.find(([rule]) => rule.id === "mean-of-readings");
    expect(mean?.[1][0]).toBeCloseTo(0.1501, 12);
    expect(mean?.[1][1]).toBe(3);
    expect(answer.workings.map(([rule]) => rule.id)).toContain("repeatability");
    const one = measured({ readings: [mm(50)], how: "caliper" }, facts);
    expect(one.ok && one.workings.map(([rule]) => rule.id)).not.toContain("repeatability");
  });
});

describe("a sleeve measured in planes", () => {
  const sleeve = found({
    planes: [
      [mm(49.62), mm(49.58)],
      [mm(49.41), mm(49.35)],
      [mm(49.6), mm(49.57)],
    ],
    how: "micrometer",
  });
  test("is out of round by the worst plane, tapered by the difference of plane means", () => {
    expect(toMm(sleeve.outOfRound as Length)).toBeCloseTo(0.06, 9);
    expect(toMm(sleeve.taper as Length)).toBeCloseTo(49.6 - 49.38, 9);
    expect(sleeve.count).toBe(6);
    expect(toMm(sleeve.spread)).toBeCloseTo(0.27, 9);
  });
  test("one dimension read over and over has neither", () => {
    expect(found({ readings: [mm(50), mm(50.1)], how: "rule" })).not.toHaveProperty("outOfRound");
  });
});

describe("what cannot be worked out is refused by name", () => {
  const cases: readonly (readonly [string, Parameters<typeof measured>[0], string])[] = [
    ["no reading", { readings: [] }, "missing readings"],
    ["nothing at all", {}, "missing readings"],
    ["a plane without readings", { planes: [[mm(50)], []] }, "missing planes[1]"],
    ["a first plane without readings", { planes: [[], [mm(50)]] }, "missing planes[0]"],
    ["a negative reading", { readings: [mm(50), mm(-50)] }, "outside-range readings[1]"],
    ["a reading that is no number", { readings: [Number.NaN as Length] }, "outside-range readings[0]"],
    ["a reading without end", { planes: [[mm(50), Number.POSITIVE_INFINITY as Length]] }, "outside-range planes[0][1]"],
    ["a negative step", { readings: [mm(50)], resolution: mm(-0.1) }, "outside-range resolution"],
    ["a step beyond all measure", { readings: [mm(50)], resolution: 1e308 as Length }, "outside-range resolution"],
    ["two sets of readings", { readings: [mm(50)], planes: [[mm(50)]] }, "impossible planes"],
  ];
  for (const [title, given, expected] of cases) {
    test(title, () => {
      const answer = measured(given, facts);
      expect(answer.ok ? "ok" : `${answer.refusal.kind} ${answer.refusal.input}`).toBe(expected);
      if (!answer.ok) expect([...allIds(), "outside-range"]).toContain(answer.refusal.says.id);
    });
  }
});

const reading = fc.integer({ min: 4000, max: 6000 }).map((hundredths) => mm(hundredths / 100));
const readings = fc.array(reading, { minLength: 1, maxLength: 12 });

property("the order of the readings does not matter", [readings, fc.integer()], (given, turn) => {
  const at = Math.abs(turn) % given.length;
  const turned = [...given.slice(at), ...given.slice(0, at)].reverse();
  const one = found({ readings: given, how: "caliper" });
  const other = found({ readings: turned, how: "caliper" });
  expect(other.mean.mean).toBeCloseTo(one.mean.mean, 14);
  expect(other.standardUncertainty / one.standardUncertainty).toBeCloseTo(1, 9);
  expect(other.spread).toBe(one.spread);
});

property("ten times the same readings make the scatter count for less, the tool for as much", [readings], (given) => {
  const tenfold = Array.from({ length: 10 }, () => given).flat();
  const few = found({ readings: given, how: "caliper" });
  const many = found({ readings: tenfold, how: "caliper" });
  expect(many.standardUncertainty).toBeLessThanOrEqual(few.standardUncertainty * (given.length > 1 ? 1 : Number.POSITIVE_INFINITY));
  expect(many.standardUncertainty).toBeGreaterThanOrEqual(found({ readings: [mm(50)], how: "caliper" }).standardUncertainty * (1 - 1e-12));
});

property(
  "twice the size and twice the step is twice the uncertainty",
  [readings, fc.integer({ min: 1, max: 100 })],
  (given, hundredths) => {
    const step = mm(hundredths / 100);
    const one = found({ readings: given, resolution: step });
    const two = found({ readings: given.map((value) => (2 * value) as Length), resolution: (2 * step) as Length });
    expect(two.standardUncertainty / one.standardUncertainty).toBeCloseTo(2, 9);
    expect(two.mean.mean / one.mean.mean).toBeCloseTo(2, 12);
  },
);

property("the mean lies among the readings", [readings], (given) => {
  const { mean } = found({ readings: given, how: "rule" });
  expect(mean.mean).toBeGreaterThanOrEqual(Math.min(...given) - 1e-15);
  expect(mean.mean).toBeLessThanOrEqual(Math.max(...given) + 1e-15);
});
