import { comparePlaces, type LanternLimit, lanternLimit } from "../lantern/index.ts";
import { type Length, quantity } from "../units/index.ts";
import { type Refused, rule, type Workings } from "../workings/index.ts";
import type { LanternToPlace } from "./lantern-survey.ts";
import type { RingHeight } from "./ring-height.ts";
import { length } from "./ring-section.ts";

/** Where the lantern ring goes in the set, and what its port allows. */
export interface LanternPlaced {
  readonly width: Length;
  readonly window: Length;
  readonly ringsThroatSide: number;
  readonly limit?: LanternLimit | undefined;
}

export interface SetAround {
  readonly rings: number;
  readonly height: RingHeight;
  /** Throat bush and spacer below ring 1. */
  readonly belowRings: Length;
  /** How far the gland can go before the lantern ring is looked at. */
  readonly travel?: Length | undefined;
  readonly glandGap?: Length | undefined;
  /** The gland gap was not measured but follows from nose and ring heights. */
  readonly gapWorkedOut: boolean;
}

const practiceRule = rule({
  id: "rings-below-lantern",
  symbol: "n_t",
  name: "ringsThroatSide",
  expression: "",
  unit: "1",
  inputs: [],
  citation: { source: "mackay-2004", at: "6.2: 2 to 3 rings from the bottom" },
  assumed: { min: 2, max: 3 },
});

const bestRule = rule({
  id: "rings-below-lantern-by-port",
  symbol: "n_t",
  name: "ringsThroatSide",
  expression: "the count that keeps the port open longest; among equals 2 to 3",
  unit: "1",
  inputs: [
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "x", name: "portFromThroat", unit: "m" },
  ],
  citation: { source: "mackay-2004", at: "6.2 for the 2 to 3; the comparison is geometry" },
});

const shiftedSpacerRule = rule({
  id: "spacer-to-port",
  symbol: "p",
  name: "spacer",
  expression: "x − b − n_t · h − w / 2 + f · y / 2, whole millimetres",
  unit: "m",
  inputs: [
    { symbol: "x", name: "portFromThroat", unit: "m" },
    { symbol: "b", name: "throatBush", unit: "m" },
    { symbol: "n_t", name: "ringsThroatSide", unit: "1" },
    { symbol: "h", name: "ringHeight", unit: "m" },
    { symbol: "w", name: "lanternWidth", unit: "m" },
  ],
  citation: { source: "geometry", at: "spacer that sets the lantern ring half its coming movement outward of the port" },
});

const millimetre = quantity("length", 1, "mm");

/**
 * The spacer of a deep box, shortened where that lets the gland use more of
 * its travel with the port open.
 */
export function spacerToPort(
  work: Workings,
  lantern: LanternToPlace,
  around: (spacer: Length) => SetAround,
  throatBush: Length,
  most: Length,
): Length {
  const { port, width } = lantern;
  if (!port || most <= 0) return most;
  const usable = (spacer: Length) => best(lantern, port, around(spacer))?.openFor ?? 0;
  const full = around(most);
  let chosen = { spacer: most, below: 0, usable: usable(most) };
  for (const below of [2, 3, ...Array.from({ length: full.rings }, (_, k) => k + 1)]) {
    if (below >= full.rings) continue;
    const spacer = idealSpacer(lantern, port, full, throatBush, below);
    if (spacer < 0 || spacer > most) continue;
    const found = usable(spacer);
    if (found > chosen.usable + millimetre) chosen = { spacer, below, usable: found };
  }
  if (chosen.below === 0) return most;
  return work.step(shiftedSpacerRule, [port.fromThroat, throatBush, chosen.below, full.height.height, width], chosen.spacer);
}

/** Spacer that sets the lantern ring outward of the port by half of what it will move, in whole millimetres. */
function idealSpacer(
  { width, window }: LanternToPlace,
  port: NonNullable<LanternToPlace["port"]>,
  { rings, height, travel = 0 as Length }: SetAround,
  throatBush: Length,
  below: number,
): Length {
  const shift = Math.min(((below / rings) * travel) / 2, Math.max(0, (window - port.diameter) / 2));
  return quantity("length", Math.round((port.fromThroat - throatBush - below * height.height - width / 2 + shift) / millimetre), "mm");
}

function best(lantern: LanternToPlace, port: NonNullable<LanternToPlace["port"]>, { rings, height, belowRings, travel }: SetAround) {
  const { places, best: at } = comparePlaces({
    rings,
    ringHeight: height.height,
    lanternWidth: lantern.width,
    window: lantern.window,
    portFromThroat: port.fromThroat,
    portDiameter: port.diameter,
    belowRings,
    ...(travel === undefined ? {} : { gapTravel: travel }),
  });
  return places[at];
}

/** Places the lantern ring: as settled, else where the port stays open longest, else by practice. */
export function placeLantern(
  work: Workings,
  lantern: LanternToPlace,
  around: SetAround,
  settled: number | undefined,
): LanternPlaced | Refused {
  const { width, window, port } = lantern;
  const { rings, height, belowRings, glandGap } = around;
  if (!port) {
    const taken = settled ?? work.assume(practiceRule, Math.min(2, Math.max(0, rings - 1)));
    return { width, window, ringsThroatSide: Math.min(rings, taken) };
  }
  const place = best(lantern, port, around);
  const ringsThroatSide = settled ?? work.step(bestRule, [rings, port.fromThroat], place?.ringsThroatSide ?? 0);
  if (settled === undefined && place && !place.openAtStart) {
    work.warn({
      kind: "limit",
      input: "portFromThroat",
      given: port.fromThroat,
      says: { id: "rings-port-out-of-reach", with: { rings: ringsThroatSide, offset: length(Math.abs(place.offsetAtStart)) } },
    });
  }
  const limit = lanternLimit({
    ringsThroatSide,
    ringsGlandSide: rings - ringsThroatSide,
    ringHeight: height.height,
    ringHeightUncertainty: height.uncertainty,
    lanternWidth: width,
    window,
    portFromThroat: port.fromThroat,
    portDiameter: port.diameter,
    belowRings,
    ...(glandGap === undefined ? {} : { glandGap, gapWorkedOut: around.gapWorkedOut }),
  });
  if (!limit.ok) return limit;
  return { width, window, ringsThroatSide, limit: work.take(limit) };
}
