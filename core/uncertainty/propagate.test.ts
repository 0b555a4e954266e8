import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { coverageFactor, effectiveDegrees, type Influence, propagate } from "./index.ts";

interface Input {
  readonly value: number;
  readonly u: number;
  readonly degrees: number | null;
}
interface EndGauge {
  readonly inputs: Readonly<Record<"ls" | "d1" | "d2" | "d3" | "alpha_s" | "theta_bar" | "Delta" | "dalpha" | "dtheta", Input>>;
  readonly uc: number;
  readonly nu: number;
  readonly k99: number;
  readonly U99: number;
  readonly secondOrder: number;
}
const gauge = JSON.parse(readFileSync(new URL("../../data/tables/gum-h1.json", import.meta.url), "utf8")) as EndGauge;

// l = ls + d1 + d2 + d3 - ls (dalpha (theta_bar + Delta) + alpha_s dtheta), in nm
const { ls, d1, d2, d3, alpha_s, theta_bar, Delta, dalpha, dtheta } = gauge.inputs;
const through = (input: Input, sensitivity: number): Influence => ({
  sensitivity,
  u: input.u,
  ...(input.degrees === null ? {} : { degrees: input.degrees }),
});
const influences = [
  through(ls, 1 - (dalpha.value * (theta_bar.value + Delta.value) + alpha_s.value * dtheta.value)),
  ...[d1, d2, d3].map((input) => through(input, 1)),
  through(dalpha, -ls.value * (theta_bar.value + Delta.value)),
  through(theta_bar, -ls.value * dalpha.value),
  through(Delta, -ls.value * dalpha.value),
  through(alpha_s, -ls.value * dtheta.value),
  through(dtheta, -ls.value * alpha_s.value),
];
const bends = [
  { second: -ls.value, u: dalpha.u, uOther: theta_bar.u },
  { second: -ls.value, u: dalpha.u, uOther: Delta.u },
  { second: -ls.value, u: alpha_s.u, uOther: dtheta.u },
];

const gum = { source: "jcgm-100-2008", at: "H.1, end-gauge calibration" } as const;
against({ topic: "uncertainty", check: "Calibration of an end gauge", source: gum, tolerance: "half a unit of the last printed digit" }, [
  { what: "combined standard uncertainty", theirs: 32, ours: () => propagate(influences), unit: "nm", within: { absolute: 0.5 } },
  { what: "with second-order terms", theirs: 34, ours: () => propagate(influences, bends), unit: "nm", within: { absolute: 0.5 } },
  {
    what: "effective degrees of freedom, cut to a whole number",
    theirs: 16,
    ours: () => Math.floor(effectiveDegrees(influences)),
    unit: "1",
    within: { absolute: 0 },
  },
  {
    what: "expanded uncertainty, 99 %",
    theirs: 93,
    ours: () => coverageFactor(effectiveDegrees(influences), 99) * propagate(influences),
    unit: "nm",
    within: { absolute: 0.5 },
  },
]);
against(
  {
    topic: "uncertainty",
    check: "The same end gauge, recomputed with a general uncertainty library",
    source: { source: "python-uncertainties", at: "from the inputs of JCGM 100 H.1" },
    tolerance: "rounding of binary numbers; the coverage factor is kept to six decimals",
  },
  [
    { what: "combined standard uncertainty", theirs: gauge.uc, ours: () => propagate(influences), unit: "nm", within: { relative: 1e-12 } },
    {
      what: "effective degrees of freedom",
      theirs: gauge.nu,
      ours: () => effectiveDegrees(influences),
      unit: "1",
      within: { relative: 1e-12 },
    },
    {
      what: "with second-order terms",
      theirs: gauge.secondOrder,
      ours: () => propagate(influences, bends),
      unit: "nm",
      within: { relative: 1e-12 },
    },
    {
      what: "coverage factor for 99 %",
      theirs: gauge.k99,
      ours: () => coverageFactor(gauge.nu, 99),
      unit: "1",
      within: { absolute: 5e-7 },
    },
  ],
);

const influence = fc.record({
  sensitivity: fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
  u: fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
});

property(
  "a result is at least as uncertain as its worst input alone, and at most as all of them added up",
  [fc.array(influence, { minLength: 1, maxLength: 8 })],
  (inputs) => {
    const each = inputs.map(({ sensitivity, u }) => Math.abs(sensitivity * u));
    const u = propagate(inputs);
    expect(u).toBeGreaterThanOrEqual(Math.max(...each) * (1 - 1e-12));
    expect(u).toBeLessThanOrEqual(each.reduce((sum, one) => sum + one, 0) * (1 + 1e-12));
  },
);

property(
  "degrees of freedom lie between the fewest behind one input and all of them together",
  [
    fc.array(
      fc.record({
        sensitivity: fc.constantFrom(1, -2),
        u: fc.double({ min: 0.01, max: 10, noNaN: true }),
        degrees: fc.integer({ min: 1, max: 40 }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  ],
  (inputs) => {
    const degrees = effectiveDegrees(inputs);
    expect(degrees).toBeGreaterThanOrEqual(Math.min(...inputs.map((input) => input.degrees)) * (1 - 1e-9));
    expect(degrees).toBeLessThanOrEqual(inputs.reduce((sum, input) => sum + input.degrees, 0) * (1 + 1e-9));
  },
);
