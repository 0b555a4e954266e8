import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { sources } from "../sources/index.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type FlushPressure, flushPressure, flushServices } from "./index.ts";

const facts = readAllFacts().flush.flushPressure;
type Given = Parameters<typeof flushPressure>[0];
const bar = (value: number) => quantity("pressure", value, "bar");
const inBar = (value: number) => inUnit("pressure", value as never, "bar");

function answer(given: Given) {
  const found = flushPressure(given, facts);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found;
}
const work = (given: Given): FlushPressure => answer(given).value;
const ids = (given: Given) => answer(given).warnings.map(({ says }) => says.id);

const box: Given = {
  service: "clean",
  boxPressureGauge: bar(1.1),
  boxHighestGauge: bar(1.4),
  suctionGauge: bar(0.5),
  dischargeGauge: bar(6),
};

against(
  {
    topic: "flush",
    check: "Flush pressure above the bottom of the box",
    source: { source: "flow-control-2014", at: "15 to 30 psi, printed there as 1 to 2 bar" },
    tolerance: "printed in whole bar",
  },
  (["low", "high"] as const).map((end, index) => ({
    what: `clean service, ${end} end`,
    theirs: index + 1,
    ours: () => inBar(work(box).margin[end]),
    unit: "bar",
    within: { absolute: 0.1 },
  })),
);

describe("vacuum service", () => {
  const vacuum: Given = { service: "vacuum", boxPressureGauge: bar(-0.5) };

  test("10 to 25 psi above the atmosphere is 0.69 to 1.72 bar, not the 4.8 to 11.7 bar of the misprint", () => {
    const { setting } = work(vacuum);
    expect(inBar(setting.low)).toBeCloseTo(0.69, 2);
    expect(inBar(setting.high)).toBeCloseTo(1.72, 2);
  });

  test("a box that stands above the atmosphere after all still gets its margin", () => {
    const { setting } = work({ ...vacuum, boxPressureGauge: bar(2) });
    expect(inBar(setting.low)).toBeCloseTo(2 + inUnit("pressure-difference", quantity("pressure-difference", 15, "psi"), "bar"), 9);
  });
});

describe("the usual mistakes", () => {
  test.each([
    [1.2, "below-box", ["flush-below-box", "flush-set-against-suction"]],
    [0.4, "below-box", ["flush-below-box"]],
    [1.8, "thin", ["flush-thin"]],
    [3, "right", []],
    [5, "high", ["flush-high"]],
    [7, "high", ["flush-set-against-discharge"]],
  ] as const)("a flush at %s bar is %s", (set, present, said) => {
    expect(work({ ...box, setGauge: bar(set) }).present).toBe(present);
    expect(ids({ ...box, setGauge: bar(set) })).toEqual([...said]);
  });

  test("knowing discharge, it is said that the box is what counts", () => {
    expect(ids(box)).toEqual(["flush-not-against-discharge"]);
    expect(ids({ service: "clean", boxPressureGauge: bar(1) })).toEqual([]);
  });

  test("for slurry the quarrel between the sources is shown, with what each would ask for", () => {
    const slurry: Given = { ...box, service: "slurry" };
    expect(ids(slurry)).toContain("flush-sources-differ");
    const { rules, setting } = work(slurry);
    expect(inBar(setting.low)).toBeCloseTo(2.1, 9);
    expect(inBar(setting.high)).toBeCloseTo(2.5, 9);
    const overDischarge = rules.filter(({ above }) => above === "discharge");
    expect(overDischarge.length).toBe(3);
    for (const rule of overDischarge) expect(rule.setting?.low).toBeGreaterThan(setting.high);
  });

  test("a rule that refers to a pressure nobody gave has no setting, but keeps its margin and source", () => {
    const { rules } = work({ service: "clean", boxPressureGauge: bar(1) });
    const overSuction = rules.filter(({ above }) => above === "suction");
    expect(overSuction.length).toBe(3);
    for (const { setting, margin } of overSuction) expect([setting, margin.low > 0]).toEqual([undefined, true]);
  });
});

describe("a supply", () => {
  test("that gets there needs no remedy", () =>
    expect(work({ ...box, supplyGauge: bar(2.5) })).toMatchObject({ reaches: "yes", remedies: [] }));

  test("that gets there only if the box is lower than feared: put a gauge on it first", () => {
    const found = work({ ...box, supplyGauge: bar(2.2) });
    expect(found.reaches).toBe("uncertain");
    expect(found.remedies[0]).toBe("measure-box-pressure");
  });

  test("of 6 bar where 9 is needed cannot, and clean product may come from discharge, slurry not", () => {
    const high: Given = { ...box, boxPressureGauge: bar(8), boxHighestGauge: bar(8) };
    const found = work({ ...high, supplyGauge: bar(6) });
    expect(found.reaches).toBe("no");
    expect(found.remedies).toContain("flush-from-discharge");
    expect(work({ ...high, service: "slurry", supplyGauge: bar(6) }).remedies).not.toContain("flush-from-discharge");
    expect(ids({ ...high, supplyGauge: bar(6) })).toContain("flush-supply-too-low");
  });
});

test("each rule has a source in the register and runs from low to high; each service has one above the box to be set by", () => {
  for (const { citation, low, high } of facts.rules) {
    expect(Object.hasOwn(sources, citation.source)).toBe(true);
    expect(low).toBeGreaterThan(0);
    expect(high).toBeGreaterThanOrEqual(low);
  }
  for (const service of flushServices) {
    const set = facts.rules.filter((rule) => rule.services.includes(service) && rule.use === "set" && rule.above === "box");
    expect(set.length, service).toBeGreaterThan(0);
  }
});

const gauge = fc.double({ min: -0.9, max: 60, noNaN: true });

property(
  "the flush stands above the box at both ends, and rises with it",
  [gauge, gauge, fc.constantFrom(...flushServices)],
  (low, more, service) => {
    const given: Given = { service, boxPressureGauge: bar(low) };
    const found = work(given);
    expect(found.setting.low).toBeGreaterThan(given.boxPressureGauge);
    expect(found.setting.high).toBeGreaterThan(found.setting.low);
    expect(found.margin.low).toBeGreaterThan(0);
    const raised = work({ ...given, boxHighestGauge: bar(low + Math.abs(more)) });
    expect(raised.setting.low).toBeGreaterThanOrEqual(found.setting.low);
  },
);

test("no pressure that cannot be, and no upside-down band", () => {
  for (const input of ["boxPressureGauge", "suctionGauge", "dischargeGauge", "supplyGauge", "setGauge"] as const) {
    for (const value of [bar(-2), bar(2000), Number.NaN]) {
      const { boxHighestGauge: _, ...given } = box;
      const name = input === "boxPressureGauge" ? /boxPressureGauge/ : new RegExp(input);
      expect(flushPressure({ ...given, [input]: value }, facts)).toMatchObject({
        ok: false,
        refusal: { input: expect.stringMatching(name) },
      });
    }
  }
  expect(flushPressure({ ...box, boxHighestGauge: bar(1) }, facts)).toMatchObject({
    ok: false,
    refusal: { kind: "impossible", input: "boxHighestGauge" },
  });
  expect(flushPressure({ ...box, service: "gas" as never }, facts)).toMatchObject({
    ok: false,
    refusal: { kind: "not-known", input: "service" },
  });
});
