import type { Length } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";
import { movementTo } from "./lantern-track.ts";
import { type LanternAndPort, length, offsetOf, openingAt, refusePort, stepOffset } from "./port.ts";

/** One count of rings between throat and lantern ring, and what it does to the port. */
export interface Place {
  readonly ringsThroatSide: number;
  readonly offsetAtStart: Length;
  readonly openAtStart: boolean;
  /** Part of the gland travel over which the port is open; all of what is known of it when the travel is not given. */
  readonly openFor: Length;
  readonly openThroughout: boolean;
}

export interface LanternPlace {
  readonly best: number;
  readonly places: readonly Place[];
}

export type PlaceQuestion = Omit<LanternAndPort, "ringsThroatSide" | "ringsGlandSide"> & {
  readonly rings: number;
  readonly gapTravel?: Length;
};

/** The counts that practice begins with. */
const usual = { fewest: 2, most: 3 } as const;

const openForRule = rule({
  id: "lantern-open-for",
  symbol: "y_o",
  expression: "min((o + a) / f, y); 0 when not open at finger-tight",
  unit: "m",
  inputs: [
    { symbol: "o", name: "lantern-offset", unit: "m" },
    { symbol: "n_t", name: "ringsThroatSide", unit: "1" },
    { symbol: "n", name: "rings", unit: "1" },
  ],
  citation: { source: "mechanics", at: "f = n_t / n, a = (window − port) / 2, y the gland travel or, not known, the height of the rings" },
});

const bestRule = rule({
  id: "lantern-best-place",
  symbol: "n_t",
  name: "ringsThroatSide",
  expression: "longest open over the travel; among equals 2 to 3 rings, then nearest the port",
  unit: "1",
  inputs: [
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "o", name: "lantern-offset", unit: "m" },
    { symbol: "y", name: "lantern-opens-until", unit: "m" },
  ],
  citation: { source: "mackay-2004", at: "6.2: over the flush port, normally 2 to 3 rings from the bottom" },
});

/**
 * Every count of rings below the lantern ring with what it does to the port,
 * and the best of them: `lanternPlace` without workings and checks, for those
 * who have to compare many.
 *
 * Units: lengths m.
 * Range: as `lanternPlace`, not checked.
 * Source: geometry.
 * @example comparePlaces(question).best // 2
 */
export function comparePlaces(given: PlaceQuestion): LanternPlace {
  const { rings, window, portDiameter, gapTravel } = given;
  const open = (window - portDiameter) / 2;
  const shut = (window + portDiameter) / 2;
  const { ringHeight, lanternWidth, portFromThroat, belowRings = 0 as Length } = given;
  const lowest = offsetOf({ ringsThroatSide: 0, ringHeight, lanternWidth, portFromThroat, belowRings });
  const reach = { open: open as Length, shut: shut as Length };
  const places: Place[] = [];
  let best: Place | undefined;
  for (let ringsThroatSide = 0; ringsThroatSide <= rings; ringsThroatSide++) {
    const offset = (lowest + ringsThroatSide * given.ringHeight) as Length;
    const share = ringsThroatSide / rings;
    const openAtStart = openingAt(offset, reach) === "open";
    const until = share > 0 ? movementTo(offset, open, share) : Infinity;
    const openFor = (openAtStart ? Math.min(until, gapTravel ?? rings * given.ringHeight) : 0) as Length;
    const place: Place = {
      ringsThroatSide,
      offsetAtStart: offset,
      openAtStart,
      openFor,
      openThroughout: openAtStart && gapTravel !== undefined && openFor >= gapTravel,
    };
    places.push(place);
    if (best === undefined || better(place, best, rings)) best = place;
  }
  return { best: best?.ringsThroatSide ?? 0, places };
}

function better(one: Place, other: Place, rings: number): boolean {
  // With no ring on the gland side only the follower would hold the flush back.
  const held = (place: Place) => Number(place.openAtStart && place.ringsThroatSide < rings);
  if (held(one) !== held(other)) return held(one) > held(other);
  if (one.openFor !== other.openFor) return one.openFor > other.openFor;
  const habit = Number(isUsual(one)) - Number(isUsual(other));
  if (one.openFor > 0 && habit !== 0) return habit > 0;
  return Math.abs(one.offsetAtStart) < Math.abs(other.offsetAtStart);
}

function isUsual({ ringsThroatSide }: Place): boolean {
  return ringsThroatSide >= usual.fewest && ringsThroatSide <= usual.most;
}

/**
 * How many rings belong between throat and lantern ring: the count that keeps
 * the flush port open over the longest part of the gland travel; among equals
 * the 2 to 3 of practice.
 *
 *   o = b + n_t · h + w / 2 − x;  open while |o − f · y| ≤ (window − port) / 2
 *
 * Units: lengths m.
 * Range: rings 1 to 100, sizes as `lanternTrack`; refused outside. Flagged: no count brings the window over the port, or none keeps it open over the travel.
 * Source: geometry; Mackay 2004, 6.2 for the usual 2 to 3; MIL-P-18472G for the demand that it stays open.
 * @example lanternPlace({ rings: 5, ringHeight: quantity("length", 12.5, "mm"), lanternWidth: quantity("length", 16, "mm"), window: quantity("length", 12, "mm"), portFromThroat: quantity("length", 31, "mm"), portDiameter: quantity("length", 6, "mm"), gapTravel: quantity("length", 12, "mm") }) // best 2
 */
export function lanternPlace(given: PlaceQuestion): Answer<LanternPlace> {
  const { rings, gapTravel } = given;
  const refused =
    outside([
      ["rings", rings, { min: 1, max: 100 }, "1"],
      ["gapTravel", gapTravel ?? 0, { min: 0, max: 10 }, "m"],
    ]) ?? refusePort({ ...given, ringsThroatSide: rings, ringsGlandSide: 0 });
  if (refused) return refused;
  const work = begin();
  const found = comparePlaces(given);
  for (const place of found.places) {
    const at = { ...given, ringsThroatSide: place.ringsThroatSide, ringsGlandSide: rings - place.ringsThroatSide };
    work.step(openForRule, [stepOffset(work, at), place.ringsThroatSide, rings], place.openFor);
  }
  const best = found.places[found.best];
  if (!best) return work.found(found);
  work.step(bestRule, [rings, best.offsetAtStart, best.openFor], found.best);
  if (!best.openAtStart) {
    work.warn({
      kind: "limit",
      input: "portFromThroat",
      given: given.portFromThroat,
      says: { id: "lantern-no-place", with: { rings: found.best, offset: length(Math.abs(best.offsetAtStart)) } },
    });
  } else if (gapTravel !== undefined && !best.openThroughout) {
    work.warn({
      kind: "limit",
      input: "gapTravel",
      says: { id: "lantern-place-not-throughout", with: { rings: found.best, movement: length(best.openFor) } },
      citation: { source: "mil-p-18472g", at: "3.3.9" },
    });
  }
  return work.found(found);
}
