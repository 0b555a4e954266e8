import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { quantity } from "../units/index.ts";
import { type LeakWhatIf, leakWhatIf } from "./index.ts";

const bar = (value: number) => quantity("pressure-difference", value, "bar");
const celsius = (value: number) => quantity("temperature", value, "degC");

/** 3 mL/min of water at 20 °C along a 50 mm shaft, 50 mm of rings, 3 bar. */
const reading: Omit<LeakWhatIf, "changed"> = {
  diameter: quantity("length", 50, "mm"),
  length: quantity("length", 50, "mm"),
  flow: quantity("flow", 3, "mL/min"),
  pressureDrop: bar(3),
  temperature: celsius(20),
  eccentricity: 0,
  where: "along-shaft",
  state: "running",
  flushOn: false,
};

function ratio(changed: LeakWhatIf["changed"], change: Partial<LeakWhatIf> = {}): number {
  const found = leakWhatIf({ ...reading, ...change, changed });
  if (!found.ok) throw new Error(`${found.refusal.input} ${found.refusal.says.id}`);
  return found.value.ratio;
}

// Viscosity of water in µPa·s at 0.101325 MPa, run with the Python library iapws 1.5.3.
const viscosities = [
  [10, 1305.90142],
  [40, 652.730986],
  [60, 466.043208],
  [80, 354.058149],
] as const;

against(
  {
    topic: "leak",
    check: "The same gap with warmer or colder water leaks in proportion to how thin the water is",
    source: { source: "python-iapws", at: "viscosity at 20 °C over that at the other temperature" },
    tolerance: "5e-4: theirs is at atmospheric pressure, ours at 3 bar more",
  },
  viscosities.map(([degrees, viscosity]) => ({
    what: `20 °C to ${degrees} °C`,
    theirs: 1001.59685 / viscosity,
    ours: () => ratio({ temperature: celsius(degrees) }),
    unit: "times the leak",
    within: { relative: 5e-4 },
  })),
);

property("nothing changed is the same leak", [fc.double({ min: 0.01, max: 500, noNaN: true })], (mlPerMin) => {
  expect(ratio({}, { flow: quantity("flow", mlPerMin, "mL/min") })).toBeCloseTo(1, 12);
});

property(
  "at the same clearance the leak follows the pressure drop and the thinness of the liquid, and what is left is off-centre",
  [
    fc.double({ min: 0.1, max: 5, noNaN: true }),
    fc.double({ min: 0.2, max: 5, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  ],
  (drops, thickness, before, after) => {
    const changed = { pressureDrop: bar(3 * drops), viscosity: quantity("viscosity", 2 * thickness, "mPa*s"), eccentricity: after };
    const found = ratio(changed, { viscosity: quantity("viscosity", 2, "mPa*s"), eccentricity: before });
    const expected = ((drops / thickness) * (2 + 3 * after ** 2)) / (2 + 3 * before ** 2);
    expect(found / expected).toBeCloseTo(1, 10);
  },
);

property("there and back is the first leak again", [fc.double({ min: 5, max: 95, noNaN: true })], (degrees) => {
  const there = ratio({ temperature: celsius(degrees) });
  const back = ratio({ temperature: celsius(20) }, { temperature: celsius(degrees) });
  expect(there * back).toBeCloseTo(1, 12);
});

test("a shaft that lies against its packing leaks 2.5 times what a centred one does", () => {
  expect(ratio({ eccentricity: 1 })).toBeCloseTo(2.5, 12);
});

test("a running reading says nothing about the shaft at rest, nor the other way round", () => {
  for (const [state, asked] of [
    ["running", "standing"],
    ["standing", "running"],
  ] as const) {
    expect(leakWhatIf({ ...reading, state, changed: { state: asked } })).toMatchObject({
      ok: false,
      refusal: { kind: "impossible", input: "changed.state", given: asked, allowed: [state] },
    });
  }
  expect(leakWhatIf({ ...reading, changed: { state: "running" } }).ok).toBe(true);
});

test("an oil at a new temperature needs its viscosity there", () => {
  const oil = { ...reading, viscosity: quantity("viscosity", 40, "mPa*s") };
  expect(leakWhatIf({ ...oil, changed: { temperature: celsius(80) } })).toMatchObject({
    ok: false,
    refusal: { kind: "not-known", input: "changed.viscosity" },
  });
  const changed = { temperature: celsius(80), viscosity: quantity("viscosity", 8, "mPa*s") };
  expect(ratio(changed, { viscosity: oil.viscosity })).toBeCloseTo(5, 10);
});

test("with no temperature and no eccentricity said, what was assumed stands in the workings with its spread", () => {
  const { temperature: _, eccentricity: __, ...bare } = reading;
  const found = leakWhatIf({ ...bare, changed: { pressureDrop: bar(6) } });
  const assumed = found.ok ? found.workings.filter(([rule]) => rule.assumed).map(([rule]) => rule.id) : [];
  expect(assumed).toEqual(expect.arrayContaining(["leak-temperature-assumed", "leak-eccentricity-assumed", "atmosphere-assumed"]));
});

test("water hotter than it boils outside is flagged: it turns to steam on its way out", () => {
  const found = leakWhatIf({ ...reading, changed: { temperature: celsius(120) } });
  expect(found).toMatchObject({ ok: true, warnings: expect.arrayContaining([expect.objectContaining({ kind: "outside-validity" })]) });
  expect(found.ok && found.warnings.some((warning) => warning.says.id === "leak-flashes")).toBe(true);
});

test("steam in the box, a leak from under the sleeve, no flow and nonsense are refused by name", () => {
  for (const [change, changed, input] of [
    [{}, { temperature: celsius(200) }, "changed.temperature"],
    [{ temperature: celsius(-5) }, {}, "temperature"],
    [{ temperature: celsius(Number.NaN) }, {}, "temperature"],
    [{ where: "under-sleeve" }, {}, "where"],
    [{ flow: quantity("flow", 0, "mL/min") }, {}, "flow"],
    [{ pressureDrop: bar(0) }, {}, "pressureDrop"],
    [{}, { pressureDrop: bar(-1) }, "changed.pressureDrop"],
    [{}, { eccentricity: 1.2 }, "changed.eccentricity"],
    [{}, { viscosity: quantity("viscosity", 0, "Pa*s") }, "changed.viscosity"],
    [{ eccentricity: -1 }, {}, "eccentricity"],
  ] as const) {
    const found = leakWhatIf({ ...reading, ...change, changed });
    expect(found).toMatchObject({ ok: false, refusal: { input } });
    expect(!found.ok && allIds().has(found.refusal.says.id)).toBe(true);
  }
});

test("every reply says that the clearance was kept and that nuts are not in it, and has words for all it says", () => {
  const found = leakWhatIf({ ...reading, changed: { temperature: celsius(60) } });
  const ids = found.ok ? found.warnings.map((warning) => warning.says.id) : [];
  expect(ids).toContain("leak-clearance-kept");
  expect(ids.filter((id) => !allIds().has(id))).toEqual([]);
});
