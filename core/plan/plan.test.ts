import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { motions } from "../box/index.ts";
import { type GaugePressure, quantity } from "../units/index.ts";
import { answerOf, type Plan, partNames, partsOf, plan, type Survey } from "./index.ts";

const facts = readAllFacts();
const mm = (value: number) => quantity("length", value, "mm");
const bar = (value: number) => quantity("pressure", value, "bar");

/** A stock pump's box, all of it known. */
const survey: Survey = {
  motion: "turning",
  release: "allowed",
  zone: "ordinary",
  shaft: { readings: [mm(49.96), mm(49.98), mm(49.97)], how: "micrometer" },
  bore: { readings: [mm(75), mm(75.1), mm(75), mm(74.9)], how: "caliper-at-mouth" },
  depth: { readings: [mm(92)], how: "depth-gauge" },
  lantern: { wanted: true, width: mm(16), land: mm(2) },
  port: { fromFace: mm(61), diameter: mm(6) },
  follower: { nose: mm(30) },
  studs: { count: 2, thread: "M12", threadLeft: mm(25), nutCondition: "as-received" },
  set: { style: "eptfe-graphite", series: "metric", seated: "each-tamped" },
  service: {
    fluids: ["pulp-stock-brown-unbleached"],
    phase: "liquid",
    temperature: quantity("temperature", 45, "degC"),
    pH: 7.5,
    solids: "fibrous",
    rotation: quantity("rotation", 1450, "rpm"),
    suction: bar(0.4),
    discharge: bar(3.8),
    impeller: "balance-holes-back-rings",
  },
  flush: { fitted: true, supply: bar(4), set: bar(2.4) },
};

function planned(of: Survey): Plan {
  const found = plan(of, facts);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found.value;
}

describe("one worked pump, end to end, each figure by hand", () => {
  const whole = planned(survey);
  const d = 0.04997;
  const D = 0.075;
  const set = answerOf(whole.rings.set);

  test("nothing is missing and nothing refused", () => {
    expect(whole.gaps).toEqual([]);
    expect(whole.refused).toEqual([]);
  });

  test("section is half of bore less shaft, and 12.5 mm stock is taken", () => {
    expect(answerOf(whole.box.section)?.section.mean).toBeCloseTo((D - d) / 2, 12);
    expect(whole.box.stock).toBeCloseTo(0.0125, 12);
  });

  test("each ring is as long as the mean circumference", () => {
    expect(answerOf(whole.rings.cut)?.length.mean).toBeCloseTo((Math.PI * (D + d)) / 2, 12);
    expect(answerOf(whole.rings.cut)?.lengthRounded).toBeCloseTo(0.196, 12);
  });

  test("parts stand on one another from the throat, and set and entry make up the depth of the box", () => {
    let at = 0;
    for (const part of set?.parts ?? []) {
      expect(part.from).toBeCloseTo(at, 12);
      expect(part.to - part.from).toBeCloseTo(part.height, 12);
      expect(part.depthLeft).toBeCloseTo(0.092 - part.to, 12);
      at = part.to;
    }
    expect(at).toBeCloseTo(set?.setHeight ?? Number.NaN, 12);
    expect(at + (set?.entry?.mean ?? Number.NaN)).toBeCloseTo(0.092, 12);
    expect((set?.glandGap ?? Number.NaN) + (set?.entry?.mean ?? Number.NaN)).toBeCloseTo(0.03, 12);
  });

  test("a further push decays ring by ring, not at all over the lantern ring, and less while the shaft turns", () => {
    const { ratio, friction } = whole.load.settings.ok ? whole.load.settings.value : { ratio: Number.NaN, friction: Number.NaN };
    const rings = (set?.rings.length ?? 0) * (set?.ringHeight.mean ?? 0);
    const rate = (shaftToo: number) => (4 * friction * ratio * (shaftToo * d + D)) / (D * D - d * d);
    expect(answerOf(whole.load.standing)?.share).toBeCloseTo(Math.exp(-rate(1) * rings), 9);
    expect(answerOf(whole.load.turning)?.share).toBeCloseTo(Math.exp(-rate(0) * rings), 9);
  });

  test("one flat of an M12 nut is a sixth of 1.75 mm (ISO 261)", () => {
    expect(answerOf(whole.load.nuts)?.advancePerFlat).toBeCloseTo(0.00175 / 6, 12);
  });

  test("box pressure is a band about suction and 0.15 of the rise, and the flush is set above its top", () => {
    const box = answerOf(whole.pressures.box);
    expect(box?.typical).toBeCloseTo(40000 + 0.15 * 340000, 3);
    expect(box?.band.low).toBeLessThan(box?.typical as GaugePressure);
    expect(answerOf(whole.pressures.flush)?.setting.low).toBeGreaterThan(box?.band.high as GaugePressure);
  });

  test("the surface runs at half the diameter times the turns", () => {
    expect(answerOf(whole.chosen.speed)?.speed).toBeCloseTo((d / 2) * ((1450 * 2 * Math.PI) / 60), 12);
  });

  test("the depths foretold in the fit steps are those of the set", () => {
    const foretold = answerOf(whole.steps.fit)?.steps.flatMap((step) =>
      step.ring !== undefined && step.predicted?.kind === "length" ? [step.predicted.value] : [],
    );
    const depths = set?.rings.map((ring) => ring.depthLeft);
    for (const depth of depths ?? [Number.NaN])
      expect(foretold?.some((value) => Math.abs(value - (depth ?? Number.NaN)) < 1e-12)).toBe(true);
  });

  test("every part has workings, and every step of them a source", () => {
    const parts = partsOf(whole);
    for (const name of partNames) {
      const part = parts[name];
      if (!part?.ok || name === "materials" || name === "cautions") continue;
      expect(part.workings.length, name).toBeGreaterThan(0);
      for (const [rule] of part.workings) expect(rule.citation.source.length, rule.id).toBeGreaterThan(0);
    }
  });
});

test("a shaft that is not smaller than its bore is refused as a whole, with both named", () => {
  const found = plan({ motion: "turning", shaft: { readings: [mm(75)] }, bore: { readings: [mm(50)] } }, facts);
  expect(found).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore" } });
});

test("a reading that makes the shaft too large, and looks mistyped, is asked about and not turned away", () => {
  const found = plan({ motion: "turning", shaft: { readings: [mm(50), mm(500)] }, bore: { readings: [mm(70)] } }, facts);
  expect(found.ok && found.warnings.some((warning) => warning.kind === "slip" && warning.input?.startsWith("shaft"))).toBe(true);
  expect(found.ok && found.value.refused.map((entry) => entry.part)).toContain("section");
});

test("with nothing but the motion there is still a plan, and it says what is missing", () => {
  for (const motion of motions) {
    const bare = planned({ motion });
    expect(
      bare.gaps.map((gap) => gap.field),
      motion,
    ).toEqual(expect.arrayContaining(["shaft", "bore"]));
    expect(answerOf(bare.steps.cautions)?.cautions.length, motion).toBeGreaterThan(0);
  }
});

test("a part that cannot be is refused by itself, and the rest is planned", () => {
  const odd = planned({ ...survey, service: { ...survey.service, discharge: bar(0.1) } });
  expect(odd.refused.map((entry) => entry.part)).toContain("box-pressure");
  expect(answerOf(odd.rings.set)).toBeDefined();
});

type Branch = Readonly<Record<string, unknown>>;

/** Every place in the survey that can be left out, as a path. */
function places(branch: Branch, path: readonly string[] = []): readonly (readonly string[])[] {
  return Object.entries(branch).flatMap(([name, value]) => {
    const here = [...path, name];
    const inside = typeof value === "object" && value !== null && !Array.isArray(value) ? places(value as Branch, here) : [];
    return name === "motion" ? inside : [here, ...inside];
  });
}

function without(branch: Branch, [name = "", ...rest]: readonly string[]): Branch {
  if (rest.length === 0) return Object.fromEntries(Object.entries(branch).filter(([key]) => key !== name));
  const inside = branch[name];
  return typeof inside === "object" && inside !== null ? { ...branch, [name]: without(inside as Branch, rest) } : branch;
}

const all = places(survey as unknown as Branch);

property(
  "whatever was not measured, the rest is planned and every gap is named by a field of the survey",
  [fc.subarray(all as (readonly string[])[]), fc.constantFrom(...motions)],
  (dropped, motion) => {
    const partial = dropped.reduce(without, { ...survey, motion } as unknown as Branch) as unknown as Survey;
    const found = planned(partial);
    const fields = new Set([...all.map((path) => path.join(".")), "set.glandStress", "service.pressure", "set.rings"]);
    for (const { field, parts } of found.gaps) {
      expect(fields.has(field), field).toBe(true);
      expect(parts.length).toBeGreaterThan(0);
    }
  },
);

property(
  "what belongs to turning shafts never stands in the plan of a stem",
  [fc.constantFrom("rising-stem" as const, "quarter-turn-stem" as const), fc.boolean()],
  (motion, known) => {
    const parts = partsOf(planned(known ? { ...survey, motion } : { motion }));
    for (const name of [
      "drip-guideline",
      "friction-power",
      "flush-flow",
      "flush-pressure",
      "stress-turning",
      "surface-speed",
      "gland-load",
    ] as const) {
      expect(parts[name], name).toBeUndefined();
    }
  },
);

property(
  "a thicker shaft in the same bore never gets a thicker section",
  [fc.double({ min: 30, max: 60, noNaN: true }), fc.double({ min: 0, max: 8, noNaN: true })],
  (shaft, more) => {
    const gap = (value: number) =>
      answerOf(planned({ motion: "turning", shaft: { readings: [mm(value)] }, bore: { readings: [mm(75)] } }).box.section)?.section.mean ??
      Number.NaN;
    expect(gap(shaft + more)).toBeLessThanOrEqual(gap(shaft));
  },
);
