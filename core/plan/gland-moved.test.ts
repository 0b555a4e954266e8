import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { lanternTrack, openings } from "../lantern/index.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { answerOf, glandMoved, glandTravel, type Plan, plan, type Survey } from "./index.ts";

const facts = readAllFacts();
const mm = (value: number) => quantity("length", value, "mm");
const inMm = (value: Length | undefined) => (value === undefined ? Number.NaN : inUnit("length", value, "mm"));

/** An invented box: shaft 50, bore 75, five rings of 12.5 seated without loss, lantern ring 16 with a window of 12, port of 6 at 31 from the throat. */
const drawn: Survey = {
  motion: "turning",
  shaft: { readings: [mm(50)] },
  bore: { readings: [mm(75)] },
  depth: { readings: [mm(92)] },
  lantern: { wanted: true, width: mm(16), window: mm(12), ringsThroatSide: 2 },
  port: { fromFace: mm(61), diameter: mm(6) },
  follower: { nose: mm(30) },
  studs: { count: 2, thread: "M12", threadLeft: mm(25) },
  set: { rings: 5, section: mm(12.5) },
};

function planned(of: Survey): Plan {
  const found = plan(of, facts);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found.value;
}

test("the gland goes until the least of gap, nose and thread, and that is named; the lantern ring does not stop it", () => {
  // Nose 30 less an entry of 92 - 5 x 12.5 - 16 = 13.5 leaves 16.5 where rings lose nothing in seating, less where they do.
  const byNose = glandTravel(planned(drawn));
  expect(byNose?.by).toBe("nose");
  expect(inMm(byNose?.end)).toBeCloseTo(inMm(answerOf(planned(drawn).rings.set)?.glandGap), 9);
  expect(glandTravel(planned({ ...drawn, follower: { nose: mm(30), gap: mm(9) } }))).toMatchObject({ by: "gland-gap", end: mm(9) });
  expect(glandTravel(planned({ ...drawn, studs: { threadLeft: mm(4) } }))).toMatchObject({ by: "thread", end: mm(4) });
});

test("one flat of a nut is a sixth of the pitch, for a stem as for a pump: M12 has 1.75 mm (ISO 261)", () => {
  expect(inMm(glandTravel(planned(drawn))?.flat)).toBeCloseTo(1.75 / 6, 9);
  expect(inMm(glandTravel(planned({ ...drawn, motion: "rising-stem" }))?.flat)).toBeCloseTo(1.75 / 6, 9);
  expect(glandTravel(planned({ ...drawn, studs: {} }))?.flat).toBeUndefined();
});

test("where nothing was measured that would stop it, the rings do, at 35 % of their height", () => {
  const { follower: _, studs: __, ...rest } = drawn;
  const travel = glandTravel(planned(rest));
  const heights = answerOf(planned(rest).rings.set)?.rings.map(({ height }) => inMm(height)) ?? [];
  expect(travel?.by).toBe("rings");
  expect(inMm(travel?.end)).toBeCloseTo(0.35 * heights.reduce((sum, height) => sum + height, 0), 9);
});

test("movement and gap left add up to the gap at finger-tight, for the gland and for the port that closes", () => {
  const whole = planned(drawn);
  const limit = answerOf(whole.rings.set)?.lantern?.limit;
  const gap = inMm(answerOf(whole.rings.set)?.glandGap);
  const travel = glandTravel(whole);
  expect(inMm(travel?.closes?.low) + inMm(limit?.gap?.high)).toBeCloseTo(gap, 9);
  expect(inMm(travel?.repack) + inMm(limit?.repackGap)).toBeCloseTo(gap, 9);
  expect(inMm(travel?.closes?.high)).toBeLessThanOrEqual(inMm(travel?.end));
  expect(inMm(glandMoved(whole, mm(3))?.gap)).toBeCloseTo(gap - 3, 9);
});

property(
  "after any movement the port stands as at the end of a travel of that length",
  [fc.integer({ min: 0, max: 5 }), fc.double({ min: 20, max: 45, noNaN: true }), fc.double({ min: 0, max: 16, noNaN: true })],
  (ringsThroatSide, place, gland) => {
    const whole = planned({ ...drawn, lantern: { ...drawn.lantern, ringsThroatSide }, port: { fromThroat: mm(place), diameter: mm(6) } });
    const set = answerOf(whole.rings.set);
    const after = glandMoved(whole, mm(gland));
    if (!set?.lantern || !after?.port) return;
    const track = lanternTrack({
      ringsThroatSide,
      ringsGlandSide: 5 - ringsThroatSide,
      ringHeight: set.ringHeight.mean,
      lanternWidth: mm(16),
      window: mm(12),
      portFromThroat: mm(place),
      portDiameter: mm(6),
      belowRings: set.rings[0]?.from ?? mm(0),
      gapTravel: mm(gland),
    });
    if (!track.ok || ringsThroatSide === 0) return;
    expect(inMm(after.port.offset)).toBeCloseTo(inMm(track.value.offsetAtEnd), 9);
    expect(after.port.opening).toBe(track.value.atEnd);
    expect(after.share).toBeCloseTo(ringsThroatSide / 5, 12);
  },
);

test("the further the gland goes, the more the port is closed: open, part closed, shut, never back", () => {
  const whole = planned(drawn);
  const seen = Array.from({ length: 400 }, (_, i) => glandMoved(whole, mm(i / 8))?.port?.opening ?? "open");
  expect(new Set(seen)).toEqual(new Set(openings));
  expect([...seen].sort((one, other) => openings.indexOf(one) - openings.indexOf(other))).toEqual(seen);
});

test("without a lantern ring nothing is carried along, and no port is spoken of", () => {
  const { lantern: _, port: __, ...rest } = drawn;
  expect(glandMoved(planned(rest), mm(2))).toMatchObject({ share: 0 });
  expect(glandMoved(planned(rest), mm(2))?.port).toBeUndefined();
  expect(glandTravel(planned(rest))?.closes).toBeUndefined();
});
