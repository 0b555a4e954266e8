import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import weights from "../../data/tables/drop-weights.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { waterState } from "../fluid/index.ts";
import { inUnit, quantity, type Volume } from "../units/index.ts";
import { drops, dropsFromFlow, dropVolume } from "./index.ts";

const ml = (value: number) => quantity("volume", value, "mL");

function flowOf(rate: number, volume?: Volume) {
  const found = drops(volume === undefined ? { rate } : { rate, dropVolume: volume });
  if (!found.ok) throw new Error(found.refusal.input);
  return found.value;
}

const perDay = (rate: number, volume: Volume) => inUnit("volume", (flowOf(rate, volume).flow * 86400) as Volume, "gal");

against(
  {
    topic: "leak",
    check: "A drop a second over a day",
    source: { source: "reeves-drops", at: "20 drops to the millilitre, about a gallon a day" },
    tolerance: "printed as about one US gallon; 20 drops to the millilitre make 1.14",
  },
  [{ what: "60 drops a minute of 0.05 mL", theirs: 1, ours: () => perDay(60, ml(0.05)), unit: "US gal/day", within: { absolute: 0.15 } }],
);

test("a drop a second of 0.05 mL is 1.14 US gallons a day", () => {
  expect(perDay(60, ml(0.05))).toBeCloseTo(1.14, 2);
});

against(
  {
    topic: "leak",
    check: "Sixty drops a minute, by whose drop it is",
    source: { source: "dripping-tap-leaflets", at: "a tap's drop 0.25 mL; a pharmacist's 0.05 mL (W. Reeves)" },
    tolerance: "exact",
  },
  [
    {
      what: "as a pharmacist counts",
      theirs: 3,
      ours: () => inUnit("flow", flowOf(60).flow, "mL/min"),
      unit: "mL/min",
      within: { relative: 1e-12 },
    },
    {
      what: "as a tap drips",
      theirs: 15,
      ours: () => inUnit("flow", flowOf(60).band?.high ?? (Number.NaN as never), "mL/min"),
      unit: "mL/min",
      within: { relative: 1e-12 },
    },
  ],
);

test("with no drop volume measured, the 0.05 mL is said to be assumed, with its spread, and the flow comes as a band", () => {
  const found = drops({ rate: 60 });
  expect(found).toMatchObject({ ok: true, warnings: [{ kind: "gap", says: { id: "drop-volume-not-measured" } }] });
  expect(found.ok && found.workings[0]?.[0].assumed).toEqual({ min: ml(0.03), max: ml(0.25) });
  expect(found.ok && inUnit("flow", found.value.band?.low ?? (0 as never), "mL/min")).toBeCloseTo(1.8, 12);
  expect(flowOf(60, ml(0.05)).band).toBeUndefined();
});

// Why a drip is never sized for heat: 60 drops a minute warmed by 20 K carry a few watts, friction makes hundreds.
test("a drop a second warmed by 20 K carries away less than 5 W", () => {
  const water = waterState(quantity("temperature", 20, "degC"), quantity("absolute-pressure", 1, "bar"));
  if (!water) throw new Error("no water");
  const watts = water.density * water.heatCapacity * flowOf(60, ml(0.05)).flow * 20;
  expect(watts).toBeCloseTo(4.2, 1);
  expect(watts).toBeLessThan(5);
});

property(
  "drops to flow and back to drops is the same count",
  [fc.double({ min: 0.01, max: 10000, noNaN: true }), fc.double({ min: 0.001, max: 2, noNaN: true })],
  (rate, volume) => {
    const found = dropsFromFlow({ flow: flowOf(rate, ml(volume)).flow, dropVolume: ml(volume) });
    expect(found.ok && Math.abs(found.value.rate - rate)).toBeLessThanOrEqual(1e-12 * rate);
  },
);

property(
  "more drops or bigger drops are more leak, in proportion",
  [fc.double({ min: 1, max: 400, noNaN: true }), fc.double({ min: 1.01, max: 4, noNaN: true })],
  (rate, factor) => {
    const flow = flowOf(rate, ml(0.05)).flow;
    expect(flowOf(rate * factor, ml(0.05)).flow / flow).toBeCloseTo(factor, 10);
    expect(flowOf(rate, ml(0.05 * factor)).flow / flow).toBeCloseTo(factor, 10);
  },
);

test("a flow as drops has the larger count for the smaller drop", () => {
  const found = dropsFromFlow({ flow: quantity("flow", 3, "mL/min") });
  if (!found.ok || !found.value.band) throw new Error("no band");
  expect([found.value.band.low, found.value.rate, found.value.band.high].map((n) => Math.round(n))).toEqual([12, 60, 100]);
});

test("above five a second drops run together, and the count is flagged", () => {
  expect(drops({ rate: 400, dropVolume: ml(0.05) })).toMatchObject({ ok: true, warnings: [{ says: { id: "drops-run-together" } }] });
  expect(allIds().has("drops-run-together")).toBe(true);
});

test("fewer drops than none, a bucket for a drop and nonsense are refused by name", () => {
  for (const [rate, volume, input] of [
    [-1, ml(0.05), "rate"],
    [Number.NaN, ml(0.05), "rate"],
    [10001, ml(0.05), "rate"],
    [60, ml(0), "dropVolume"],
    [60, ml(50), "dropVolume"],
  ] as const) {
    expect(drops({ rate, dropVolume: volume })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(dropsFromFlow({ flow: quantity("flow", -1, "L/min") })).toMatchObject({ ok: false, refusal: { input: "flow" } });
});

const hanging = (mm: number, degrees: number) => {
  const found = dropVolume({ tip: quantity("length", mm, "mm"), temperature: quantity("temperature", degrees, "degC") });
  if (!found.ok) throw new Error(found.refusal.input);
  return found;
};
// Water at 15 °C: 999.1 kg/m3, so a gram is 1.0009 mL.
const asMl = (grams: number) => grams / 0.9991;

against(
  {
    topic: "leak",
    check: "Volume of a drop of water by the edge that it hangs from",
    source: { source: "eschbaum-1895" },
    tolerance: "25 %: one share of the hanging drop, 0.65, is taken for all widths; it is more the narrower the edge",
  },
  weights.rows.map((row) => ({
    what: `edge ${row.width} mm wide`,
    theirs: asMl(row.weight),
    ours: () => inUnit("volume", hanging(row.width, 15).value.dropVolume.mean, "mL"),
    unit: "mL",
    within: { relative: 0.25 },
  })),
);

test("every drop that was weighed lies in the band that is given for its edge, and narrower edges are flagged", () => {
  for (const { width, weight } of weights.rows) {
    const { value, warnings } = hanging(width, 15);
    const flagged = warnings.some((warning) => warning.kind === "outside-validity");
    expect(flagged).toBe(width < 1);
    if (flagged) continue;
    expect(ml(asMl(weight))).toBeGreaterThan(value.band.low);
    expect(ml(asMl(weight))).toBeLessThan(value.band.high);
  }
});

against(
  {
    topic: "leak",
    check: "The pharmacist's dropper",
    source: { source: "usp-32-1101", at: "3 mm across, drops of 45 to 55 mg" },
    tolerance: "half the width of the printed range",
  },
  [
    {
      what: "drop from an edge 3 mm wide",
      theirs: 50,
      ours: () => hanging(3, 20).value.dropVolume.mean * 998.2 * 1e6,
      unit: "mg",
      within: { absolute: 5 },
    },
  ],
);

test("a catch: 200 drops that come to 10 mL are drops of 0.05 mL, surer the more is caught", () => {
  const found = (count: number, caught: number) => {
    const answer = dropVolume({ drops: count, caught: ml(caught), resolution: ml(1) });
    if (!answer.ok) throw new Error(answer.refusal.input);
    return answer.value;
  };
  expect(found(200, 10)).toMatchObject({ basis: "timed-catch", dropVolume: { mean: ml(0.05) } });
  // JCGM 100, 5.1.6: relative variances add; 1 mL marks are 0.29 mL, a count within one is 0.58.
  expect(found(200, 10).dropVolume.u / ml(0.05)).toBeCloseTo(Math.sqrt((1 / 3.4641016 / 10) ** 2 + (1 / 1.7320508 / 200) ** 2), 8);
  expect(found(1000, 50).dropVolume.u).toBeLessThan(found(200, 10).dropVolume.u);
});

property(
  "a drop volume found from a catch gives the caught volume back for the drops counted",
  [fc.integer({ min: 5, max: 2000 }), fc.double({ min: 0.02, max: 0.3, noNaN: true })],
  (count, each) => {
    const caught = ml(count * each);
    const found = dropVolume({ drops: count, caught, resolution: ml(0.05) });
    if (!found.ok) throw new Error(found.refusal.input);
    expect((flowOf(count, found.value.dropVolume.mean).flow * 60) / caught).toBeCloseTo(1, 10);
    expect(found.value.band.low).toBeLessThan(found.value.dropVolume.mean);
    expect(found.value.band.high).toBeGreaterThan(found.value.dropVolume.mean);
  },
);

test("with nothing said the usual 0.05 mL is given with its spread and said to be assumed", () => {
  expect(dropVolume({})).toMatchObject({
    ok: true,
    value: { basis: "assumed", dropVolume: { mean: ml(0.05) }, band: { low: ml(0.03), high: ml(0.25) } },
    warnings: [{ kind: "gap" }],
  });
});

test("half a catch, a mark coarser than the catch and a drop like a glass of water are told", () => {
  expect(dropVolume({ drops: 60 })).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "caught" } });
  expect(dropVolume({ caught: ml(3) })).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "drops" } });
  expect(dropVolume({ drops: 60, caught: ml(3), resolution: ml(5) })).toMatchObject({ ok: false, refusal: { input: "resolution" } });
  expect(dropVolume({ drops: 60, caught: ml(0.5) })).toMatchObject({ ok: false, refusal: { input: "resolution" } });
  expect(dropVolume({ drops: 1, caught: ml(3) })).toMatchObject({ ok: false, refusal: { input: "drops" } });
  expect(dropVolume({ tip: quantity("length", 30, "mm") })).toMatchObject({ ok: false, refusal: { input: "tip" } });
  const glass = dropVolume({ drops: 10, caught: ml(200) });
  expect(glass.ok && glass.warnings.map((warning) => [warning.kind, warning.says.id])).toEqual([
    ["note", "drop-count-short"],
    ["slip", "drop-volume-unlikely"],
  ]);
  for (const id of [
    "drop-count-short",
    "drop-volume-unlikely",
    "drop-catch-incomplete",
    "drop-volume-estimated",
    "drop-volume-not-measured",
  ]) {
    expect(allIds().has(id), id).toBe(true);
  }
});
