import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type LanternLimit, lanternLimit } from "./lantern-limit.ts";
import { lanternTrack } from "./lantern-track.ts";

const mm = (value: number) => quantity("length", value, "mm");
const inMm = (value: Length | undefined) => (value === undefined ? Number.NaN : inUnit("length", value, "mm"));

const drawn = {
  ringsThroatSide: 2,
  ringsGlandSide: 3,
  ringHeight: mm(12.5),
  lanternWidth: mm(16),
  window: mm(12),
  portFromThroat: mm(31),
  portDiameter: mm(6),
  glandGap: mm(16.5),
};

function limitOf(question: Parameters<typeof lanternLimit>[0]): LanternLimit {
  const answer = lanternLimit(question);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

test("the drawn box: the port starts to close at a gland gap of 0 to 8 mm, so repack when an 8 mm drill no longer goes in; ring 3 closes it", () => {
  const limit = limitOf(drawn);
  expect(Math.round(inMm(limit.gap?.low))).toBe(0);
  expect(Math.round(inMm(limit.gap?.high))).toBe(8);
  expect(inMm(limit.repackGap)).toBe(8);
  expect(limit.closedBy).toBe(3);
});

const spreads = {
  portFromThroatUncertainty: mm(0.5),
  portDiameterUncertainty: mm(0.15),
  windowUncertainty: mm(0.1),
  lanternWidthUncertainty: mm(0.1),
  ringHeightUncertainty: mm(0.15),
  shareUncertainty: 0.1,
  glandGapUncertainty: mm(0.2),
};

/** Movement at which the port begins to close, from the track, with a share of our choosing through the gland-side count. */
function closing(over: Partial<typeof drawn> = {}): number {
  const track = lanternTrack({ ...drawn, ...over, gapTravel: mm(10) });
  return track.ok ? (track.value.opensUntil ?? Number.NaN) : Number.NaN;
}

test("the uncertainty is what nudging each input in turn adds up to (JCGM 100:2008, 5.1.2 and 5.1.3)", () => {
  const step = mm(0.001);
  const names = ["portFromThroat", "portDiameter", "window", "lanternWidth", "ringHeight"] as const;
  const parts = names.map((name) => {
    const slope = (closing({ [name]: drawn[name] + step }) - closing({ [name]: drawn[name] - step })) / (2 * step);
    return slope * spreads[`${name}Uncertainty`];
  });
  // The movement goes with one over the share, so a tenth more share is a tenth of the movement.
  const limit = limitOf({ ...drawn, ...spreads });
  expect(limit.movement?.u).toBeCloseTo(Math.hypot(...parts, 0.1 * closing()), 7);
});

test("a gap worked out from nose and rings does not carry the error of the rings' height, for it is in both", () => {
  // Gap left when the port closes, with the gap as nose less entry, from the two chains of lengths.
  const left = (height: number) => {
    const gap = 30 - (92 - 5 * height - 16);
    return gap - (2 * height + 8 - 31 + 3) / 0.4;
  };
  expect(left(12.6)).toBeCloseTo(left(12.4), 9);
  const worked = limitOf({ ...drawn, ...spreads, ringHeightUncertainty: mm(1), gapWorkedOut: true });
  const none = limitOf({ ...drawn, ...spreads, ringHeightUncertainty: mm(0) });
  expect(worked.gap?.high).toBeCloseTo(none.gap?.high ?? 0, 12);
});

const sizes = fc.record({
  place: fc.double({ min: 20, max: 45, noNaN: true }).map(mm),
  gap: fc.double({ min: 0, max: 40, noNaN: true }).map(mm),
  below: fc.integer({ min: 0, max: 5 }),
  above: fc.integer({ min: 0, max: 5 }),
});

property(
  "the repack gap is whole millimetres, never below the careful end, never a millimetre above it",
  [sizes],
  ({ place, gap, below, above }) => {
    if (below + above === 0) return;
    const limit = limitOf({ ...drawn, ringsThroatSide: below, ringsGlandSide: above, portFromThroat: place, glandGap: gap });
    if (!limit.limits) {
      expect(limit.repackGap).toBeUndefined();
      return;
    }
    const repack = inMm(limit.repackGap);
    expect(Math.abs(repack - Math.round(repack))).toBeLessThan(1e-9);
    expect(repack).toBeGreaterThanOrEqual(inMm(limit.gap?.high) - 1e-5);
    expect(repack).toBeLessThan(inMm(limit.gap?.high) + 1);
    expect(limit.gap?.low ?? 0).toBeLessThanOrEqual(limit.gap?.high ?? 0);
    expect(limit.gap?.high ?? 0).toBeLessThanOrEqual(gap);
    if (limit.shutGap) expect(limit.shutGap.low).toBeLessThanOrEqual(limit.gap?.low ?? 0);
  },
);

property(
  "the less is known, the earlier the repack",
  [fc.double({ min: 0, max: 2, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true })],
  (one, other) => {
    const at = (u: number) => limitOf({ ...drawn, ...spreads, portFromThroatUncertainty: mm(u) }).repackGap ?? 0;
    if (one <= other) expect(at(one)).toBeLessThanOrEqual(at(other));
    else expect(at(one)).toBeGreaterThanOrEqual(at(other));
  },
);

test("known exactly, the band closes on the gap of the track: 16.5 less 12.5", () => {
  const exact = Object.fromEntries(Object.keys(spreads).map((name) => [name, 0]));
  const limit = limitOf({ ...drawn, ...exact });
  expect(inMm(limit.gap?.low)).toBeCloseTo(4, 9);
  expect(inMm(limit.gap?.high)).toBeCloseTo(4, 9);
  expect(inMm(limit.repackGap)).toBe(4);
});

test("weighted by stress the port closes later: the late end takes that in, the careful end stays", () => {
  const weighted = limitOf({ ...drawn, portFromThroat: mm(33), shaft: mm(50), bore: mm(75), frictionBore: 0.2, ratio: 0.8 });
  const plain = limitOf({ ...drawn, portFromThroat: mm(33) });
  expect(weighted.gap?.high).toBe(plain.gap?.high);
  expect(weighted.gap?.low ?? 0).toBeLessThan(plain.gap?.low ?? 0);
});

test("a lantern ring that never closes its port sets no limit, and the reply says so", () => {
  const answer = lanternLimit({ ...drawn, portFromThroat: mm(31), glandGap: mm(5) });
  expect(answer).toMatchObject({ ok: true, value: { limits: false, repackGap: undefined } });
  expect(answer.ok && answer.warnings.map(({ says }) => says.id)).toEqual(["lantern-does-not-limit"]);
});

test("a port that may close with the first push is said so instead of printing a gap that is always passed", () => {
  const answer = lanternLimit({ ...drawn, portFromThroat: mm(35.9) });
  expect(answer.ok && answer.warnings.map(({ says }) => says.id)).toContain("lantern-may-close-at-once");
});

test("without a gland gap there is a movement to count on, and no gap to print", () => {
  const { glandGap: _, ...unknown } = drawn;
  const limit = limitOf(unknown);
  expect(inMm(limit.movement?.mean)).toBeCloseTo(12.5, 9);
  expect(limit.carefulMovement).toBeLessThan(limit.movement?.mean ?? 0);
  expect(limit.repackGap).toBeUndefined();
});

test("no rings below: it stands still and limits nothing", () => {
  expect(limitOf({ ...drawn, ringsThroatSide: 0, portFromThroat: mm(8) })).toMatchObject({ limits: false, share: 0 });
});

test("uncertainties below none or not numbers are refused by name", () => {
  for (const [name, value] of [
    ["portFromThroatUncertainty", -1],
    ["shareUncertainty", 2],
    ["glandGapUncertainty", Number.NaN],
    ["glandGap", -0.001],
  ] as const) {
    expect(lanternLimit({ ...drawn, [name]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input: name } });
  }
});
