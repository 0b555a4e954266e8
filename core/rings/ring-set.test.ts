import fc from "fast-check";
import { expect, test } from "vitest";
import ringFile from "../../data/limits/rings.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { motions } from "../box/index.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type RingFile, readRingFacts } from "./facts.ts";
import { type RingSet, ringSet } from "./ring-set.ts";
import type { RingSetQuestion } from "./survey.ts";

const facts = readRingFacts(ringFile as RingFile);
const mm = (value: number) => quantity("length", value, "mm");
const inMm = (value: Length | undefined) => (value === undefined ? Number.NaN : inUnit("length", value, "mm"));

/** An invented box, measured through and through; rings as thick as the space and eased home. */
const drawn: RingSetQuestion = {
  motion: "turning",
  shaft: mm(50),
  bore: mm(75),
  section: mm(12.5),
  depth: mm(92),
  seatingLossLow: 0,
  seatingLossHigh: 0,
  lantern: { width: mm(16), window: mm(12) },
  portFromThroat: mm(31),
  portDiameter: mm(6),
  noseLength: mm(30),
  threadLeft: mm(25),
};

function setOf(question: RingSetQuestion): RingSet {
  const answer = ringSet(question, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

function said(question: RingSetQuestion): readonly string[] {
  const answer = ringSet(question, facts);
  return answer.ok ? answer.warnings.map(({ says }) => says.id) : [answer.refusal.says.id];
}

test("the drawn box takes five rings and a lantern ring after the second: set 78.5, entry 13.5, gland gap 16.5", () => {
  const set = setOf(drawn);
  expect(set.rings.map(({ number, joint }) => [number, joint])).toEqual([
    [1, 12],
    [2, 3],
    [3, 6],
    [4, 9],
    [5, 12],
  ]);
  expect(set.parts.map(({ kind }) => kind)).toEqual(["ring", "ring", "lantern", "ring", "ring", "ring"]);
  expect(inMm(set.setHeight)).toBeCloseTo(78.5, 9);
  expect(inMm(set.entry?.mean)).toBeCloseTo(13.5, 9);
  expect(inMm(set.glandGap)).toBeCloseTo(16.5, 9);
  expect(inMm(set.lantern?.limit?.offsetAtStart)).toBeCloseTo(2, 9);
  expect(set.lantern?.limit?.closedBy).toBe(3);
  expect(set.binding).toBe("lantern");
  expect(set.notKnown).toEqual([]);
});

const sections = [8, 9.5, 10, 12.5, 16] as const;

against(
  {
    topic: "rings",
    check: "A box 7 sections deep takes the rings that a naval pump must have",
    source: { source: "mil-p-18472g", at: "3.3.9: at least 5 rings and a lantern ring; depth of 7 sections from Neale 1995, fig. 25.11" },
    tolerance: "a count: exact. The lantern ring is taken 1.25 sections wide",
  },
  sections.map((section) => ({
    what: `section ${section} mm, depth ${7 * section} mm`,
    theirs: 5,
    ours: () =>
      setOf({
        motion: "turning",
        section: mm(section),
        depth: mm(7 * section),
        lantern: { width: mm(1.25 * section), window: mm(section) },
      }).rings.length,
    unit: "rings",
    within: { absolute: 0 },
  })),
);

against(
  {
    topic: "rings",
    check: "Lantern ring in place of the third ring from the bottom",
    source: { source: "fire-pump-manual", at: "p. 37: 6 rings, lantern ring in place of the third from the bottom" },
    tolerance: "a count: exact. The section is ours, the port in the middle of the third place",
  },
  [
    {
      what: "rings below the lantern ring",
      theirs: 2,
      ours: () => {
        const section = mm(9.5);
        return (
          setOf({
            motion: "turning",
            section,
            seatingLossLow: 0,
            seatingLossHigh: 0,
            depth: mm(7 * 9.5 + 6),
            lantern: { width: section, window: mm(7) },
            portFromThroat: mm(2.5 * 9.5),
            portDiameter: mm(4),
            noseLength: mm(12),
          }).lantern?.afterRing ?? -1
        );
      },
      unit: "rings",
      within: { absolute: 0 },
    },
  ],
);

// Test fixture of API 622 Addendum 1 (2022): section 1/8 in, box 19.05 mm deep; a packing maker wants 4 to 6 rings in a valve.
test("the valve box of the emission test takes 4 to 6 rings and no lantern ring", () => {
  const set = setOf({ motion: "rising-stem", section: quantity("length", 1 / 8, "in"), depth: mm(19.05), noseLength: mm(12) });
  expect(set.rings.length).toBeGreaterThanOrEqual(4);
  expect(set.rings.length).toBeLessThanOrEqual(6);
  expect(set.lantern).toBeUndefined();
});

test("a deep valve box gets five rings on a spacer, not twelve rings", () => {
  const set = setOf({ motion: "quarter-turn-stem", section: mm(6), depth: mm(70) });
  expect(set.rings).toHaveLength(5);
  expect(set.parts[0]).toMatchObject({ kind: "spacer" });
  expect(set.fit).toBeGreaterThan(6);
  expect(said({ motion: "quarter-turn-stem", section: mm(6), depth: mm(70) })).toContain("rings-spacer");
});

const survey = fc.record({
  motion: fc.constantFrom(...motions),
  section: fc.double({ min: 5, max: 20, noNaN: true }).map(mm),
  depth: fc.double({ min: 3, max: 16, noNaN: true }),
  low: fc.double({ min: 0, max: 0.2, noNaN: true }),
  spread: fc.double({ min: 0, max: 0.15, noNaN: true }),
  lantern: fc.option(fc.double({ min: 0.8, max: 2, noNaN: true }), { nil: undefined }),
  port: fc.double({ min: 0, max: 1, noNaN: true }),
  throatBush: fc.double({ min: 0, max: 10, noNaN: true }).map(mm),
  nose: fc.option(fc.double({ min: 5, max: 60, noNaN: true }).map(mm), { nil: undefined }),
});

type Drawn = typeof survey extends fc.Arbitrary<infer T> ? T : never;

function questionOf({ motion, section, depth, low, spread, lantern, port, throatBush, nose }: Drawn): RingSetQuestion {
  const deep = (depth * section) as Length;
  return {
    motion,
    section,
    depth: deep,
    throatBush,
    seatingLossLow: low,
    seatingLossHigh: low + spread,
    ...(nose === undefined ? {} : { noseLength: nose }),
    ...(lantern === undefined
      ? {}
      : { lantern: { width: (lantern * section) as Length }, portFromThroat: (port * deep) as Length, portDiameter: mm(4) }),
  };
}

property("every chain of lengths closes: part on part from the throat, and set with entry is the depth", [survey], (values) => {
  const question = questionOf(values);
  const answer = ringSet(question, facts);
  if (!answer.ok) return;
  const { parts, rings, entry, depthInSections, setHeight } = answer.value;
  let at = 0;
  for (const part of parts) {
    expect(part.from).toBeCloseTo(at, 12);
    expect(part.to - part.from).toBeCloseTo(part.height, 12);
    expect(part.to + (part.depthLeft ?? 0)).toBeCloseTo(question.depth ?? 0, 12);
    at += part.height;
  }
  expect(setHeight).toBeCloseTo(at, 12);
  expect(at + (entry?.mean ?? 0)).toBeCloseTo(question.depth ?? 0, 12);
  expect(depthInSections).toBeCloseTo(values.depth, 9);
  expect(rings.map(({ number }) => number)).toEqual(rings.map((_, index) => index + 1));
});

property("never more rings than go in, even when none of them loses more than the least in seating", [survey], (values) => {
  const question = questionOf(values);
  const answer = ringSet(question, facts);
  if (!answer.ok) return;
  const { rings, fit, lantern, entryBand } = answer.value;
  expect(rings.length).toBeLessThanOrEqual(fit ?? 0);
  const tallest = (question.section ?? 0) * (1 - values.low);
  const taken = rings.length * tallest + (lantern?.width ?? 0) + (question.throatBush ?? 0);
  expect(taken).toBeLessThanOrEqual((question.depth ?? 0) - mm(3) + 1e-9);
  expect(entryBand?.low ?? 0).toBeGreaterThanOrEqual(mm(3) - 1e-9);
});

property(
  "a deeper box never takes fewer rings, thicker packing never more",
  [survey, fc.double({ min: 1, max: 1.5, noNaN: true })],
  (values, times) => {
    const { lantern: _, ...plain } = values;
    const rings = (over: Partial<RingSetQuestion>) => {
      // A box that takes more than practice uses gets a spacer, so count what would go in.
      const answer = ringSet({ ...questionOf({ ...plain, lantern: undefined }), ...over }, facts);
      return answer.ok ? (answer.value.fit ?? 0) : 0;
    };
    const depth = values.depth * values.section;
    expect(rings({ depth: (depth * times) as Length })).toBeGreaterThanOrEqual(rings({}));
    expect(rings({ section: (values.section * times) as Length })).toBeLessThanOrEqual(rings({}));
  },
);

property("travel is the least of its limits and names it; lantern ring and joints stand where they say", [survey], (values) => {
  const answer = ringSet(questionOf(values), facts);
  if (!answer.ok) return;
  const { travel, binding, limits, lantern, parts, joints, rings } = answer.value;
  expect(travel).toBe(limits.length === 0 ? undefined : Math.min(...limits.map((limit) => limit.travel)));
  if (binding) expect(limits.find(({ by }) => by === binding)?.travel).toBe(travel);
  expect(joints).toHaveLength(rings.length);
  if (!lantern) return;
  const index = parts.findIndex(({ kind }) => kind === "lantern");
  expect(parts.slice(0, index).filter(({ number }) => number !== undefined)).toHaveLength(lantern.afterRing);
  expect(lantern.centre).toBeCloseTo((lantern.from + lantern.to) / 2, 12);
});

const known = ["shaft", "bore", "section", "depth", "lantern", "portFromThroat", "portDiameter", "noseLength", "threadLeft"] as const;

property(
  "any part of a survey gives a set that says what it rests on, or a refusal that says what is missing",
  [fc.subarray([...known])],
  (names) => {
    const question = { motion: "turning" as const, ...Object.fromEntries(names.map((name) => [name, drawn[name]])) } as RingSetQuestion;
    const answer = ringSet(question, facts);
    if (!answer.ok) {
      expect(answer.refusal).toMatchObject({ kind: "not-known", input: "section" });
      expect(names.includes("section") || (names.includes("shaft") && names.includes("bore"))).toBe(false);
      return;
    }
    const { restsOn, notKnown, rings } = answer.value;
    expect(rings.length).toBeGreaterThan(0);
    for (const name of names) if (name !== "lantern") expect(restsOn).toContain(name);
    for (const name of notKnown) expect(names).not.toContain(name);
    if (!names.includes("depth")) expect(notKnown).toContain("depth");
    if (!names.includes("threadLeft")) expect(notKnown).toContain("threadLeft");
  },
);

test("with depth alone missing, the rings are counted by practice and neither entry nor travel by the nose is told", () => {
  const { depth: _, ...rest } = drawn;
  const set = setOf(rest);
  expect(set.rings).toHaveLength(5);
  expect(set.entry).toBeUndefined();
  expect(set.limits.map(({ by }) => by)).toEqual(["thread", "lantern"]);
});

test("the port may be measured from the face", () => {
  const { portFromThroat: _, ...rest } = drawn;
  expect(setOf({ ...rest, portFromFace: mm(61) }).lantern?.centre).toBeCloseTo(setOf(drawn).lantern?.centre ?? 0, 12);
  expect(said({ ...drawn, portFromFace: mm(50) })).toContain("rings-port-two-places");
});

test("each thing that can end the travel is found when it is the least", () => {
  const { lantern: _, portFromThroat: __, portDiameter: ___, ...plain } = drawn;
  expect(setOf({ ...plain, depth: mm(75), threadLeft: mm(2) })).toMatchObject({ binding: "thread" });
  expect(setOf({ ...plain, depth: mm(75), noseLength: mm(15) })).toMatchObject({ binding: "nose" });
  expect(setOf({ ...plain, depth: mm(75), glandGap: mm(9), noseLength: mm(25) })).toMatchObject({ binding: "gland-gap" });
});

test("a box that cannot be packed well says why", () => {
  expect(said({ ...drawn, depth: mm(60) })).toContain("rings-too-shallow");
  expect(said({ ...drawn, depth: mm(80) })).toContain("rings-too-shallow-with-lantern");
  expect(said({ ...drawn, noseLength: mm(12) })).toContain("rings-nose-too-short");
  expect(said({ ...drawn, rings: 6 })).toContain("rings-no-entry");
  expect(said({ ...drawn, portFromThroat: mm(24) })).toContain("rings-port-out-of-reach");
  expect(said({ ...drawn, lantern: { wanted: false } })).toContain("rings-port-without-lantern");
  expect(said({ ...drawn, rings: 4 })).toContain("rings-fewer-than-usual");
  expect(said({ motion: "stroking", section: mm(10), depth: mm(60), stroke: mm(20) })).toContain("rings-stack-above-stroke");
});

test("a slow agitator at low pressure is told of the single ring one maker uses, and is not called too shallow", () => {
  const low = said({ motion: "slow-agitator", section: mm(12), depth: mm(40), pressure: quantity("pressure", 1, "bar") });
  expect(low).toContain("rings-slow-low-pressure");
  expect(low).not.toContain("rings-too-shallow");
  expect(said({ motion: "slow-agitator", section: mm(12), depth: mm(40), pressure: quantity("pressure", 5, "bar") })).toContain(
    "rings-too-shallow",
  );
});

test("the spacer of a deep pump box is cut so that the lantern ring still meets its port", () => {
  const deep: RingSetQuestion = { ...drawn, depth: mm(150), noseLength: mm(40), portFromThroat: mm(55) };
  const set = setOf(deep);
  expect(set.spacer).toBeGreaterThan(0);
  expect(said(deep)).not.toContain("rings-port-out-of-reach");
  expect(Math.abs(inMm(set.lantern?.limit?.offsetAtStart))).toBeLessThanOrEqual(3);
  expect(Math.abs(inMm(set.spacer) - Math.round(inMm(set.spacer)))).toBeLessThan(1e-9);
});

test("where rings may lose more in seating than is counted on, one more may go in, and the depth left tells", () => {
  // Between 11.875 and 10.625 mm a ring, 71 mm take five or six; the sixth needs 11.875 and 5 mm of entry.
  const firm: RingSetQuestion = { ...drawn, seatingLossLow: 0.05, seatingLossHigh: 0.15 };
  const answer = ringSet(firm, facts);
  const note = answer.ok ? answer.warnings.find(({ says }) => says.id === "rings-one-more") : undefined;
  expect(note?.says.with).toMatchObject({ rings: 5, next: 6, left: { value: expect.closeTo(0.016875, 9) } });
  expect(said(drawn)).not.toContain("rings-one-more");
});

test("what a ring may lose in seating is any of the range alike, and its spread is the uncertainty (JCGM 100:2008, 4.3.7)", () => {
  const heights = Array.from({ length: 2000 }, (_, k) => 12.5 * (1 - (0.05 + (0.1 * (k + 0.5)) / 2000)));
  const mean = heights.reduce((sum, height) => sum + height, 0) / heights.length;
  const spread = Math.sqrt(heights.reduce((sum, height) => sum + (height - mean) ** 2, 0) / heights.length);
  const { ringHeight, entry } = setOf({ ...drawn, seatingLossLow: 0.05, seatingLossHigh: 0.15 });
  expect(inMm(ringHeight.mean)).toBeCloseTo(mean, 6);
  expect(inMm(ringHeight.u)).toBeCloseTo(spread, 6);
  expect(inMm(entry?.u)).toBeCloseTo(5 * spread, 5);
});

test("end rings take the places asked for", () => {
  const kinds = (endRings: "none" | "throat" | "gland" | "both") => setOf({ ...drawn, endRings }).rings.map(({ kind }) => kind);
  expect(kinds("both")).toEqual(["end-ring", "ring", "ring", "ring", "end-ring"]);
  expect(kinds("throat")).toEqual(["end-ring", "ring", "ring", "ring", "ring"]);
  expect(kinds("gland")).toEqual(["ring", "ring", "ring", "ring", "end-ring"]);
});

test("what is impossible or no number is refused by name", () => {
  const refusal = (over: Partial<RingSetQuestion>) => ringSet({ ...drawn, ...over }, facts);
  expect(refusal({ depth: mm(31.4) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "depth" } });
  expect(refusal({ rings: 12 })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "rings", allowed: { max: 6 } } });
  expect(refusal({ bore: mm(40) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore" } });
  expect(refusal({ depth: Number.NaN as Length })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "depth" } });
  expect(refusal({ section: Infinity as Length })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "section" } });
  expect(refusal({ seatingLossLow: 0.2, seatingLossHigh: 0.1 })).toMatchObject({ ok: false, refusal: { input: "seatingLossHigh" } });
  expect(refusal({ portFromThroat: mm(100) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "portFromThroat" } });
  expect(refusal({ lantern: { width: mm(16), window: mm(17) } })).toMatchObject({ ok: false, refusal: { input: "lantern.window" } });
  expect(refusal({ lantern: { width: mm(16), land: mm(8) } })).toMatchObject({ ok: false, refusal: { input: "lantern.land" } });
  expect(refusal({ lantern: { width: mm(16), ringsThroatSide: 7 } })).toMatchObject({
    ok: false,
    refusal: { input: "lantern.ringsThroatSide" },
  });
  expect(refusal({ firstJoint: 13 })).toMatchObject({ ok: false, refusal: { input: "firstJoint" } });
});
