import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { inUnit, quantity } from "../units/index.ts";
import type { Style } from "./facts.ts";
import { softer } from "./hardness.ts";

const facts = readAllFacts().materials;

function style(id: string): Style {
  const found = facts.styles.find((entry) => entry.id === id);
  if (!found) throw new Error(id);
  return found;
}
const celsius = (kelvin: number | null) => inUnit("temperature", (kelvin ?? Number.NaN) as never, "degC");
const fahrenheit = (kelvin: number | null) => inUnit("temperature", (kelvin ?? Number.NaN) as never, "degF");
const metres = (speed: number | null) => speed ?? Number.NaN;
const top = (figure: { readonly value: number | null; readonly spread?: readonly [number, number] }) => figure.spread?.[1] ?? figure.value;

// Each printed limit must lie inside our spread: compared is the printed figure drawn into the spread.
const within = (figure: { readonly value: number | null; readonly spread?: readonly [number, number] }, printed: number) =>
  Math.min(Math.max(printed, Math.min(figure.spread?.[0] ?? Number.NaN, figure.value ?? Number.NaN)), top(figure) ?? Number.NaN);

against(
  {
    topic: "materials",
    check: "Limits of the printed table that are our careful figure",
    source: { source: "neale-1995", at: "Table 25.1" },
    tolerance: "carried over as printed",
  },
  [
    {
      what: "PTFE with graphite, °C",
      theirs: 250,
      ours: () => celsius(style("eptfe-graphite").temperature.inAir.value),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    {
      what: "aramid filament, °C",
      theirs: 250,
      ours: () => celsius(style("aramid-filament").temperature.inAir.value),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    {
      what: "PTFE on pumps, below",
      theirs: 10,
      ours: () => metres(style("ptfe-lub").speed.value),
      unit: "m/s",
      within: { absolute: 1e-9 },
    },
    {
      what: "expanded graphite where nothing burns it",
      theirs: 2500,
      ours: () => celsius(style("eg-braid").temperature.inert.value),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    {
      what: "hardness under any packing, at least",
      theirs: 250,
      ours: () => facts.sleeveFloor.value ?? Number.NaN,
      unit: "HB",
      within: { absolute: 0 },
    },
    {
      what: "finish under any packing",
      theirs: 0.4,
      ours: () => inUnit("length", (style("ptfe-dry").sleeve.finish.value ?? Number.NaN) as never, "um"),
      unit: "um",
      within: { absolute: 1e-9 },
    },
  ],
);

against(
  {
    topic: "materials",
    check: "Limits of the printed table that lie in our spread, our careful figure being lower",
    source: { source: "neale-1995", at: "Table 25.1" },
    tolerance: "the printed figure is drawn into our spread; any difference is how far it lies outside",
  },
  [
    {
      what: "PTFE with graphite, about",
      theirs: 25,
      ours: () => within(style("eptfe-graphite").speed, 25),
      unit: "m/s",
      within: { absolute: 1e-9 },
    },
    {
      what: "PTFE filament",
      theirs: 250,
      ours: () => celsius(within(style("ptfe-lub").temperature.inAir, quantity("temperature", 250, "degC"))),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    {
      what: "ramie",
      theirs: 120,
      ours: () => celsius(within(style("ramie-flax-ptfe").temperature.inAir, quantity("temperature", 120, "degC"))),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    {
      what: "expanded graphite in air",
      theirs: 550,
      ours: () => celsius(within(style("eg-braid").temperature.inAir, quantity("temperature", 550, "degC"))),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    {
      what: "graphite filament in air",
      theirs: 550,
      ours: () => celsius(within(style("graphite-yarn").temperature.inAir, quantity("temperature", 550, "degC"))),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
  ],
);

const grease = facts.lubricants.find(({ id }) => id === "grease");
const dispersion = facts.lubricants.find(({ id }) => id === "ptfe-dispersion");
against(
  {
    topic: "materials",
    check: "Limits of lubricants",
    source: { source: "swedish-pump-handbook", at: "section 5.2" },
    tolerance: "carried over as printed",
  },
  [
    {
      what: "animal, mineral and vegetable lubricants",
      theirs: 125,
      ours: () => celsius(grease?.temperature.value ?? null),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
    { what: "the same, least pH", theirs: 5, ours: () => grease?.pH.min ?? Number.NaN, unit: "pH", within: { absolute: 0 } },
    { what: "the same, most pH", theirs: 10, ours: () => grease?.pH.max ?? Number.NaN, unit: "pH", within: { absolute: 0 } },
    {
      what: "PTFE dispersion",
      theirs: 250,
      ours: () => celsius(dispersion?.temperature.value ?? null),
      unit: "degC",
      within: { absolute: 1e-9 },
    },
  ],
);

against(
  {
    topic: "materials",
    check: "Naval limits of braided PTFE",
    source: { source: "mil-p-24396a", at: "scope, 450 degF at the box" },
    tolerance: "we carry whole degrees Celsius",
  },
  [
    {
      what: "PTFE, dry",
      theirs: 450,
      ours: () => fahrenheit(style("ptfe-dry").temperature.inAir.value),
      unit: "degF",
      within: { absolute: 0.9 },
    },
  ],
);
against(
  {
    topic: "materials",
    check: "Naval limits of graphite in steam valves",
    source: { source: "mil-p-24503b", at: "scope, 1000 degF" },
    tolerance: "we carry whole degrees Celsius",
  },
  [
    {
      what: "die-formed graphite in steam",
      theirs: 1000,
      ours: () => fahrenheit(style("eg-die").temperature.inSteam.value),
      unit: "degF",
      within: { absolute: 0.9 },
    },
  ],
);

const feet = (speed: number | null) => inUnit("speed", (speed ?? Number.NaN) as never, "ft/min");
const inSpread = (id: string, feetPerMinute: number) => feet(within(style(id).speed, quantity("speed", feetPerMinute, "ft/min")));
against(
  {
    topic: "materials",
    check: "Speeds of a distributor's sheet lie in our spread",
    source: { source: "packing-sheet-1", at: "table" },
    tolerance: "the printed figure is drawn into our spread",
  },
  [
    {
      what: "synthetic yarn with PTFE, 2300 ft/min",
      theirs: 2300,
      ours: () => inSpread("acrylic-ptfe", 2300),
      unit: "ft/min",
      within: { absolute: 1e-6 },
    },
    {
      what: "PTFE, lubricated, 2300 ft/min",
      theirs: 2300,
      ours: () => inSpread("ptfe-lub", 2300),
      unit: "ft/min",
      within: { absolute: 1e-6 },
    },
    {
      what: "graphite in expanded PTFE, 4900 ft/min",
      theirs: 4900,
      ours: () => inSpread("eptfe-graphite", 4900),
      unit: "ft/min",
      within: { absolute: 1e-6 },
    },
  ],
);

against(
  {
    topic: "materials",
    check: "Points of pressure and speed",
    source: { source: "mil-prf-24790a", at: "appendix A" },
    tolerance: "we carry one decimal",
  },
  [
    {
      what: "rig speed, 4000 ft/min",
      theirs: 4000,
      ours: () => feet(facts.pressureSpeed.find(({ id }) => id === "naval-rig")?.speed.value ?? null),
      unit: "ft/min",
      within: { absolute: 10 },
    },
    {
      what: "rig pressure, 150 psi",
      theirs: 150,
      ours: () =>
        inUnit("pressure", (facts.pressureSpeed.find(({ id }) => id === "naval-rig")?.pressure.value ?? Number.NaN) as never, "psi"),
      unit: "psi",
      within: { absolute: 0.8 },
    },
    {
      what: "rig temperature, 250 degF",
      theirs: 250,
      ours: () => fahrenheit(facts.pressureSpeed.find(({ id }) => id === "naval-rig")?.temperature.value ?? null),
      unit: "degF",
      within: { absolute: 0.9 },
    },
  ],
);

// ASTM E140 from memory: 58 HRC is 653 HV, 60 HRC 697 HV, 45 HRC 421 HB.
test("one hardness compares alike on every scale, and beyond the end of a scale the piece is softer", () => {
  const { hardnessScales } = facts;
  expect(softer(653, "HV", 58, "HRC", hardnessScales)).toBe(false);
  expect(softer(652, "HV", 58, "HRC", hardnessScales)).toBe(true);
  expect(softer(421, "HB", 45, "HRC", hardnessScales)).toBe(false);
  expect(softer(249, "HB", 250, "HB", hardnessScales)).toBe(true);
  expect(softer(60, "HRC", 800, "HV", hardnessScales)).toBe(true);
  expect(softer(65, "HRC", 800, "HV", hardnessScales)).toBe(false);
  expect(softer(600, "HB", 800, "HV", hardnessScales)).toBe(true);
  expect(softer(150, "HB", 60, "HRC", hardnessScales)).toBe(true);
  expect(softer(1200, "HV", 250, "HB", hardnessScales)).toBe(false);
  expect(softer(120, "HV", 250, "HB", hardnessScales)).toBe(true);
});
