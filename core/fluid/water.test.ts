import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import table from "../../data/tables/water-points.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { type AbsolutePressure, inUnit, quantity, type Temperature } from "../units/index.ts";
import { saturationPressure, saturationTemperature, type Water, water, waterState } from "./index.ts";
import { highestSteamPressure } from "./regions.ts";
import { surfaceTensionAt } from "./surface-tension.ts";
import { viscosityAt } from "./viscosity.ts";

const kelvin = (value: number) => quantity("temperature", value, "K");
const celsius = (value: number) => quantity("temperature", value, "degC");
const mpa = (value: number) => quantity("absolute-pressure", value, "MPa");

function at(temperature: Temperature, pressure: AbsolutePressure): Water {
  const found = water({ temperature, pressure });
  if (!found.ok) throw new Error(`${found.refusal.kind} ${found.refusal.input}`);
  return found.value;
}

/** Half a unit in the last of nine printed digits. */
const ninth = { relative: 5.1e-9 };

for (const [region, rows, at_] of [
  ["liquid", table.region1, "table 5"],
  ["steam", table.region2, "table 15"],
] as const) {
  against(
    { topic: "fluid", check: `Water, ${region}`, source: { source: "iapws-r7-97", at: at_ }, tolerance: "the nine digits printed" },
    rows.flatMap((row) => [
      {
        what: `volume at ${row.T} K, ${row.p} MPa`,
        theirs: row.v,
        ours: () => 1 / at(kelvin(row.T), mpa(row.p)).density,
        unit: "m³/kg",
        within: ninth,
      },
      {
        what: `heat capacity at ${row.T} K, ${row.p} MPa`,
        theirs: row.cp,
        ours: () => inUnit("heat-capacity", at(kelvin(row.T), mpa(row.p)).heatCapacity, "kJ/(kg*K)"),
        unit: "kJ/(kg K)",
        within: ninth,
      },
    ]),
  );
}

against(
  {
    topic: "fluid",
    check: "Water, boiling",
    source: { source: "iapws-r7-97", at: "tables 35 and 36" },
    tolerance: "the nine digits printed",
  },
  [
    ...table.saturationPressure.map((row) => ({
      what: `saturation pressure at ${row.T} K`,
      theirs: row.p,
      ours: () => inUnit("absolute-pressure", saturationPressure(kelvin(row.T)), "MPa"),
      unit: "MPa",
      within: ninth,
    })),
    ...table.saturationTemperature.map((row) => ({
      what: `saturation temperature at ${row.p} MPa`,
      theirs: row.T,
      ours: () => saturationTemperature(mpa(row.p)),
      unit: "K",
      within: ninth,
    })),
  ],
);

against(
  {
    topic: "fluid",
    check: "Water, viscosity",
    source: { source: "iapws-r12-08", at: "table 4, no critical enhancement" },
    tolerance: "the six decimals printed",
  },
  table.viscosity.map((row) => ({
    what: `${row.T} K, ${row.density} kg/m³`,
    theirs: row.viscosity,
    ours: () => viscosityAt(kelvin(row.T), quantity("density", row.density, "kg/m3")) * 1e6,
    unit: "µPa·s",
    within: { absolute: 0.51e-6 },
  })),
);

// The same formulations run elsewhere: only rounding may differ.
const columns = [
  ["density", "density", "kg/m³", 1],
  ["viscosity", "viscosity", "Pa·s", 1],
  ["heatCapacity", "cp", "kJ/(kg K)", 1e-3],
  ["saturationPressure", "saturationPressure", "MPa", 1e-6],
  ["kinematicViscosity", "kinematicViscosity", "m²/s", 1],
  ["surfaceTension", "surfaceTension", "N/m", 1],
] as const;

against(
  {
    topic: "fluid",
    check: "Water at thirty points of a pump's life",
    source: { source: "python-iapws" },
    tolerance: "1e-11, rounding in sums of up to 43 terms",
  },
  table.points.flatMap((point) =>
    columns.flatMap(([ours, theirs, unit, scale]) => {
      const value = point[theirs];
      if (value === undefined || (point.phase === "steam" && (ours === "kinematicViscosity" || ours === "surfaceTension"))) return [];
      return [
        {
          what: `${ours} at ${point.t} °C, ${point.p} MPa`,
          theirs: value,
          ours: () => (at(celsius(point.t), mpa(point.p))[ours] ?? Number.NaN) * scale,
          unit,
          within: { relative: 1e-11 },
        },
      ];
    }),
  ),
);

// Another formulation of the same water: they are known to differ by so much.
against(
  {
    topic: "fluid",
    check: "Water against the scientific formulation",
    source: { source: "iapws-r6-95", at: "run with the Python library iapws 1.5.3", seen: "read" },
    tolerance:
      "what the two formulations differ by at these points: density 2.1e-5 for liquid and 8.8e-5 for steam, heat capacity 1.1e-3, viscosity 1e-4",
  },
  table.points.flatMap((point) => [
    {
      what: `density at ${point.t} °C, ${point.p} MPa`,
      theirs: point.density95,
      ours: () => at(celsius(point.t), mpa(point.p)).density,
      unit: "kg/m³",
      within: { relative: point.phase === "liquid" ? 2.15e-5 : 8.8e-5 },
    },
    {
      what: `heat capacity at ${point.t} °C, ${point.p} MPa`,
      theirs: point.cp95,
      ours: () => inUnit("heat-capacity", at(celsius(point.t), mpa(point.p)).heatCapacity, "kJ/(kg*K)"),
      unit: "kJ/(kg K)",
      within: { relative: 1.1e-3 },
    },
    {
      what: `viscosity at ${point.t} °C, ${point.p} MPa`,
      theirs: point.viscosity95,
      ours: () => at(celsius(point.t), mpa(point.p)).viscosity,
      unit: "Pa·s",
      within: { relative: 1e-4 },
    },
  ]),
);

against(
  {
    topic: "fluid",
    check: "Water, surface tension",
    source: { source: "iapws-r1-76", at: "300 K and 450 K as printed in the documentation of the Python library iapws", seen: "quoted" },
    tolerance: "the digits printed",
  },
  [
    [300, 0.0716859625],
    [450, 0.0428914992],
  ].map(([T = 0, theirs = 0]) => ({
    what: `${T} K`,
    theirs,
    ours: () => surfaceTensionAt(kelvin(T)),
    unit: "N/m",
    within: { absolute: 0.51e-10 },
  })),
);

const liquidTemperature = fc.double({ min: 273.16, max: 623, noNaN: true }).map(kelvin);

property("water that boils at a pressure has that pressure when it boils", [liquidTemperature], (temperature) => {
  expect(Math.abs(saturationTemperature(saturationPressure(temperature)) / temperature - 1)).toBeLessThan(1e-9);
});

property(
  "hotter water boils at a higher pressure and holds together less",
  [liquidTemperature, fc.double({ min: 0.01, max: 20, noNaN: true })],
  (temperature, more) => {
    const hotter = kelvin(temperature + more);
    expect(saturationPressure(hotter)).toBeGreaterThan(saturationPressure(temperature));
    expect(surfaceTensionAt(hotter)).toBeLessThan(surfaceTensionAt(temperature));
  },
);

property(
  "warmer water under one pressure is thinner, and more pressure makes it denser",
  [fc.double({ min: 5, max: 200, noNaN: true }), fc.double({ min: 2, max: 20, noNaN: true })],
  (degrees, pressure) => {
    const [cold, warm] = [at(celsius(degrees), mpa(pressure)), at(celsius(degrees + 1), mpa(pressure))];
    expect(warm.viscosity).toBeLessThan(cold.viscosity);
    expect(warm.density).toBeLessThan(cold.density);
    expect(at(celsius(degrees), mpa(pressure * 1.01)).density).toBeGreaterThan(cold.density);
  },
);

property(
  "at any temperature and pressure there is water or steam with finite positive properties, or a refusal that says what is possible",
  [fc.double({ min: -100, max: 1500 }), fc.double({ min: -1, max: 200 })],
  (degrees, pressure) => {
    const found = water({ temperature: celsius(degrees), pressure: mpa(pressure) });
    if (!found.ok) {
      expect(found.refusal).toMatchObject({ kind: "outside-range", allowed: { min: expect.any(Number), max: expect.any(Number) } });
      return;
    }
    for (const value of Object.values(found.value)) if (typeof value === "number") expect(value > 0 && value < 1e12).toBe(true);
    expect(found.warnings.filter((warning) => !allIds().has(warning.says.id))).toEqual([]);
    expect(waterState(celsius(degrees), mpa(pressure))?.density).toBe(found.value.density);
  },
  "fuzz",
);

property(
  "on the boiling line liquid is liquid, a little lower it is steam, and the two differ in density",
  [fc.double({ min: 1, max: 349, noNaN: true })],
  (degrees) => {
    const boils = saturationPressure(celsius(degrees));
    const [liquid, steam] = [at(celsius(degrees), boils), at(celsius(degrees), (boils * 0.999) as AbsolutePressure)];
    expect([liquid.phase, steam.phase]).toEqual(["liquid", "steam"]);
    expect(liquid.density / steam.density).toBeGreaterThan(4);
    expect([liquid.surfaceTension === undefined, steam.surfaceTension === undefined]).toEqual([false, true]);
  },
);

test("a little below boiling point a person is told that a hair decides between water and steam", () => {
  const found = water({ temperature: celsius(100), pressure: mpa(0.101325) });
  expect(found).toMatchObject({ ok: true, warnings: [{ kind: "note", says: { id: "water-near-boiling", with: { phase: "steam" } } }] });
});

test("ice, glowing steam, a vacuum and a thousand bar too many are refused by name with what is possible", () => {
  for (const [temperature, pressure, input, allowed] of [
    [celsius(-1), mpa(1), "temperature", { min: 273.15, max: 1073.15 }],
    [celsius(801), mpa(1), "temperature", { min: 273.15, max: 1073.15 }],
    [kelvin(Number.NaN), mpa(1), "temperature", { min: 273.15, max: 1073.15 }],
    [celsius(20), mpa(0), "pressure", { min: 1, max: 1e8 }],
    [celsius(20), mpa(100.1), "pressure", { min: 1, max: 1e8 }],
    [celsius(20), mpa(Number.NaN), "pressure", { min: 1, max: 1e8 }],
  ] as const) {
    expect(water({ temperature, pressure })).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input, allowed, says: { id: "outside-range-from-to" } },
    });
  }
});

test("near the critical point the refusal names the highest pressure that can be worked out at that temperature", () => {
  const found = water({ temperature: celsius(374), pressure: mpa(25) });
  expect(found).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "pressure", says: { id: "water-near-critical" } } });
  expect(allIds().has("water-near-critical")).toBe(true);
  const highest = highestSteamPressure(celsius(374));
  expect(water({ temperature: celsius(374), pressure: highest }).ok).toBe(true);
  expect(water({ temperature: celsius(374), pressure: (highest * 1.0001) as AbsolutePressure }).ok).toBe(false);
});

// IAPWS R7-97 gives 623.15 K and 16.5291643 MPa as the point where regions 1, 2 and 3 meet.
test("the boundary near the critical point starts where the release says", () => {
  expect(Math.abs(inUnit("absolute-pressure", highestSteamPressure(kelvin(623.1501)), "MPa") - 16.5291643)).toBeLessThan(2e-5);
});
