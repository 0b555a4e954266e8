import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { condition } from "./index.ts";

const facts = readAllFacts();
const mm = (value: number) => quantity("length", value, "mm");

function offsetOf(gaps: readonly number[], more: object = {}) {
  const answer = condition({ clockGaps: gaps.map(mm), ...more }, facts.condition, facts.uncertainty);
  if (!answer.ok || !answer.value.offset) throw new Error("no offset");
  return { ...answer.value.offset, verdicts: answer.value.verdicts };
}

/** Distance along a ray from the shaft's middle to the bore, less the shaft: exact, whatever the offset. */
function exactGap(R: number, r: number, e: number, clock: number, towards: number): number {
  const angle = ((clock - towards) * Math.PI) / 6;
  return Math.sqrt(R * R - (e * Math.sin(angle)) ** 2) - e * Math.cos(angle) - r;
}

describe("where the shaft lies in the box", () => {
  test("hanging low by 0.3 mm the gap is small at 6 and large at 12", () => {
    const { offset, direction } = offsetOf([10.3, 10, 9.7, 10]);
    expect(inUnit("length", offset.mean, "mm")).toBeCloseTo(0.3, 12);
    expect(direction).toBeCloseTo(6, 12);
  });
  test("towards 12, 3 and 9 o'clock", () => {
    expect(offsetOf([9.7, 10, 10.3, 10]).direction).toBeCloseTo(12, 12);
    expect(offsetOf([10, 9.7, 10, 10.3]).direction).toBeCloseTo(3, 12);
    expect(offsetOf([10, 10.3, 10, 9.7]).direction).toBeCloseTo(9, 12);
  });
  test("an offset within its uncertainty has no direction", () => {
    expect(offsetOf([10.01, 10, 9.99, 10])).not.toHaveProperty("direction");
    expect(offsetOf([10, 10, 10, 10]).offset.mean).toBe(0);
  });
  test("four gaps that agree with half of bore less shaft are said to, others are to be measured again", () => {
    const agreement = (gap: number) =>
      offsetOf([gap, gap, gap, gap], { shaft: mm(50), bore: mm(70) }).verdicts.find((one) => one.id === "gap-agreement");
    expect(agreement(10)).toMatchObject({ verdict: "good" });
    expect(agreement(10.2)).toMatchObject({ verdict: "attend", advice: ["gap-agreement-attend"] });
  });
  test("off the middle by a twentieth of the section is too much, by a hundredth is not", () => {
    const verdict = (off: number) =>
      offsetOf([10 + off, 10, 10 - off, 10], { section: mm(10) }).verdicts.find((one) => one.id === "box-offset")?.verdict;
    expect([verdict(0.1), verdict(0.6)]).toEqual(["good", "attend"]);
  });
});

property(
  "offset and direction come back from the gaps of two true circles",
  [
    fc.integer({ min: 10, max: 150 }),
    fc.integer({ min: 4, max: 20 }),
    fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    fc.double({ min: 0.01, max: 12, noNaN: true }),
  ],
  (r, s, e, towards) => {
    const gaps = [12, 3, 6, 9].map((clock) => exactGap(r + s, r, e, clock, towards));
    const { offset, direction, directionUncertainty, meanGap } = offsetOf(gaps, { uncertainties: { clockGaps: mm(0.001) } });
    expect(inUnit("length", offset.mean, "mm")).toBeCloseTo(e, 9);
    const apart = Math.abs((direction ?? Number.NaN) - towards);
    expect(Math.min(apart, 12 - apart)).toBeLessThan(1e-7);
    expect(directionUncertainty).toBeGreaterThan(0);
    // The mean of four gaps falls short of the section by no more than e²/2R.
    const short = s - inUnit("length", meanGap.mean, "mm");
    expect(short).toBeGreaterThan(-1e-9);
    expect(short).toBeLessThan((e * e) / (2 * (r + s)) + 1e-9);
  },
);

property(
  "turning the survey by three hours turns the direction by three hours",
  [fc.tuple(...Array.from({ length: 4 }, () => fc.integer({ min: 800, max: 1200 })))],
  (hundredths) => {
    const gaps = hundredths.map((value) => value / 100);
    const one = offsetOf(gaps);
    const turned = offsetOf([...gaps.slice(-1), ...gaps.slice(0, 3)]);
    expect(turned.offset.mean).toBeCloseTo(one.offset.mean, 12);
    expect(turned.direction === undefined).toBe(one.direction === undefined);
    if (one.direction === undefined || turned.direction === undefined) return;
    const apart = (turned.direction - one.direction - 3 + 24) % 12;
    expect(Math.min(apart, 12 - apart)).toBeLessThan(1e-6);
  },
);

// First-order propagation by hand: each half-difference of two gaps has u/√2, their mean of four u/2; a direction has that over the offset, in radians.
test("the uncertainty of offset, mean gap and direction follows from that of one gap", () => {
  const { offset, meanGap, directionUncertainty } = offsetOf([10.3, 10, 9.7, 10], { uncertainties: { clockGaps: mm(0.02) } });
  expect(inUnit("length", offset.u, "mm")).toBeCloseTo(0.02 / Math.sqrt(2), 12);
  expect(inUnit("length", meanGap.u, "mm")).toBeCloseTo(0.01, 12);
  expect(directionUncertainty).toBeCloseTo(((0.02 / Math.sqrt(2) / 0.3) * 6) / Math.PI, 9);
});

test("whether gaps and diameters agree is judged by both their uncertainties", () => {
  const of = (gap: number, section: number) =>
    offsetOf([gap, gap, gap, gap], { section: mm(10), uncertainties: { clockGaps: mm(0.04), section: mm(section) } }).verdicts.find(
      (one) => one.id === "gap-agreement",
    );
  // Mean of four gaps 0.02 mm, section 0.05 mm: together 0.0539 mm, twice that 0.1077 mm.
  expect(of(10.1, 0.05)).toMatchObject({ verdict: "good", decidedBy: "own-check", required: false, limits: [], advice: [] });
  expect(of(10.12, 0.05)?.verdict).toBe("attend");
  const { measured } = of(10.1, 0.05) ?? {};
  expect(measured?.unit).toBe("m");
  expect(inUnit("length", measured?.value as Length, "mm")).toBeCloseTo(0.1, 9);
  expect(inUnit("length", measured?.standardUncertainty as Length, "mm")).toBeCloseTo(Math.hypot(0.02, 0.05), 9);
});

test("more careful gaps make the offset surer, the direction too", () => {
  const rough = offsetOf([10.3, 10, 9.7, 10]);
  const fine = offsetOf([10.3, 10, 9.7, 10], { uncertainties: { clockGaps: 1e-6 as Length } });
  expect(fine.offset.u).toBeLessThan(rough.offset.u);
  expect(fine.directionUncertainty ?? 1).toBeLessThan(rough.directionUncertainty ?? 0);
});
