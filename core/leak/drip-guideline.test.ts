import { readAllFacts } from "@ringwright/data";
import { allIds, nameOf } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { motions } from "../box/index.ts";
import { sources } from "../sources/index.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type DripQuestion, dripGuideline, dripServices } from "./index.ts";

const facts = readAllFacts().leak.drip;
const pump: DripQuestion = { motion: "turning", shaft: quantity("length", 2, "in") };

function guided(change: Partial<DripQuestion> = {}) {
  const found = dripGuideline({ ...pump, ...change }, facts);
  if (!found.ok) throw new Error(`${found.refusal.kind} ${found.refusal.input}`);
  return found;
}
const figure = (id: string, change: Partial<DripQuestion> = {}) => guided(change).value.guidelines.find((entry) => entry.id === id);
const idsOf = (change: Partial<DripQuestion>) => guided(change).warnings.map((warning) => warning.says.id);

// Each figure as its source prints it; the sources stand beside the facts and are shown with every reply.
describe("published drips come back as printed", () => {
  const printed: readonly (readonly [string, Partial<DripQuestion>, number, number])[] = [
    ["handbook", {}, 40, 60],
    ["pump-manual-a", {}, 40, 60],
    ["note-20-40", {}, 20, 40],
    ["note-60", {}, 60, 60],
    ["service-firm", {}, 16, 20],
    ["service-firm", { shaft: quantity("length", 3, "in") }, 24, 30],
    ["sludge", { service: "sludge" }, 60, 60],
    ["irrigation", { service: "irrigation" }, 40, 60],
    ["rotary-pump", { service: "rotary-pump" }, 10, 10],
    ["fire-pump-maker", { service: "fire-pump" }, 60, 60],
    ["fire-pump-overhaul", { service: "fire-pump" }, 10, 120],
    ["army-new", { service: "fire-pump", material: "flexible-graphite", stage: "new" }, 10, 15],
    ["army-run-in", { service: "fire-pump", material: "flexible-graphite" }, 1, 1],
    ["yacht-tip", { service: "yacht-stern" }, 2, 3],
    ["plunger", { motion: "stroking" }, 40, 60],
  ];
  for (const [id, change, low, high] of printed) {
    test(`${id}: ${low} to ${high} drops a minute`, () => {
      const drops = figure(id, change)?.drops;
      expect(drops?.low).toBeCloseTo(low, 10);
      expect(drops?.high).toBeCloseTo(high, 10);
    });
  }
});

test("a ship's stern gland is given in litres an hour: 1,700 to 3,300 drops a minute of 0.05 mL", () => {
  const ship = figure("ship-stern", { service: "ship-stern" });
  expect(ship?.flow && [inUnit("flow", ship.flow.low, "L/h"), inUnit("flow", ship.flow.high, "L/h")].map((n) => Math.round(n))).toEqual([
    5, 10,
  ]);
  expect(Math.round((ship?.drops?.low ?? 0) / 100)).toBe(17);
  expect(Math.round((ship?.drops?.high ?? 0) / 100)).toBe(33);
});

test("the published drips quarrel by more than a thousand to one", () => {
  const all = [...dripServices].flatMap((service) => guided({ service, material: "flexible-graphite" }).value.spread ?? []);
  expect(Math.max(...all.map((band) => band.high)) / Math.min(...all.map((band) => band.low))).toBeGreaterThan(1000);
});

test("a source that prints words and no number comes back with its words", () => {
  for (const { saying } of facts.guidelines) if (saying !== undefined) expect(nameOf(saying)).toMatch(/^(?:a|generous)\b/u);
  expect(guided({ service: "slurry" }).value.spread).toBeUndefined();
});

test("every figure names a source that the project knows, and none is for a valve stem", () => {
  expect(facts.guidelines.length).toBeGreaterThan(20);
  for (const { citation, motions: of, id, drops, flow, saying } of facts.guidelines) {
    expect(sources[citation.source], id).toBeDefined();
    expect(of.filter((motion) => motion.includes("stem"))).toEqual([]);
    expect(
      [drops, flow, saying].filter((entry) => entry !== undefined),
      id,
    ).toHaveLength(1);
  }
  expect(new Set(facts.guidelines.map(({ id }) => id)).size).toBe(facts.guidelines.length);
});

test("no drip for valve stems, ever", () => {
  for (const motion of ["rising-stem", "quarter-turn-stem"] as const) {
    expect(dripGuideline({ ...pump, motion, house: { low: 1, high: 2 } }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "impossible", input: "motion", given: motion, says: { id: "drip-never-for-stems" } },
    });
  }
});

test("where product may not be let out, product is no drip: flush or grease, or nothing", () => {
  const closed = { ...pump, release: "not-allowed" } as const;
  for (const question of [closed, { ...closed, film: "product" } as const]) {
    expect(dripGuideline(question, facts)).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "film" } });
  }
  expect(idsOf({ release: "not-allowed", film: "flush" })).toContain("drip-flush-to-closed-drain");
  expect(idsOf({})).toContain("drip-release-not-said");
});

test("no drip at all is in order only with flexible graphite, grease or a box below the atmosphere, and then temperature judges", () => {
  for (const [change, zeroBecause] of [
    [{ material: "flexible-graphite" }, "flexible-graphite"],
    [{ film: "grease" }, "grease"],
    [{ boxPressure: quantity("pressure", -0.3, "bar") }, "vacuum"],
  ] as const) {
    expect(guided(change).value).toMatchObject({ zeroAllowed: true, zeroBecause });
    expect(idsOf(change)).toContain(`drip-zero-${zeroBecause.replace("flexible-", "")}`);
  }
  expect(guided({ material: "other", film: "flush", boxPressure: quantity("pressure", 1, "bar") }).value.zeroAllowed).toBe(false);
  expect(idsOf({})).toContain("drip-zero-burns");
});

property(
  "nothing said about a drip is ever to tighten until it stops, whatever is asked",
  [
    fc.constantFrom(...motions),
    fc.constantFrom(...dripServices),
    fc.constantFrom("new", "settled", "standing"),
    fc.constantFrom("product", "flush", "grease"),
    fc.constantFrom("allowed", "not-allowed", "unknown"),
    fc.double({ min: -1, max: 20, noNaN: true }),
    fc.double({ min: -10, max: 300 }),
  ],
  (motion, service, stage, film, release, bar, rate) => {
    const found = dripGuideline(
      { ...pump, motion, service, stage, film, release, boxPressure: quantity("pressure", bar, "bar"), rate },
      facts,
    );
    if (!found.ok) {
      expect(allIds().has(found.refusal.says.id)).toBe(true);
      return;
    }
    const ids = found.warnings.map((warning) => warning.says.id);
    expect(ids.filter((id) => !allIds().has(id))).toEqual([]);
    if (motion !== "stroking") expect(ids).toContain("drip-never-toward-zero");
    for (const { drops, verdict } of found.value.guidelines) {
      if (!drops) continue;
      expect(drops.low > 0 && drops.high >= drops.low).toBe(true);
      expect(verdict).toBe(rate < drops.low ? "below" : rate > drops.high ? "above" : "within");
    }
  },
);

test("a counted drip is held against each figure and against the house limit", () => {
  const { value } = guided({ rate: 30, house: { low: 25, high: 35 } });
  expect(value.house).toEqual({ drops: { low: 25, high: 35 }, verdict: "within" });
  expect(value.guidelines.find((entry) => entry.id === "handbook")?.verdict).toBe("below");
  expect(value.guidelines.find((entry) => entry.id === "service-firm")?.verdict).toBe("above");
});

test("the drip as a flow carries the spread of the drop, until the drop is measured", () => {
  const wide = guided().value.flow;
  const sure = guided({ dropVolume: quantity("volume", 0.05, "mL") }).value.flow;
  if (!wide || !sure) throw new Error("no flow");
  expect(inUnit("flow", sure.high, "mL/min")).toBeCloseTo(3, 10);
  expect(inUnit("flow", wide.high, "mL/min")).toBeCloseTo(15, 10);
  expect(inUnit("flow", wide.low, "mL/min")).toBeCloseTo(16 * 0.03, 10);
});

test("for an agitator nobody has published a drip: not known, unless the house has a limit", () => {
  expect(dripGuideline({ ...pump, motion: "slow-agitator" }, facts)).toMatchObject({ ok: false, refusal: { kind: "not-known" } });
  expect(guided({ motion: "slow-agitator", house: { low: 0, high: 5 } }).value).toMatchObject({
    guidelines: [],
    house: { drops: { high: 5 } },
  });
});

test("no shaft, a count below nothing and a house limit upside down are refused by name", () => {
  for (const [change, input] of [
    [{ shaft: quantity("length", 0, "mm") }, "shaft"],
    [{ shaft: quantity("length", Number.NaN, "mm") }, "shaft"],
    [{ rate: -1 }, "rate"],
    [{ rate: Number.NaN }, "rate"],
    [{ house: { low: 5, high: 1 } }, "house.high"],
    [{ dropVolume: quantity("volume", 5, "mL") }, "dropVolume"],
  ] as const) {
    expect(dripGuideline({ ...pump, ...change }, facts)).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
});
