import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type VapourMargin, vapourMargin } from "./index.ts";

type Given = Parameters<typeof vapourMargin>[0];
const degC = (value: number) => quantity("temperature", value, "degC");
const kelvin = (value: number) => quantity("temperature-difference", value, "K");
const bar = (value: number) => quantity("pressure", value, "bar");

const box: Given = { boxPressureGauge: bar(1), temperature: degC(80), rise: kelvin(0) };
function answer(given: Given) {
  const found = vapourMargin(given);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found;
}
const work = (given: Given): VapourMargin => answer(given).value;
const ids = (given: Given) => answer(given).warnings.map(({ says }) => says.id);

against(
  {
    topic: "flush",
    check: "Temperature at which the leak flashes in the box",
    source: { source: "iapws-r7-97", at: "table 36, saturation temperatures at 0.1, 1 and 10 MPa" },
    tolerance: "printed to nine digits",
  },
  (
    [
      [0.1, 372.755919],
      [1, 453.035632],
      [10, 584.149488],
    ] as const
  ).map(([megapascal, boils]) => ({
    what: `box at ${megapascal} MPa above vacuum`,
    theirs: boils,
    ours: () => {
      const atmosphereAbsolute = quantity("absolute-pressure", 0.1, "MPa");
      const boxPressureGauge = (quantity("pressure", megapascal, "MPa") - quantity("pressure", 0.1, "MPa")) as never;
      const found = work({ ...box, boxPressureGauge, atmosphereAbsolute });
      return found.faceTemperature + (found.temperatureMargin ?? Number.NaN);
    },
    unit: "K",
    within: { absolute: 1e-6 },
  })),
);

test("cold water in a box under pressure is clear; near 120 °C at 1 bar it is close; above, it flashes", () => {
  expect(work(box).verdict).toBe("clear");
  expect(ids(box)).toEqual([]);
  expect(work({ ...box, temperature: degC(115) }).verdict).toBe("close");
  expect(ids({ ...box, temperature: degC(115) })).toEqual(["box-close-to-flashing"]);
  expect(work({ ...box, temperature: degC(121) }).verdict).toBe("flashes");
  expect(work({ ...box, temperature: degC(121) }).margin).toBeLessThan(0);
});

test("the rise at the shaft counts: 100 °C in the box with 28 K more flashes at 1 bar", () => {
  expect(work({ ...box, temperature: degC(100), rise: kelvin(0) }).verdict).toBe("clear");
  expect(work({ ...box, temperature: degC(100), rise: kelvin(28) }).verdict).toBe("flashes");
});

test("left out, a rise of 10 K and one standard atmosphere are taken, and the workings say so", () => {
  const found = answer({ boxPressureGauge: bar(1), temperature: degC(80) });
  expect(found.value.faceTemperature).toBe(degC(90));
  expect(inUnit("absolute-pressure", found.value.boxAbsolute, "bar")).toBeCloseTo(2.01325, 9);
  expect(found.workings.filter(([rule]) => rule.assumed).map(([rule]) => rule.name ?? rule.id)).toEqual([
    "atmosphereAbsolute",
    "rise",
    "vapour-close-within",
  ]);
});

test("at altitude the same gauge reading is nearer to boiling", () => {
  const high = work({ ...box, atmosphereAbsolute: quantity("absolute-pressure", 70, "kPa") });
  expect(high.margin).toBeLessThan(work(box).margin);
});

test("another liquid goes by its own vapour pressure", () => {
  const other = (kPa: number) => work({ ...box, vapourAbsolute: quantity("absolute-pressure", kPa, "kPa") });
  expect([other(50).verdict, other(180).verdict, other(210).verdict]).toEqual(["clear", "close", "flashes"]);
  expect(other(50).temperatureMargin).toBeUndefined();
});

const pressures = fc.double({ min: -0.9, max: 80, noNaN: true });
const warmth = fc.double({ min: 1, max: 300, noNaN: true });
property(
  "the margin in pressure and in temperature agree on which side of boiling it is; more pressure helps, more heat harms",
  [pressures, warmth, fc.double({ min: 0.1, max: 20, noNaN: true })],
  (pressure, celsius, more) => {
    const given = { ...box, boxPressureGauge: bar(pressure), temperature: degC(celsius) };
    const found = work(given);
    if (found.temperatureMargin !== undefined && Math.abs(found.temperatureMargin) > 1e-3) {
      expect(Math.sign(found.temperatureMargin)).toBe(Math.sign(found.margin));
    }
    expect(found.verdict === "flashes").toBe(found.margin <= 0);
    expect(work({ ...given, boxPressureGauge: bar(pressure + more) }).margin).toBeGreaterThan(found.margin);
    expect(work({ ...given, rise: kelvin(more) }).margin).toBeLessThan(found.margin);
  },
);

test("what cannot be is refused by name", () => {
  for (const [input, value] of [
    ["boxPressureGauge", bar(-1.2)],
    ["boxPressureGauge", Number.NaN],
    ["temperature", degC(-1)],
    ["temperature", degC(375)],
    ["rise", -1],
    ["rise", 400],
    ["atmosphereAbsolute", 0],
    ["vapourAbsolute", -1],
  ] as const) {
    expect(vapourMargin({ ...box, [input]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(vapourMargin({ ...box, temperature: degC(370), rise: kelvin(10) })).toMatchObject({
    ok: false,
    refusal: { input: "temperature" },
  });
  expect(vapourMargin({ ...box, boxPressureGauge: bar(-1.05) })).toMatchObject({
    ok: false,
    refusal: { kind: "impossible", input: "boxPressureGauge" },
  });
});
