import fc from "fast-check";
import { expect, test } from "vitest";
import ringFile from "../../data/limits/rings.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type RingFile, readRingFacts } from "./facts.ts";
import { type CutQuestion, type RingCut, ringCut } from "./ring-cut.ts";

const facts = readRingFacts(ringFile as RingFile);
const mm = (value: number) => quantity("length", value, "mm");
const inch = (value: number) => quantity("length", value, "in");
const degrees = (value: number) => quantity("angle", value, "deg");
const inInch = (value: Length) => inUnit("length", value, "in");
const inMm = (value: Length) => inUnit("length", value, "mm");

function cutOf(question: CutQuestion & { family?: "vegetable-fibre" | "ptfe" }): RingCut {
  const answer = ringCut(question, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

const butt = (shaft: Length, bore: Length) => cutOf({ shaft, bore, cut: "butt" });

against(
  {
    topic: "rings",
    check: "Section and length of a ring",
    source: { source: "mobley-1999", at: "p. 226: bore 4 in, shaft 2 in" },
    tolerance: "printed to a hundredth of an inch; the book's 9.43 is 3.1416 times 3, rounded up",
  },
  [
    { what: "section", theirs: 1, ours: () => inInch(butt(inch(2), inch(4)).section), unit: "in", within: { absolute: 1e-9 } },
    { what: "length", theirs: 9.43, ours: () => inInch(butt(inch(2), inch(4)).length.mean), unit: "in", within: { absolute: 0.01 } },
  ],
);

const chemicalBoxes = [
  [1.375, 2, 5 / 16],
  [1.75, 2.5, 3 / 8],
  [2.125, 2.875, 3 / 8],
  [2.5, 3.375, 7 / 16],
] as const;

against(
  {
    topic: "rings",
    check: "Boxes of chemical pumps take a section of the inch series",
    source: { source: "pump-manual-7", at: "appendix 5: shaft and bore of four boxes" },
    tolerance: "exact: the dimensions are sixteenths of an inch",
  },
  chemicalBoxes.map(([shaft, bore, section]) => ({
    what: `shaft ${shaft} in, bore ${bore} in`,
    theirs: section,
    ours: () => inInch(butt(inch(shaft), inch(bore)).section),
    unit: "in",
    within: { absolute: 1e-12 },
  })),
);

/** Length of the mean circle, walked as a polygon of so many sides: no formula of a circumference in it. */
function walked(shaft: number, bore: number, sides = 20000): number {
  const radius = (shaft + bore) / 4;
  let sum = 0;
  for (let k = 0; k < sides; k++) {
    const a = (2 * Math.PI * k) / sides;
    const b = (2 * Math.PI * (k + 1)) / sides;
    sum += Math.hypot(radius * (Math.cos(b) - Math.cos(a)), radius * (Math.sin(b) - Math.sin(a)));
  }
  return sum;
}

test("a ring is as long as the circle midway between sleeve and bore, walked in small steps", () => {
  for (const [shaft, bore] of chemicalBoxes) expect(inInch(butt(inch(shaft), inch(bore)).length.mean)).toBeCloseTo(walked(shaft, bore), 6);
});

/**
 * Tip to tip of a strip, from its corners: two faces through the ends of the
 * mean line, each along its own direction, met with the two edges of the strip.
 */
function tipToTip(length: number, section: number, angle: number): number {
  const along = Math.cos(angle);
  const across = Math.sin(angle);
  const corners = [0, length].flatMap((end) => [-section / 2, section / 2].map((edge) => end + (edge / across) * along));
  return Math.max(...corners) - Math.min(...corners);
}

property(
  "tip to tip is what the corners of the strip say, at any slant",
  [fc.double({ min: 5, max: 300, noNaN: true }), fc.double({ min: 2, max: 25, noNaN: true }), fc.double({ min: 15, max: 90, noNaN: true })],
  (shaft, section, angle) => {
    const cut = cutOf({ shaft: mm(shaft), section: mm(section), cut: "skive", angle: degrees(angle) });
    expect(inMm(cut.cutLength)).toBeCloseTo(tipToTip(inMm(cut.length.mean), section, (angle * Math.PI) / 180), 6);
  },
);

test("a 10 mm strip grows by 10.0 mm at 45° and by 17.3 mm at 30°, as the exact tangents 1 and 1/√3 give", () => {
  const at = (angle: number) => inMm(cutOf({ shaft: mm(50), section: mm(10), cut: "skive", angle: degrees(angle) }).bevel);
  expect(at(45)).toBeCloseTo(10, 9);
  expect(at(30)).toBeCloseTo(10 * Math.sqrt(3), 9);
});

test("the drawn box of 50 in 75 is cut to 196 mm on a 50 mm bar, and the shaft's circumference alone is 39 mm short", () => {
  const cut = butt(mm(50), mm(75));
  expect(inMm(cut.lengthRounded)).toBe(196);
  expect(inMm(cut.mandrel)).toBeCloseTo(50, 12);
  expect(inMm(cut.shortcutError)).toBeCloseTo(39.27, 2);
});

test("45° reads the same from the strip and from square; 30° does not", () => {
  const skive = (angle: number) => cutOf({ shaft: mm(50), bore: mm(75), cut: "skive", angle: degrees(angle) });
  expect(skive(45).cutLengthIfFromSquare).toBeCloseTo(skive(45).cutLength, 12);
  expect(skive(30).cutLengthIfFromSquare).toBeCloseTo(skive(60).cutLength, 12);
  expect(inMm((skive(30).cutLength - skive(60).cutLength) as Length)).toBeGreaterThan(14);
});

test("a skive of 90° is a butt cut, and has no other reading that could be cut", () => {
  const skive = cutOf({ shaft: mm(50), bore: mm(75), cut: "skive", angle: degrees(90) });
  expect(skive.cutLength).toBeCloseTo(butt(mm(50), mm(75)).cutLength, 12);
  expect(skive.cutLengthIfFromSquare).toBeUndefined();
});

test("a skive without an angle is cut at 45°, and says so with the 30° of the book beside it", () => {
  const answer = ringCut({ shaft: mm(50), bore: mm(75), cut: "skive" }, facts);
  expect(answer.ok && answer.value.angle).toBeCloseTo(Math.PI / 4, 12);
  expect(answer.ok && answer.workings.find(([rule]) => rule.id === "ring-skive-angle")?.[0].assumed?.min).toBeCloseTo(Math.PI / 6, 12);
});

test("a butt cut given with a slant is asked about", () => {
  const answer = ringCut({ shaft: mm(50), bore: mm(75), cut: "butt", angle: degrees(45) }, facts);
  expect(answer.ok && answer.warnings).toContainEqual(expect.objectContaining({ kind: "slip", input: "angle" }));
});

test("the bore counts before a stock section that is not quite its size", () => {
  const cut = cutOf({ shaft: mm(50), bore: mm(75), section: mm(12.7), cut: "butt" });
  expect(inMm(cut.section)).toBeCloseTo(12.5, 12);
});

property(
  "twice the box is twice the ring; more slant is never a shorter strip; what is rounded is off by half a step at most",
  [
    fc.double({ min: 10, max: 500, noNaN: true }),
    fc.double({ min: 3, max: 25, noNaN: true }),
    fc.double({ min: 15, max: 89, noNaN: true }),
  ],
  (shaft, section, angle) => {
    const of = (scale: number, slant: number) =>
      cutOf({ shaft: mm(scale * shaft), section: mm(scale * section), cut: "skive", angle: degrees(slant) });
    const one = of(1, angle);
    expect(of(2, angle).cutLength / one.cutLength).toBeCloseTo(2, 9);
    expect(one.cutLength).toBeGreaterThanOrEqual(of(1, angle + 1).cutLength);
    expect(Math.abs(inMm(one.cutLengthRounded) - inMm(one.cutLength))).toBeLessThanOrEqual(0.5 + 1e-9);
    expect(Math.abs(inInch(one.cutLengthRoundedInch) - inInch(one.cutLength))).toBeLessThanOrEqual(1 / 64 + 1e-9);
    expect(inMm((one.length.mean - one.shortcutError) as Length)).toBeCloseTo(inMm((Math.PI * mm(shaft)) as Length), 6);
  },
);

test("what shaft and bore are unsure by is in the length, as nudging each of them shows (JCGM 100:2008, 5.1.3)", () => {
  const [uShaft, uBore] = [mm(0.05), mm(0.1)];
  const at = (shaft: number, bore: number) => butt(shaft as Length, bore as Length).length.mean;
  const nudge = (mm(1) / 1000) as Length;
  const byShaft = (at(mm(50) + nudge, mm(75)) - at(mm(50), mm(75))) / nudge;
  const byBore = (at(mm(50), mm(75) + nudge) - at(mm(50), mm(75))) / nudge;
  const cut = cutOf({ shaft: mm(50), bore: mm(75), shaftUncertainty: uShaft, boreUncertainty: uBore, cut: "butt" });
  expect(cut.length.u).toBeCloseTo(Math.hypot(byShaft * uShaft, byBore * uBore), 9);
});

test("no shaft, a bore no larger, no section, a slant too flat or past square are refused by name", () => {
  const ask = (question: Partial<CutQuestion>) => ringCut({ shaft: mm(50), bore: mm(75), cut: "skive", ...question }, facts);
  expect(ask({ shaft: mm(0) })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "shaft" } });
  expect(ask({ shaft: Number.NaN as Length })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "shaft" } });
  expect(ask({ bore: mm(50) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore" } });
  expect(ask({ angle: degrees(14) })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "angle" } });
  expect(ask({ angle: degrees(91) })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: "angle" } });
  const unknown = ringCut({ shaft: mm(50), cut: "butt" }, facts);
  expect(unknown).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "section" } });
});

test("a section thicker than the shaft is asked about, not blocked", () => {
  const answer = ringCut({ shaft: mm(5), section: mm(50), cut: "butt" }, facts);
  expect(answer.ok && answer.warnings[0]).toMatchObject({ kind: "slip", input: "section" });
});
