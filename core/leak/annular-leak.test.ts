import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import exact from "../../data/tables/annulus-flow.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity, type VolumeFlow } from "../units/index.ts";
import { annularLeak, clearanceFromLeak } from "./index.ts";

/** A shaft of 50 mm with 50 mm of rings under 3 bar of water at 20 °C. */
function box(change: Partial<Parameters<typeof annularLeak>[0]> = {}) {
  return {
    diameter: quantity("length", 50, "mm"),
    clearance: quantity("length", 10, "um"),
    length: quantity("length", 50, "mm"),
    pressureDrop: quantity("pressure-difference", 3, "bar"),
    viscosity: quantity("viscosity", 1.0016e-3, "Pa*s"),
    eccentricity: 0,
    ...change,
  };
}

function leak(change: Partial<Parameters<typeof annularLeak>[0]> = {}): VolumeFlow {
  const found = annularLeak(box(change));
  if (!found.ok) throw new Error(found.refusal.input);
  return found.value.flow;
}

/** The inner radius over the outer, as the clearance of a shaft with radius k in a bore of radius 1, both scaled to 50 mm. */
const scaled = (k: number) => quantity("length", (25 * (1 - k)) / k, "mm");

/** Exact flow through that annulus from the tabulated q = 8 η L Q / (π Δp R⁴). */
function exactFlow(k: number, q: number): VolumeFlow {
  const outer = quantity("length", 25 / k, "mm");
  return ((q * Math.PI * 3e5 * outer ** 4) / (8 * 1.0016e-3 * 0.05)) as VolumeFlow;
}

const thin = exact.annulus.filter((row) => row.k >= 0.9);

against(
  {
    topic: "leak",
    check: "Thin-gap leak against the exact annulus, corrected by the share c / d that its workings state",
    source: {
      source: "piercy-hooper-winny-1933",
      at: "series summed to 15 digits with the library mpmath",
      seen: "memory",
    },
    tolerance: "what is left of c / d once it is added back: 0.1 c / d, by eccentricity",
  },
  thin.map((row) => {
    const share = scaled(row.k) / 0.05;
    return {
      what: `radius ratio ${row.k}, eccentricity ${row.e}`,
      theirs: inUnit("flow", exactFlow(row.k, row.q), "mL/min"),
      ours: () => inUnit("flow", leak({ clearance: scaled(row.k), eccentricity: row.e }), "mL/min") * (1 + share),
      unit: "mL/min",
      within: { relative: 0.1 * share },
    };
  }),
);

test("the thin-gap formula is always low, by about the clearance over the diameter, and the workings say by how much", () => {
  for (const row of exact.annulus) {
    const found = annularLeak(box({ clearance: scaled(row.k), eccentricity: row.e }));
    if (!found.ok) throw new Error("refused");
    const off = exactFlow(row.k, row.q) / found.value.flow - 1;
    const said = found.workings.find(([rule]) => rule.id === "thin-gap-shortfall")?.[2] ?? Number.NaN;
    expect(off / said).toBeGreaterThan(0.8);
    expect(off / said).toBeLessThan(1.03);
    expect(found.warnings.some((warning) => warning.says.id === "leak-gap-not-thin")).toBe(said > 0.02);
  }
});

const { sleeve } = exact;
against(
  {
    topic: "leak",
    check: "A loose throat bush, exact",
    source: { source: "piercy-hooper-winny-1933", at: "series summed with the library mpmath, invented dimensions", seen: "memory" },
    tolerance: "0.31 %: the formula is low by c / d = 0.3 %",
  },
  sleeve.flow.map((row) => ({
    what: `50 mm shaft, 0.15 mm gap, 4 bar, eccentricity ${row.e}`,
    theirs: inUnit("flow", row.exact as VolumeFlow, "L/min"),
    ours: () =>
      inUnit(
        "flow",
        leak({
          clearance: quantity("length", sleeve.gap, "m"),
          length: quantity("length", sleeve.length, "m"),
          pressureDrop: quantity("pressure-difference", sleeve.pressureDrop, "Pa"),
          viscosity: quantity("viscosity", sleeve.viscosity, "Pa*s"),
          eccentricity: row.e,
        }),
        "L/min",
      ),
    unit: "L/min",
    within: { relative: 0.0031 },
  })),
);

/** Flow summed over narrow strips of the gap, each a slot between flat walls of height c (1 + e cos φ). */
function summedOverStrips(clearance: number, eccentricity: number): number {
  const strips = 720;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const height = clearance * (1 + eccentricity * Math.cos((2 * Math.PI * i) / strips));
    sum += (height ** 3 * 3e5 * 0.05 * Math.PI) / strips / (12 * 1.0016e-3 * 0.05);
  }
  return sum;
}

property(
  "the leak is what the flat slots round the shaft let through, one by one, wherever the shaft lies",
  [fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })],
  (um, eccentricity) => {
    const clearance = quantity("length", um, "um");
    expect(leak({ clearance, eccentricity }) / summedOverStrips(clearance, eccentricity)).toBeCloseTo(1, 10);
  },
);

test("a worked case: 10 µm round a 50 mm shaft lets 4.705 mL/min through, and a touching shaft 2.5 times as much", () => {
  expect(inUnit("flow", leak(), "mL/min")).toBeCloseTo(4.705, 3);
  expect(inUnit("flow", leak({ eccentricity: 1 }), "mL/min")).toBeCloseTo(11.762, 3);
  expect(inUnit("flow", leak({ clearance: quantity("length", 25, "um") }), "mL/min")).toBeCloseTo(73.5, 1);
});

const times = fc.double({ min: 1.01, max: 20, noNaN: true });

property("a gap twice as wide leaks eight times as much: the leak goes with the cube of the clearance", [times], (factor) => {
  const wider = leak({ clearance: quantity("length", 10 * factor, "um") });
  expect(wider / leak() / factor ** 3).toBeCloseTo(1, 10);
});

property(
  "more pressure, a thicker shaft, a shorter set, a thinner liquid or a shaft further off centre each leak more",
  [times, fc.double({ min: 0, max: 0.9, noNaN: true })],
  (factor, eccentricity) => {
    const before = leak({ eccentricity });
    expect(leak({ eccentricity, pressureDrop: quantity("pressure-difference", 3 * factor, "bar") })).toBeGreaterThan(before);
    expect(leak({ eccentricity, diameter: quantity("length", 50 * factor, "mm") })).toBeGreaterThan(before);
    expect(leak({ eccentricity, length: quantity("length", 50 / factor, "mm") })).toBeGreaterThan(before);
    expect(leak({ eccentricity, viscosity: quantity("viscosity", 1 / factor, "mPa*s") })).toBeGreaterThan(before);
    expect(leak({ eccentricity: eccentricity + 0.1 })).toBeGreaterThan(before);
  },
);

test("the Reynolds number is twice the gap times speed over kinematic viscosity, with water's density said to be assumed", () => {
  const found = annularLeak(box({ clearance: quantity("length", 0.1, "mm") }));
  if (!found.ok) throw new Error("refused");
  const { flow, reynolds } = found.value;
  const speed = flow / (Math.PI * 0.05 * 1e-4);
  // Water at 20 °C: 998.2 kg/m3 and 1.0034 mm2/s, IAPWS.
  expect(reynolds / ((2 * 1e-4 * speed) / (1.0016e-3 / 998.206))).toBeCloseTo(1, 5);
  expect(found.workings.find(([rule]) => rule.id === "leak-density-assumed")?.[0].assumed).toEqual({ min: 700, max: 1300 });
});

test("a fast leak through a wide gap is flagged as no longer smooth, and a slow one is not", () => {
  const ids = (mm: number) => {
    const found = annularLeak(box({ clearance: quantity("length", mm, "mm") }));
    return found.ok ? found.warnings.map((warning) => `${warning.kind} ${warning.says.id}`) : [];
  };
  expect(ids(0.01)).toEqual([]);
  expect(ids(0.4)).toContain("outside-validity leak-not-laminar");
});

test("a shaft further off centre than its clearance, no length, no liquid and nonsense are refused by name", () => {
  for (const [change, input] of [
    [{ eccentricity: 1.01 }, "eccentricity"],
    [{ eccentricity: -0.01 }, "eccentricity"],
    [{ eccentricity: Number.NaN }, "eccentricity"],
    [{ length: quantity("length", 0, "mm") }, "length"],
    [{ diameter: quantity("length", -50, "mm") }, "diameter"],
    [{ clearance: quantity("length", -1, "um") }, "clearance"],
    [{ pressureDrop: quantity("pressure-difference", -1, "bar") }, "pressureDrop"],
    [{ viscosity: quantity("viscosity", 0, "Pa*s") }, "viscosity"],
    [{ density: quantity("density", Infinity, "kg/m3") }, "density"],
  ] as const) {
    expect(annularLeak(box(change))).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input, allowed: { min: expect.any(Number), max: expect.any(Number) } },
    });
  }
});

const observed = (change: object = {}) => ({ ...box(), flow: quantity("flow", 3, "mL/min"), ...change });

test("a worked case: 3 mL/min along that shaft is a clearance of 8.607 µm", () => {
  const found = clearanceFromLeak(observed());
  expect(found.ok && inUnit("length", found.value.clearance, "um")).toBeCloseTo(8.607, 3);
});

property(
  "from clearance to leak and back is the clearance again, for any shaft",
  [
    fc.double({ min: 5, max: 500, noNaN: true }),
    fc.double({ min: 0.5, max: 200, noNaN: true }),
    fc.double({ min: 0.1, max: 100, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  ],
  (mm, um, bar, eccentricity) => {
    const change = {
      diameter: quantity("length", mm, "mm"),
      clearance: quantity("length", um, "um"),
      pressureDrop: quantity("pressure-difference", bar, "bar"),
      eccentricity,
    };
    const flow = leak(change);
    const found = clearanceFromLeak({ ...box(change), flow });
    expect(found.ok && found.value.clearance / change.clearance).toBeCloseTo(1, 12);
  },
);

test("a flow that may be five times as much gives a clearance that may be 1.7 times as much", () => {
  const flowBand = { low: quantity("flow", 3, "mL/min"), high: quantity("flow", 15, "mL/min") };
  const found = clearanceFromLeak(observed({ flowBand }));
  if (!found.ok || !found.value.band) throw new Error("no band");
  expect(found.value.band.low).toBe(found.value.clearance);
  expect(found.value.band.high / found.value.band.low).toBeCloseTo(1.709976, 6);
});

test("leak round the outside, from under the sleeve or as a spray says nothing about the gap at the shaft", () => {
  for (const where of ["round-outside", "under-sleeve", "spray"] as const) {
    const found = clearanceFromLeak(observed({ where }));
    expect(found).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "where", given: where, allowed: ["along-shaft"] } });
    expect(!found.ok && allIds().has(found.refusal.says.id)).toBe(true);
  }
  expect(clearanceFromLeak(observed({ where: "along-shaft" })).ok).toBe(true);
});

test("with the flush on, the workings mean the gland-side rings and the drop from flush to atmosphere; with it off, all rings", () => {
  const named = (flushOn?: boolean) => {
    const found = clearanceFromLeak(observed(flushOn === undefined ? {} : { flushOn }));
    const inputs = found.ok ? found.workings[0]?.[0].inputs.map((input) => input.name) : [];
    return [inputs?.[2], inputs?.[5]];
  };
  expect(named(true)).toEqual(["drop-flush-to-atmosphere", "length-gland-side-rings"]);
  expect(named(false)).toEqual(["drop-box-to-atmosphere", "length-all-rings"]);
  expect(named()).toEqual(["pressure-drop", "length"]);
});

test("a clearance says whether it belongs to the running or the standing shaft, and what was not said about the reading", () => {
  for (const state of ["running", "standing"] as const) {
    const found = clearanceFromLeak(observed({ state, where: "along-shaft", flushOn: false }));
    expect(found).toMatchObject({ ok: true, value: { state } });
    expect(found.ok && found.warnings.map((warning) => warning.says.id)).toEqual([`leak-${state}-only`, "leak-flush-off"]);
  }
  const vague = clearanceFromLeak(observed());
  const ids = vague.ok ? vague.warnings.map((warning) => warning.says.id) : [];
  expect(ids).toEqual(["leak-place-not-said", "leak-state-not-said", "leak-flush-not-said"]);
  expect(ids.filter((id) => !allIds().has(id))).toEqual([]);
});

test("no pressure drop, a leak below nothing or a band beside its flow is refused by name", () => {
  for (const [change, input] of [
    [{ pressureDrop: quantity("pressure-difference", 0, "bar") }, "pressureDrop"],
    [{ flow: quantity("flow", -1, "mL/min") }, "flow"],
    [{ flow: quantity("flow", Number.NaN, "mL/min") }, "flow"],
    [{ flowBand: { low: quantity("flow", 4, "mL/min"), high: quantity("flow", 5, "mL/min") } }, "flowBand.low"],
    [{ flowBand: { low: quantity("flow", 1, "mL/min"), high: quantity("flow", 2, "mL/min") } }, "flowBand.high"],
    [{ eccentricity: 2 }, "eccentricity"],
  ] as const) {
    expect(clearanceFromLeak(observed(change))).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
});
