import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { flushFlow } from "./index.ts";

type Given = Parameters<typeof flushFlow>[0];
const degC = (value: number) => quantity("temperature", value, "degC");
const kelvin = (value: number) => quantity("temperature-difference", value, "K");
const watt = (value: number) => quantity("power", value, "W");

const pump: Given = { power: watt(323.3), rise: kelvin(20), temperature: degC(20) };
function work(given: Given) {
  const answer = flushFlow(given);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

// Density and heat capacity as another program gives them, so the water in between is outside too.
against(
  {
    topic: "heat",
    check: "Flush for 323.3 W at a rise of 20 K",
    source: { source: "python-iapws", at: "IAPWS R7-97 at 0.101325 MPa: density and heat capacity" },
    tolerance: "same formulation, coefficients as published",
  },
  (
    [
      [20, 998.206092, 4184.794],
      [60, 983.21061, 4182.764],
      [70, 977.779295, 4188.095],
    ] as const
  ).map(([celsius, density, heatCapacity]) => ({
    what: `water at ${celsius} °C`,
    theirs: (323.3 / (density * heatCapacity * 20)) * 60000,
    ours: () => inUnit("flow", work({ ...pump, temperature: degC(celsius) }).flow, "L/min"),
    unit: "L/min",
    within: { relative: 3e-7 },
  })),
);

test("323 W and 20 K take a quarter of a litre a minute", () => expect(inUnit("flow", work(pump).flow, "L/min")).toBeCloseTo(0.2322, 3));

test("a gallon a minute warmed by 10 K carries some 2.6 kW: meant for process heat, not for friction", () => {
  const { flow } = work({ ...pump, power: watt(2640), rise: kelvin(10) });
  expect(inUnit("flow", flow, "gal/min")).toBeCloseTo(1, 2);
});

test("another liquid goes by its own density and heat capacity, and says that boiling was not looked at", () => {
  const oil = flushFlow({ ...pump, density: 870 as never, heatCapacity: 1900 as never });
  if (!oil.ok) throw new Error("refused");
  expect(oil.value.flow).toBeCloseTo(323.3 / (870 * 1900 * 20), 15);
  expect(oil.warnings.map(({ says }) => says.id)).toEqual(["boiling-not-looked-at"]);
});

describe("boiling", () => {
  test("a flush that would boil is impossible at atmospheric pressure, and the most that is possible is named", () => {
    const answer = flushFlow({ ...pump, temperature: degC(85) });
    expect(answer).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "rise" } });
    if (answer.ok || answer.refusal.allowed === undefined || !("max" in answer.refusal.allowed)) throw new Error("no range");
    // Water boils at 99.97 °C at one standard atmosphere (IAPWS R7-97).
    expect(answer.refusal.allowed.max).toBeCloseTo(14.97, 2);
  });

  test("under pressure the same flush stays water; high up in the mountains it boils sooner", () => {
    expect(flushFlow({ ...pump, temperature: degC(85), boxPressureGauge: quantity("pressure", 1, "bar") }).ok).toBe(true);
    const high = { ...pump, temperature: degC(75), atmosphereAbsolute: quantity("absolute-pressure", 70, "kPa") };
    expect(flushFlow({ ...pump, temperature: degC(75) }).ok).toBe(true);
    expect(flushFlow(high)).toMatchObject({ ok: false, refusal: { kind: "impossible" } });
  });

  test("steam is no flush", () => {
    expect(flushFlow({ ...pump, temperature: degC(105) })).toMatchObject({
      ok: false,
      refusal: { kind: "impossible", input: "temperature" },
    });
  });
});

property(
  "flow, rise, density and heat capacity give the power back; twice the power is twice the flow, twice the rise half",
  [
    fc.double({ min: 0.1, max: 1e5, noNaN: true }),
    fc.double({ min: 0.1, max: 20, noNaN: true }),
    fc.double({ min: 1, max: 60, noNaN: true }),
  ],
  (power, rise, celsius) => {
    const given: Given = { power: watt(power), rise: kelvin(rise), temperature: degC(celsius) };
    const { flow } = work(given);
    const answer = flushFlow(given);
    const perVolume = answer.ok ? (answer.workings.find(([rule]) => rule.id === "heat-capacity-of-volume")?.[2] ?? 0) : 0;
    expect((flow * rise * perVolume) / power).toBeCloseTo(1, 12);
    expect(work({ ...given, power: watt(2 * power) }).flow / flow).toBeCloseTo(2, 12);
    expect(work({ ...given, rise: kelvin(rise / 2) }).flow / flow).toBeCloseTo(2, 12);
  },
);

test("no rise, a negative power, ice, or half a liquid is refused by name", () => {
  for (const [input, value] of [
    ["power", -1],
    ["power", Number.NaN],
    ["rise", 0],
    ["rise", -5],
    ["temperature", degC(-1)],
    ["boxPressureGauge", -2e5],
    ["atmosphereAbsolute", 0],
  ] as const) {
    expect(flushFlow({ ...pump, [input]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(flushFlow({ ...pump, density: 870 as never })).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "heatCapacity" } });
});
