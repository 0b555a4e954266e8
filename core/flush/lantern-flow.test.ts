import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { quantity } from "../units/index.ts";
import { type LanternFlow, lanternFlow } from "./index.ts";

type Given = Parameters<typeof lanternFlow>[0];
const bar = (value: number) => quantity("pressure", value, "bar");
const mm = (value: number) => quantity("length", value, "mm");

const pump: Given = {
  shaft: mm(50),
  flushGauge: bar(2),
  boxPressureGauge: bar(1.1),
  viscosity: quantity("viscosity", 1.0016, "mPa*s"),
  throatClearance: mm(0.02),
  throatLength: mm(30),
  glandClearance: mm(0.01),
  glandLength: mm(20),
};

function answer(given: Given) {
  const found = lanternFlow(given);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found;
}
const work = (given: Given): LanternFlow => answer(given).value;
const ids = (given: Given) => answer(given).warnings.map(({ says }) => says.id);

against(
  {
    topic: "flush",
    check: "Flow through one side of the lantern ring",
    source: { source: "python-scipy", at: "laminar flow through a concentric annulus, series solution; inputs invented" },
    tolerance: "narrow gap on the shaft's own diameter against the full annulus: gap over diameter, 0.3 %",
  },
  [
    {
      what: "50 mm shaft, 0.15 mm gap, 60 mm long, 4 bar, water at 20 °C",
      theirs: 0.00029493709010239446,
      ours: () =>
        work({
          ...pump,
          flushGauge: bar(4),
          boxPressureGauge: bar(0),
          viscosity: 0.00100159685 as never,
          throatClearance: mm(0.15),
          throatLength: mm(60),
        }).throatFlow,
      unit: "m3/s",
      within: { relative: 0.0031 },
    },
  ],
);

test("flush above the box goes both ways and keeps the product in", () => {
  const found = work(pump);
  expect(found.passes).toBe("flush-into-pump");
  expect(found.throatFlow).toBeGreaterThan(0);
  expect(found.glandFlow).toBeGreaterThan(0);
  expect(ids(pump)).toEqual([]);
});

test("flush below the box lets product out past the lantern ring; far below, it pushes back into the line", () => {
  const low = { ...pump, flushGauge: bar(1) };
  expect(work(low).passes).toBe("product-out");
  expect(ids(low)).toEqual(["product-passes-lantern"]);
  const off = { ...pump, flushGauge: bar(0.1) };
  expect(work(off).supplyFlow).toBeLessThan(0);
  expect(ids(off)).toContain("product-into-flush-line");
});

test("a lantern ring under vacuum draws air past the gland rings", () => {
  expect(ids({ ...pump, flushGauge: bar(-0.2), boxPressureGauge: bar(-0.5) })).toContain("flush-below-atmosphere");
});

test("a worn throat bush takes the water: twice the clearance is eight times the flow into the pump", () => {
  expect(work({ ...pump, throatClearance: mm(0.04) }).throatFlow / work(pump).throatFlow).toBeCloseTo(8, 9);
});

test("gaps of a millimetre are not laminar, and that is said", () => {
  expect(ids({ ...pump, throatClearance: mm(1) })).toContain("lantern-flow-not-laminar");
});

const gauge = fc.double({ min: 0.01, max: 20, noNaN: true });
const gap = fc.double({ min: 0.005, max: 0.1, noNaN: true });
const side = fc.double({ min: 5, max: 100, noNaN: true });

property(
  "what the line gives goes in and out; more flush is more of both; with the flush shut the tee reads between box and atmosphere",
  [gauge, gauge, gap, gap, side, side],
  (flush, boxPressure, throat, gland, throatLength, glandLength) => {
    const given: Given = {
      ...pump,
      flushGauge: bar(flush),
      boxPressureGauge: bar(boxPressure),
      throatClearance: mm(throat),
      glandClearance: mm(gland),
      throatLength: mm(throatLength),
      glandLength: mm(glandLength),
    };
    const found = work(given);
    expect(found.supplyFlow).toBeCloseTo(found.throatFlow + found.glandFlow, 15);
    const more = work({ ...given, flushGauge: bar(flush * 1.1) });
    expect(more.throatFlow).toBeGreaterThan(found.throatFlow);
    expect(more.glandFlow).toBeGreaterThan(found.glandFlow);
    expect(found.shutInGauge).toBeGreaterThanOrEqual(0);
    expect(found.shutInGauge).toBeLessThanOrEqual(given.boxPressureGauge);
    // Held at the pressure the shut tee reads, the line gives nothing: what comes in past the throat goes out past the gland.
    const balanced = work({ ...given, flushGauge: found.shutInGauge });
    expect(Math.abs(balanced.supplyFlow)).toBeLessThanOrEqual(1e-9 * Math.abs(balanced.glandFlow) + 1e-25);
  },
);

test("no gap, no length, no number is refused by name", () => {
  for (const [input, value] of [
    ["shaft", 0],
    ["flushGauge", Number.NaN],
    ["boxPressureGauge", bar(-1.2)],
    ["viscosity", 0],
    ["throatClearance", 0],
    ["glandClearance", -1],
    ["throatLength", 0],
    ["glandLength", 1e308],
    ["density", 0],
  ] as const) {
    expect(lanternFlow({ ...pump, [input]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
});
