import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type AirIngress, airIngress } from "./index.ts";

type Given = Parameters<typeof airIngress>[0];
const bar = (value: number) => quantity("pressure", value, "bar");

function answer(given: Given) {
  const found = airIngress(given);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found;
}
const work = (given: Given): AirIngress => answer(given).value;
const ids = (given: Given) => answer(given).warnings.map(({ says }) => says.id);

against(
  {
    topic: "flush",
    check: "Independent supply for a vacuum at the box",
    source: { source: "pump-handbook-2001", at: "p. 2.192, 10 to 25 psi; the bar figures beside them there are a misprint" },
    tolerance: "exact",
  },
  (["low", "high"] as const).map((end, index) => ({
    what: `${end} end`,
    theirs: [10, 25][index] ?? 0,
    ours: () => inUnit("pressure", work({ boxPressureGauge: bar(-0.6) }).supply?.[end] ?? bar(0), "psi"),
    unit: "psi",
    within: { absolute: 1e-9 },
  })),
);

test("a flooded pump lets no air in and needs nothing", () => {
  expect(work({ boxPressureGauge: bar(1.5), suctionGauge: bar(0.5) })).toEqual({ running: "out", standing: "out", advice: "none" });
  expect(ids({ boxPressureGauge: bar(1.5), suctionGauge: bar(0.5) })).toEqual([]);
});

test("a condensate pump on a vacuum draws air running and standing, and wants a supply of its own", () => {
  expect(work({ boxPressureGauge: bar(-0.9), suctionGauge: bar(-0.9) })).toMatchObject({
    running: "in",
    standing: "in",
    advice: "independent-supply",
  });
});

test("a short suction lift is sealed from discharge while it runs, and says that this stops with the pump", () => {
  const short: Given = { boxPressureGauge: bar(0.1), boxLowestGauge: bar(-0.2), suctionGauge: bar(-0.3) };
  expect(work(short)).toMatchObject({ running: "may", standing: "in", advice: "bypass-from-discharge" });
  expect(ids(short)).toContain("bypass-stops-with-the-pump");
});

test("15 ft of lift is where the handbook asks for an independent supply: 0.448 bar of cold water", () => {
  const at = (suction: number) => work({ boxPressureGauge: bar(0), suctionGauge: bar(suction) }).advice;
  expect(at(-0.447)).toBe("bypass-from-discharge");
  expect(at(-0.449)).toBe("independent-supply");
});

test("with suction unknown nothing is said about standstill, and that is said", () => {
  expect(work({ boxPressureGauge: bar(1) }).standing).toBeUndefined();
  expect(ids({ boxPressureGauge: bar(1) })).toEqual(["air-standing-not-known"]);
});

const order = { in: 0, may: 1, out: 2 } as const;
const gauge = fc.double({ min: -1, max: 5, noNaN: true });
property(
  "more pressure in the box never lets more air in; a supply is named only with the advice to have one",
  [gauge, gauge, gauge],
  (a, b, suction) => {
    const at = (box: number) => work({ boxPressureGauge: bar(box), suctionGauge: bar(suction) });
    expect(order[at(Math.max(a, b)).running]).toBeGreaterThanOrEqual(order[at(Math.min(a, b)).running]);
    const found = at(a);
    expect(found.supply !== undefined).toBe(found.advice === "independent-supply");
    expect(found.advice === "none").toBe(found.running === "out" && found.standing === "out");
  },
);

test("below a perfect vacuum, no number, or a band upside down is refused by name", () => {
  for (const input of ["boxPressureGauge", "boxLowestGauge", "suctionGauge"] as const) {
    for (const value of [bar(-1.2), Number.NaN, 1e308]) {
      expect(airIngress({ boxPressureGauge: bar(1), boxLowestGauge: bar(0), [input]: value })).toMatchObject({
        ok: false,
        refusal: { kind: "outside-range", input },
      });
    }
  }
  expect(airIngress({ boxPressureGauge: bar(1), boxLowestGauge: bar(2) })).toMatchObject({ ok: false, refusal: { kind: "impossible" } });
});
