import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type ThermalGrowth, thermalGrowth } from "./index.ts";

const facts = readAllFacts().heat;
const degC = (value: number) => quantity("temperature", value, "degC");
type Given = Parameters<typeof thermalGrowth>[0];
const set: Given = { packing: "ptfe", packedLength: quantity("length", 50, "mm"), from: degC(20), to: degC(100), boxMaterial: "rigid" };

function work(given: Given): ThermalGrowth {
  const answer = thermalGrowth(given, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

// The means decide which of the eleven temperatures the table's ten values belong to; a wrong shift of one place is out by a tenth and more.
against(
  {
    topic: "heat",
    check: "Mean linear expansion of PTFE from 25 °C",
    source: { source: "memory", at: "mean expansions of PTFE as commonly tabulated, 12.4 to 17.5 in 1e-5 per K" },
    tolerance: "two sets of measurements of different grades, 1.5 %",
  },
  (
    [
      [100, 12.4],
      [150, 13.5],
      [200, 15.1],
      [250, 17.5],
    ] as const
  ).map(([to, mean]) => ({
    what: `25 to ${to} °C`,
    theirs: mean,
    ours: () => (work({ ...set, from: degC(25), to: degC(to) }).strain / (to - 25)) * 1e5,
    unit: "1e-5/K",
    within: { relative: 0.015 },
  })),
);

test("PTFE warmed from 20 to 100 °C is 0.98 % longer and 2.96 % larger, as the printed coefficients add up by hand", () => {
  // Trapezia between the printed values: 30 K at (11.6 + 11.9)/2, 50 K at (11.9 + 13.1)/2.
  expect(work(set).strain).toBeCloseTo((30 * 11.75 + 50 * 12.5) * 1e-5, 12);
  expect(work(set).volumeStrain).toBeCloseTo(0.0296, 4);
  for (const [to, percent] of [
    [50, 0.353],
    [80, 0.72],
    [150, 1.72],
    [200, 2.7],
    [250, 4.01],
  ] as const) {
    expect(work({ ...set, to: degC(to) }).strain * 100).toBeCloseTo(percent, percent < 1 ? 2 : 1);
  }
});

test("five 10 mm rings grow half a millimetre free, 1.3 mm held: 1.7 and 4.5 flats of M12", () => {
  const found = work({ ...set, pitch: quantity("length", 1.75, "mm") });
  expect(inUnit("length", found.free, "mm")).toBeCloseTo(0.489, 3);
  expect(inUnit("length", found.confined ?? found.free, "mm")).toBeCloseTo((0.48875 * 1.46) / 0.54, 4);
  expect(found.freeFlats).toBeCloseTo(1.68, 2);
  expect(found.confinedFlats).toBeCloseTo(4.53, 2);
});

test("a steel box takes a tenth of it back, a stainless one more", () => {
  const rigid = work(set).free;
  const steel = work({ ...set, boxMaterial: "carbon-steel" }).free;
  const stainless = work({ ...set, boxMaterial: "austenitic-steel" }).free;
  expect(1 - steel / rigid).toBeCloseTo(0.094, 3);
  expect(stainless).toBeLessThan(steel);
  const { boxMaterial: _, ...unsaid } = set;
  expect(work(unsaid).free).toBe(steel);
});

test("flexible graphite grows at most a third of what PTFE does, and says that this is the most", () => {
  const answer = thermalGrowth({ ...set, packing: "flexible-graphite" }, facts);
  if (!answer.ok) throw new Error("refused");
  expect(answer.value.strain).toBeCloseTo(33e-6 * 80, 12);
  expect(answer.value.strain).toBeLessThan(work(set).strain / 3);
  expect(answer.value.confined).toBeUndefined();
  expect(answer.warnings.map(({ says }) => says.id)).toEqual(["graphite-grows-at-most"]);
});

const celsius = fc.double({ min: -150, max: 250, noNaN: true });

property("warming in two steps grows as much as in one, and cooling takes it back", [celsius, celsius, celsius], (a, b, c) => {
  const strain = (from: number, to: number) => work({ ...set, from: degC(from), to: degC(to) }).strain;
  expect(strain(a, b) + strain(b, c)).toBeCloseTo(strain(a, c), 12);
  expect(strain(a, b)).toBeCloseTo(-strain(b, a), 15);
  if (b > a + 0.001) expect(strain(a, b)).toBeGreaterThan(0);
});

property(
  "held by its walls it grows more along the shaft than free, more so the nearer to a liquid it behaves",
  [fc.double({ min: 0.01, max: 0.49, noNaN: true }), celsius.filter((value) => value > 25)],
  (poisson, to) => {
    const found = work({ ...set, to: degC(to), poisson });
    expect(found.confined ?? 0).toBeGreaterThan(found.free);
    expect(work({ ...set, to: degC(to), poisson: poisson / 2 }).confined ?? 0).toBeLessThan(found.confined ?? 0);
    expect((work({ ...set, to: degC(to), poisson: 0 }).confined ?? 0) / found.free).toBeCloseTo(1, 12);
  },
);

test("outside the table, or no length at all, is refused by name", () => {
  for (const [input, value] of [
    ["from", degC(-160)],
    ["to", degC(251)],
    ["to", Number.NaN],
    ["packedLength", 0],
    ["poisson", 0.5],
    ["pitch", 0],
  ] as const) {
    expect(thermalGrowth({ ...set, [input]: value }, facts)).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(thermalGrowth({ ...set, packing: "flexible-graphite", to: degC(460) }, facts)).toMatchObject({ ok: false });
});
