import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { quantity } from "../units/index.ts";
import { type HeatSplit, heatSplit } from "./index.ts";

type Given = Parameters<typeof heatSplit>[0];
const pump: Given = {
  power: quantity("power", 129, "W"),
  drip: quantity("flow", 3, "mL/min"),
  rise: quantity("temperature-difference", 20, "K"),
  shaft: quantity("length", 50, "mm"),
  temperature: quantity("temperature", 20, "degC"),
};

function answer(given: Given) {
  const found = heatSplit(given);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found;
}
const work = (given: Given): HeatSplit => answer(given).value;
const ids = (given: Given) => answer(given).warnings.map(({ says }) => says.id);

test("60 drops a minute of 0.05 mL carry 4.2 W of 129 at a rise of 20 K; to carry all, they would warm by 618 K and boil", () => {
  const found = work(pump);
  expect(found.dripPower).toBeCloseTo(4.18, 2);
  expect(found.dripPower).toBeLessThan(5);
  expect(found.dripCarries).toBe("little");
  expect(found.adiabaticRise).toBeGreaterThan(610);
  expect(found.adiabaticRise).toBeLessThan(620);
  expect(found.restPower).toBeCloseTo(129 - found.dripPower, 9);
  expect(ids(pump)).toEqual(["drip-carries-little", "drip-cannot-carry-all", "box-wall-left-out", "never-a-drip-for-heat"]);
});

/** Heat flow into a rod that is cooled along its side, by finite differences: no square root, no exponential. */
function finByCells(h: number, k: number, d: number, length: number, cells: number): number {
  const dx = length / cells;
  const along = (k * Math.PI * d * d) / 4 / dx;
  const side = h * Math.PI * d * dx;
  let toTheEnd = side;
  for (let i = 1; i < cells; i++) toTheEnd = side + (along * toTheEnd) / (along + toTheEnd);
  return (2 * along * toTheEnd) / (2 * along + toTheEnd);
}

describe("the shaft as a fin", () => {
  const partOf = (given: Given, rule: string) => answer(given).workings.find(([{ id }]) => id === rule)?.[2] ?? Number.NaN;

  test.each([
    ["steel", "shaft-fin-air", 15, 50],
    ["steel", "shaft-fin-wet", 2000, 50],
    ["stainless", "shaft-fin-air", 15, 16],
    ["stainless", "shaft-fin-wet", 2000, 16],
  ] as const)("%s, %s: what cells of a long rod pass on", (shaftMaterial, rule, h, k) => {
    expect(partOf({ ...pump, shaftMaterial }, rule) / finByCells(h, k, 0.05, 4, 40000)).toBeCloseTo(1, 4);
  });

  test("a stainless shaft leads less away than a steel one, and the packing is warmer for it", () => {
    const [steel, stainless] = [work({ ...pump, shaftMaterial: "steel" }), work({ ...pump, shaftMaterial: "stainless" })];
    expect(stainless.conductance.high).toBeLessThan(steel.conductance.high);
    expect(stainless.packingRise.high).toBeGreaterThan(steel.packingRise.high);
  });

  test("left out, the shaft is taken as steel", () => expect(work(pump)).toEqual(work({ ...pump, shaftMaterial: "steel" })));
});

test("with 5 W/K of metal and no drip, 129 W warm the packing by 26 K", () => {
  const found = work({ ...pump, drip: 0 as never, wallConductance: quantity("conductance", 5, "W/K") });
  expect(found.packingRise.low).toBeCloseTo(25.8, 9);
  expect(found.packingRise.high).toBeCloseTo(25.8, 9);
  expect(found.adiabaticRise).toBeUndefined();
  expect(found.dripShare).toEqual({ low: 0, high: 0 });
});

test("from a hundredth to most of the heat goes with the leak, depending on how much it is", () => {
  const at = (mL: number) => work({ ...pump, drip: quantity("flow", mL, "mL/min") }).dripCarries;
  expect([at(1), at(20), at(500)]).toEqual(["little", "part", "most"]);
});

test("no power makes no rise and has no share", () => {
  const found = work({ ...pump, power: 0 as never });
  expect(found.dripShareAtRise).toBeUndefined();
  expect(found.packingRise).toEqual({ low: 0, high: 0 });
});

test("a power that would boil the film is a limit, judged by temperature", () => {
  expect(ids({ ...pump, power: quantity("power", 2, "kW") })).toContain("packing-may-boil");
});

test("nothing in the answer is a drip to aim for", () => {
  for (const [{ unit }] of answer(pump).workings) expect(unit).not.toBe("m3/s");
  expect(Object.keys(work(pump)).sort()).toEqual(
    ["adiabaticRise", "conductance", "dripCarries", "dripPower", "dripShare", "dripShareAtRise", "packingRise", "restPower"].sort(),
  );
});

property(
  "drip and metal together carry all of the power; more drip carries more and leaves the packing cooler",
  [
    fc.double({ min: 1, max: 5000, noNaN: true }),
    fc.double({ min: 0.01, max: 500, noNaN: true }),
    fc.double({ min: 10, max: 300, noNaN: true }),
  ],
  (power, drip, shaft) => {
    const given: Given = {
      ...pump,
      power: quantity("power", power, "W"),
      drip: quantity("flow", drip, "mL/min"),
      shaft: quantity("length", shaft, "mm"),
    };
    const found = work(given);
    const perKelvin = found.dripPower / given.rise;
    expect((found.packingRise.low * (perKelvin + found.conductance.high)) / power).toBeCloseTo(1, 9);
    expect((found.packingRise.high * perKelvin) / power).toBeCloseTo(found.dripShare.high, 9);
    for (const { low, high } of [found.conductance, found.dripShare, found.packingRise]) expect(low).toBeLessThanOrEqual(high);
    const more = work({ ...given, drip: (given.drip * 2) as never });
    expect(more.dripShare.low).toBeGreaterThan(found.dripShare.low);
    expect(more.packingRise.high).toBeLessThan(found.packingRise.high);
  },
);

test("no shaft, a drip of a bucket a second, no number: refused by name", () => {
  for (const [input, value] of [
    ["power", -1],
    ["drip", 1],
    ["drip", Number.NaN],
    ["rise", 0],
    ["shaft", 0],
    ["wallConductance", 0],
    ["temperature", Number.NaN],
  ] as const) {
    expect(heatSplit({ ...pump, [input]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(heatSplit({ ...pump, shaftMaterial: "wood" as never })).toMatchObject({
    ok: false,
    refusal: { kind: "not-known", input: "shaftMaterial" },
  });
});
