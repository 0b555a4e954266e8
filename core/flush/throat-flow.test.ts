import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type ThroatFlow, throatFlow } from "./index.ts";

type Given = Parameters<typeof throatFlow>[0];
const inch = (value: number) => quantity("length", value, "in");
const slurry: Given = { shaft: inch(2), section: inch(0.375) };
const cold = { viscosity: quantity("viscosity", 1, "mPa*s"), density: quantity("density", 1000, "kg/m3") };

function answer(given: Given) {
  const found = throatFlow(given);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found;
}
const work = (given: Given): ThroatFlow => answer(given).value;
const ids = (given: Given) => answer(given).warnings.map(({ says }) => says.id);

test("a 2 inch sleeve takes some 9 gallons a minute at 15 psi, a 6 inch one some 90: litres, not drops", () => {
  for (const [sleeve, section, gallons] of [
    [2, 0.375, 9.3],
    [3, 0.5, 21.3],
    [4, 0.625, 38.4],
    [6, 0.75, 88.6],
  ] as const) {
    const found = work({ shaft: inch(sleeve), section: inch(section) });
    const ours = inUnit("flow", found.flow, "gal/min");
    expect(Math.abs(ours / gallons - 1), `${sleeve} in`).toBeLessThan(0.006);
    expect(found.regime).toBe("turbulent");
    expect(found.weep / found.flow).toBeCloseTo(0.05, 12);
  }
});

test("the gap is 0.007 of the sleeve and a packing width long unless it was measured", () => {
  const found = work(slurry);
  expect(inUnit("length", found.clearance, "in")).toBeCloseTo(0.014, 12);
  expect(inUnit("length", found.length, "in")).toBeCloseTo(0.375, 12);
  expect(work({ ...slurry, clearance: inch(0.02), length: inch(1) })).toMatchObject({ clearance: inch(0.02), length: inch(1) });
  expect(ids(slurry)).toEqual(["throat-flow-order-only"]);
});

test("a worn bush takes more than its share: twice the gap, more than twice the water", () => {
  const ratio = work({ ...slurry, clearance: inch(0.028) }).flow / work(slurry).flow;
  expect(ratio).toBeGreaterThan(2.05);
  expect(ratio).toBeLessThan(4);
});

test("one bush is thousands of cubic metres a year", () => {
  const found = work(slurry);
  expect(found.year / (found.flow * 3600 * 24 * 365)).toBeCloseTo(1, 12);
  expect(found.year).toBeGreaterThan(1000);
});

test("thick oil in a fine gap is laminar: three times the pressure, three times the flow", () => {
  const oil: Given = {
    ...slurry,
    clearance: quantity("length", 0.1, "mm"),
    viscosity: quantity("viscosity", 100, "mPa*s"),
    density: quantity("density", 900, "kg/m3"),
    pressureDrop: quantity("pressure-difference", 1, "bar"),
  };
  expect(work(oil).regime).toBe("laminar");
  expect(work({ ...oil, pressureDrop: quantity("pressure-difference", 3, "bar") }).flow / work(oil).flow).toBeCloseTo(3, 9);
});

const gaps = fc.double({ min: 0.02, max: 2, noNaN: true });
const drops = fc.double({ min: 0.05, max: 10, noNaN: true });
property(
  "the pressure is used up exactly, by whichever law holds; more pressure or a wider gap never passes less",
  [gaps, drops, fc.double({ min: 5, max: 60, noNaN: true })],
  (gap, drop, lengthMm) => {
    const given: Given = {
      ...slurry,
      ...cold,
      clearance: quantity("length", gap, "mm"),
      length: quantity("length", lengthMm, "mm"),
      pressureDrop: quantity("pressure-difference", drop, "bar"),
    };
    const { velocity: v, regime, reynolds, clearance: c, length } = work(given);
    const used =
      regime === "laminar"
        ? (12 * 1e-3 * length * v) / c ** 2
        : ((1000 * v * v) / 2) * (1.5 + (0.316 * reynolds ** -0.25 * length) / (2 * c));
    expect(used / (drop * 1e5)).toBeCloseTo(1, 9);
    expect(ids(given).includes("throat-flow-between")).toBe(regime === "between");
  },
);

property(
  "within one law more pressure or a wider gap passes more",
  [gaps, drops, fc.double({ min: 1.05, max: 2, noNaN: true })],
  (gap, drop, more) => {
    const at = (g: number, p: number) =>
      work({ ...slurry, ...cold, clearance: quantity("length", g, "mm"), pressureDrop: quantity("pressure-difference", p, "bar") });
    const [base, pressed, worn] = [at(gap, drop), at(gap, drop * more), at(gap * more, drop)];
    if (pressed.regime === base.regime) expect(pressed.flow).toBeGreaterThan(base.flow);
    if (worn.regime === base.regime) expect(worn.flow).toBeGreaterThan(base.flow);
  },
);

test("no gap, no length, no number, half a liquid, steam: refused by name", () => {
  for (const [input, value] of [
    ["shaft", 0],
    ["section", Number.NaN],
    ["clearance", 0],
    ["length", -1],
    ["pressureDrop", 0],
    ["viscosity", 0],
    ["density", Infinity],
  ] as const) {
    expect(throatFlow({ ...slurry, [input]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(throatFlow({ ...slurry, density: 900 as never })).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "viscosity" } });
  expect(throatFlow({ ...slurry, temperature: quantity("temperature", 110, "degC") })).toMatchObject({
    ok: false,
    refusal: { kind: "impossible", input: "temperature" },
  });
});
