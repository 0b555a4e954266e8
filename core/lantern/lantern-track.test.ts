import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type LanternTrack, lanternTrack } from "./lantern-track.ts";

const mm = (value: number) => quantity("length", value, "mm");
const inMm = (value: Length | undefined) => (value === undefined ? Number.NaN : inUnit("length", value, "mm"));

/** An invented box: shaft 50, bore 75, five rings of 12.5, lantern ring 16 with a window of 12, port of 6 at 31 from the throat. */
const drawn = {
  ringsThroatSide: 2,
  ringsGlandSide: 3,
  ringHeight: mm(12.5),
  lanternWidth: mm(16),
  window: mm(12),
  portFromThroat: mm(31),
  portDiameter: mm(6),
  gapTravel: mm(16.5),
};

function trackOf(question: Parameters<typeof lanternTrack>[0]): LanternTrack {
  const answer = lanternTrack(question);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

test("the drawn box: 2 mm to the gland, two fifths of the movement, open for 12.5 mm, ring 3 closes it", () => {
  const track = trackOf(drawn);
  expect(inMm(track.offsetAtStart)).toBeCloseTo(2, 9);
  expect(track.share).toBeCloseTo(0.4, 12);
  expect(inMm(track.opensUntil)).toBeCloseTo(12.5, 9);
  expect(inMm(track.shutAt)).toBeCloseTo(27.5, 9);
  expect(track).toMatchObject({ atStart: "open", atEnd: "part-closed", openThroughout: false, closedBy: 3 });
});

/** A stack of rings and a lantern ring as springs alike, walked in small steps: no share, no reach, only heights that are added up. */
function walk(q: typeof drawn, weights: readonly number[], steps: number) {
  const all = q.ringsThroatSide + q.ringsGlandSide;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const heights = Array.from({ length: all }, () => q.ringHeight as number);
  const dy = q.gapTravel / steps;
  const seen: { y: number; offset: number; covered: number }[] = [];
  for (let step = 0; step <= steps; step++) {
    let below = 0;
    for (const height of heights.slice(0, q.ringsThroatSide)) below += height;
    const [from, to] = [below + (q.lanternWidth - q.window) / 2, below + (q.lanternWidth + q.window) / 2];
    const [portFrom, portTo] = [q.portFromThroat - q.portDiameter / 2, q.portFromThroat + q.portDiameter / 2];
    const covered = Math.max(0, Math.min(to, portTo) - Math.max(from, portFrom)) / q.portDiameter;
    seen.push({ y: step * dy, offset: below + q.lanternWidth / 2 - q.portFromThroat, covered });
    for (const [ring, weight] of weights.entries()) heights[ring] = (heights[ring] ?? 0) - (dy * weight) / total;
  }
  return { seen, dy };
}

const box = fc.record({
  ringsThroatSide: fc.integer({ min: 1, max: 5 }),
  ringsGlandSide: fc.integer({ min: 1, max: 6 }),
  ringHeight: fc.double({ min: 4, max: 25, noNaN: true }).map(mm),
  lanternWidth: fc.double({ min: 8, max: 40, noNaN: true }).map(mm),
  land: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  place: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  portShare: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
  gapTravel: fc.double({ min: 1, max: 40, noNaN: true }).map(mm),
});

function boxOf({ land, place, portShare, ...q }: typeof box extends fc.Arbitrary<infer T> ? T : never): typeof drawn {
  const window = (q.lanternWidth * (1 - 2 * land)) as Length;
  const centre = q.ringsThroatSide * q.ringHeight + q.lanternWidth / 2;
  const portFromThroat = Math.max(0, centre - place * q.lanternWidth) as Length;
  return { ...q, window, portFromThroat, portDiameter: (portShare * window) as Length };
}

property("the port opens and closes where a stack of rings walked in small steps says so", [box], (drawnLike) => {
  const question = boxOf(drawnLike);
  const track = trackOf(question);
  const { seen, dy } = walk(question, Array(question.ringsThroatSide + question.ringsGlandSide).fill(1), 400);
  const whole = 1 - 1e-9;
  const first = seen[0];
  const last = seen[seen.length - 1];
  expect(first?.offset).toBeCloseTo(track.offsetAtStart, 9);
  expect(last?.offset).toBeCloseTo(track.offsetAtEnd, 9);
  expect(seen.every(({ covered }) => covered >= whole)).toBe(track.openThroughout);
  const between = (y: number) =>
    y >= (track.opensFrom ?? 0) && y <= (track.opensUntil ?? Infinity) && (track.atStart === "open" || track.offsetAtStart > 0);
  const near = (y: number, mark: number | undefined) => mark !== undefined && Math.abs(y - mark) <= dy;
  const wrong = seen.filter(({ y, covered }) => !near(y, track.opensUntil) && !near(y, track.opensFrom) && covered >= whole !== between(y));
  expect(wrong).toEqual([]);
  const beyond = seen.filter(({ y, covered }) => track.offsetAtStart >= 0 && y > (track.shutAt ?? Infinity) + dy && covered > 1e-9);
  expect(beyond).toEqual([]);
});

/** Axial stress down a stack by small steps of the force balance on one slice; the lantern ring takes nothing off it. */
function ringMeans(rings: number, height: number, d: number, bore: number, ratio: number, muShaft: number, muBore: number): number[] {
  const area = (Math.PI / 4) * (bore * bore - d * d);
  const slices = 4000;
  const dx = height / slices;
  let stress = 1;
  return Array.from({ length: rings }, () => {
    let sum = 0;
    for (let slice = 0; slice < slices; slice++) {
      const middle = stress - (dx / 2) * ((Math.PI * ratio * (muShaft * d + muBore * bore)) / area) * stress;
      sum += middle * dx;
      stress -= dx * ((Math.PI * ratio * (muShaft * d + muBore * bore)) / area) * middle;
    }
    return sum / height;
  });
}

test("weighted by stress the inner rings shorten less, by what a slice-by-slice balance of forces gives", () => {
  for (const turning of [false, true]) {
    const track = trackOf({ ...drawn, shaft: mm(50), bore: mm(75), ratio: 0.5, frictionShaft: 0.1, frictionBore: 0.1, turning });
    const means = ringMeans(5, 12.5, 50, 75, 0.5, turning ? 0 : 0.1, 0.1);
    const inner = means.slice(3).reduce((sum, mean) => sum + mean, 0);
    const all = means.reduce((sum, mean) => sum + mean, 0);
    expect(track.stressWeighted?.share).toBeCloseTo(inner / all, 6);
    expect(track.stressWeighted?.share).toBeLessThan(track.share);
    const gland = [...means].reverse();
    const { seen, dy } = walk({ ...drawn, gapTravel: mm(30) }, gland, 3000);
    const closes = seen.find(({ covered }) => covered < 1 - 1e-9);
    expect(Math.abs((closes?.y ?? 0) - (track.stressWeighted?.opensUntil ?? 0))).toBeLessThanOrEqual(2 * dy);
  }
});

test("without wall friction all rings shorten alike", () => {
  const track = trackOf({ ...drawn, shaft: mm(50), bore: mm(75), ratio: 0.5, frictionShaft: 0, frictionBore: 0 });
  expect(track.stressWeighted?.share).toBeCloseTo(track.share, 12);
});

test("the lantern ring shifts by what the rings on its throat side lose: count times height times part lost", () => {
  for (const [inner, height, part, shift] of [
    [2, 10, 0.15, 3],
    [3, 10, 0.2, 6],
    [3, 12.5, 0.25, 9.375],
  ] as const) {
    const gapTravel = mm((inner + 3) * height * part);
    const track = trackOf({ ...drawn, ringsThroatSide: inner, ringHeight: mm(height), gapTravel });
    expect(inMm((track.offsetAtStart - track.offsetAtEnd) as Length)).toBeCloseTo(shift, 9);
  }
});

property("mirrored, the lantern ring and the gland share the movement between them: the two shares add up to one", [box], (drawnLike) => {
  const question = boxOf(drawnLike);
  const mirrored = { ...question, ringsThroatSide: question.ringsGlandSide, ringsGlandSide: question.ringsThroatSide };
  expect(trackOf(question).share + trackOf(mirrored).share).toBeCloseTo(1, 12);
});

property(
  "a port nearer the throat stays open longer, and a longer travel never opens more",
  [box, fc.double({ min: 0.1, max: 2, noNaN: true })],
  (drawnLike, nearer) => {
    const question = boxOf(drawnLike);
    if (question.portFromThroat < mm(nearer)) return;
    const track = trackOf(question);
    const moved = trackOf({ ...question, portFromThroat: (question.portFromThroat - mm(nearer)) as Length });
    expect(moved.opensUntil ?? 0).toBeGreaterThanOrEqual(track.opensUntil ?? 0);
    const further = trackOf({ ...question, gapTravel: (2 * question.gapTravel) as Length });
    if (further.openThroughout) expect(track.openThroughout).toBe(true);
  },
);

test("a port that is not open at finger-tight is said to be so, on the side where the lantern ring is off", () => {
  const warned = (portFromThroat: number) => {
    const answer = lanternTrack({ ...drawn, portFromThroat: mm(portFromThroat) });
    return answer.ok ? [answer.value.atStart, answer.warnings[0]?.says.id] : [];
  };
  expect(warned(29)).toEqual(["part-closed", "lantern-starts-towards-gland"]);
  expect(warned(20)).toEqual(["shut", "lantern-starts-towards-gland"]);
  expect(warned(37)).toEqual(["part-closed", "lantern-starts-towards-throat"]);
  expect(warned(45)).toEqual(["shut", "lantern-starts-towards-throat"]);
  expect(trackOf({ ...drawn, portFromThroat: mm(37) }).opensUntil).toBe(0);
});

test("with no rings below it the lantern ring stays where it is, and nothing closes the port", () => {
  const answer = lanternTrack({ ...drawn, ringsThroatSide: 0, ringsGlandSide: 5, portFromThroat: mm(8) });
  expect(answer).toMatchObject({ ok: true, value: { share: 0, openThroughout: true, atEnd: "open" } });
  expect(answer.ok && answer.value.opensUntil).toBeUndefined();
  expect(answer.ok && answer.warnings.map(({ says }) => says.id)).toContain("lantern-does-not-move");
});

test("a bush below the rings moves the lantern ring by its length", () => {
  expect(inMm(trackOf({ ...drawn, belowRings: mm(4) }).offsetAtStart)).toBeCloseTo(6, 9);
});

test("a window narrower than the port is never open", () => {
  const answer = lanternTrack({ ...drawn, window: mm(5) });
  expect(answer.ok && answer.value.opensUntil).toBeUndefined();
  expect(answer).toMatchObject({ ok: true, value: { openThroughout: false } });
  expect(answer.ok && answer.warnings[0]?.says.id).toBe("lantern-window-narrower-than-port");
});

test("a travel that would eat a third of the rings and more is doubted", () => {
  const answer = lanternTrack({ ...drawn, gapTravel: mm(30) });
  expect(answer.ok && answer.warnings.map(({ says }) => says.id)).toContain("lantern-travel-beyond-rings");
});

test("sizes of nothing, a window wider than the ring, no rings at all and walls the wrong way round are refused by name", () => {
  const ask = (over: object) => lanternTrack({ ...drawn, ...over });
  for (const input of ["ringHeight", "lanternWidth", "window", "portDiameter"] as const) {
    expect(ask({ [input]: 0 })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
    expect(ask({ [input]: Number.NaN })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  }
  expect(ask({ portFromThroat: -1 })).toMatchObject({ ok: false, refusal: { input: "portFromThroat" } });
  expect(ask({ gapTravel: Infinity })).toMatchObject({ ok: false, refusal: { input: "gapTravel", given: "Infinity" } });
  expect(ask({ window: mm(17) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "window" } });
  expect(ask({ ringsThroatSide: 0, ringsGlandSide: 0 })).toMatchObject({ ok: false, refusal: { kind: "impossible" } });
  expect(ask({ shaft: mm(75), bore: mm(50) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore" } });
  expect(ask({ ratio: 2 })).toMatchObject({ ok: false, refusal: { input: "ratio" } });
});
