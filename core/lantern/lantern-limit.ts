import { type Length, quantity } from "../units/index.ts";
import {
  type Answer,
  type Band,
  band,
  begin,
  notWithin,
  type Range,
  type Refused,
  type Uncertain,
  uncertain,
  type Workings,
} from "../workings/index.ts";
import { closingRing, movementTo, warnAtStart } from "./lantern-track.ts";
import {
  carefulGapRule,
  carefulRule,
  closingRule,
  glandGapTaken,
  heightTaken,
  lanternWidthTaken,
  lateGapRule,
  portDiameterTaken,
  portFromThroatTaken,
  repackGapRule,
  shareTaken,
  shuttingRule,
  windowTaken,
} from "./limit-rules.ts";
import { type LanternAndPort, length, reach, refusePort } from "./port.ts";
import { type FurtherPush, refuseNoRings, refusePush, uniformShare, weightedShare } from "./share.ts";

/** Standard uncertainties of what was measured; each is taken from practice when left out. */
export interface LanternUncertainties {
  readonly portFromThroatUncertainty?: Length;
  readonly portDiameterUncertainty?: Length;
  readonly windowUncertainty?: Length;
  readonly lanternWidthUncertainty?: Length;
  readonly ringHeightUncertainty?: Length;
  readonly glandGapUncertainty?: Length;
  /** Standard uncertainty of the share, as a part of it. */
  readonly shareUncertainty?: number;
}

export interface LanternLimit {
  /** Whether the port may begin to close before the flange meets the box. */
  readonly limits: boolean;
  /** Lantern ring from port at finger-tight; positive towards the gland. */
  readonly offsetAtStart: Length;
  readonly share: number;
  /** Gland movement from finger-tight at which the port begins to close; none when the lantern ring stands still or its window is too narrow. */
  readonly movement?: Uncertain<Length> | undefined;
  /** The gland movement to count on: the careful end. */
  readonly carefulMovement?: Length | undefined;
  /** Gland gap left when the port begins to close. */
  readonly gap?: Band<Length> | undefined;
  /** Gland gap left when the port is shut; none when it never is. */
  readonly shutGap?: Band<Length> | undefined;
  /** Whole millimetres: repack when a drill shank of this size no longer goes into the gland gap. */
  readonly repackGap?: Length | undefined;
  /** The ring that closes the port, numbered from the throat. */
  readonly closedBy?: number | undefined;
}

const millimetre = quantity("length", 1, "mm");
const coverage = 2;

/**
 * The gland gap at which the flush port begins to close and is shut, with the
 * uncertainty of port, lantern ring, ring height and share, and the careful
 * end of it as a go/no-go gap in whole millimetres.
 *
 *   y₂ = (o + (window − port) / 2) / f
 *   u² = (u_o² + u_a²) / f² + (y₂ · u_f / f)²;  careful: y₂ − 2 u
 *   gap left = g − y₂ ± 2 u_g,  u_g² = u² + u_gap²
 *
 * `gapWorkedOut` says that the gland gap was not measured but worked out from
 * the same ring height: then the error of the height is in both and cancels.
 *
 * Units: lengths m; shareUncertainty a part of the share.
 * Range: as `lanternTrack`; gland gap 0 to 1 m; uncertainties 0 to 0.1 m and 0 to 1; refused outside. Rounded up, never down.
 * Source: mechanics, derived here; JCGM 100:2008, 5.1.2 and 6.2; the repack gap is our own proposal.
 * @example lanternLimit({ ringsThroatSide: 2, ringsGlandSide: 3, ringHeight: quantity("length", 12.5, "mm"), lanternWidth: quantity("length", 16, "mm"), window: quantity("length", 12, "mm"), portFromThroat: quantity("length", 31, "mm"), portDiameter: quantity("length", 6, "mm"), glandGap: quantity("length", 16.5, "mm") }) // repack gap 8 mm, closed by ring 3
 */
export function lanternLimit(
  given: LanternAndPort & FurtherPush & LanternUncertainties & { readonly glandGap?: Length; readonly gapWorkedOut?: boolean },
): Answer<LanternLimit> {
  const { glandGap, ringsThroatSide, ringsGlandSide } = given;
  const refused =
    refusePort(given) ??
    refusePush(given) ??
    refuseNoRings(given) ??
    notWithin("glandGap", glandGap ?? 0, gaps, "m") ??
    refuseUncertainties(given);
  if (refused) return refused;
  const work = begin();
  const found = reach(work, given);
  const { offset, open, shut } = found;
  const share = uniformShare(work, given);
  const closedBy = closingRing(offset, ringsThroatSide, ringsGlandSide, share, found);
  warnAtStart(work, offset, found);
  if (open < 0) return work.found({ offsetAtStart: offset, share, limits: false });
  if (share === 0) {
    work.warn({ kind: "note", says: { id: "lantern-does-not-move" } });
    return work.found({ offsetAtStart: offset, share, limits: false, closedBy });
  }
  const spread = spreads(work, given);
  const at = (by: typeof closingRule, limit: Length): Uncertain<Length> => {
    const movement = movementTo(offset, limit, share);
    const u = Math.hypot(spread.place / share, movement * spread.share) as Length;
    return uncertain(work.step(by, [offset, limit, share], movement, u), u);
  };
  const movement = at(closingRule, open);
  const carefulMovement = work.step(
    carefulRule,
    [movement.mean, coverage, movement.u],
    Math.max(0, movement.mean - coverage * movement.u) as Length,
  );
  if (glandGap === undefined) {
    return work.found({ offsetAtStart: offset, share, limits: true, movement, carefulMovement, closedBy });
  }

  // A gap worked out from the height of the rings grows with them as the movement does, so that error cancels.
  const place = given.gapWorkedOut ? spread.fixed : spread.place;
  const gapError = given.glandGapUncertainty ?? work.assume(glandGapTaken, 0.2 * millimetre);
  const end = (by: typeof carefulGapRule, moved: number, sign: number): Length => {
    const u = Math.hypot(gapError, place / share, moved * spread.share);
    const left = Math.min(glandGap, Math.max(0, glandGap - moved + sign * coverage * u)) as Length;
    return work.step(by, [glandGap, moved, coverage, u], left);
  };
  const weighted = weightedShare(work, given, given);
  const latest = weighted === undefined ? movement.mean : Math.max(movement.mean, movementTo(offset, open, weighted));
  const carefulGap = end(carefulGapRule, movement.mean, 1);
  const shutting = at(shuttingRule, shut);
  const shutBand = band(end(lateGapRule, shutting.mean, -1), end(carefulGapRule, shutting.mean, 1));
  const limits = carefulGap > 0;
  const limit: LanternLimit = {
    offsetAtStart: offset,
    share,
    limits,
    movement,
    carefulMovement,
    gap: limits ? band(end(lateGapRule, latest, -1), carefulGap) : undefined,
    shutGap: shutBand.high > 0 ? shutBand : undefined,
    repackGap: limits ? work.step(repackGapRule, [carefulGap], upToMillimetre(carefulGap)) : undefined,
    closedBy,
  };
  say(work, limit, glandGap);
  return work.found(limit);
}

/** Whole millimetres, upwards; a millionth of a millimetre of rounding noise does not make another one. */
function upToMillimetre(gap: Length): Length {
  return quantity("length", Math.ceil(gap / millimetre - 1e-6), "mm");
}

const gaps: Range = { min: 0, max: 1 };
const errors: Range = { min: 0, max: 0.1 };
const shares: Range = { min: 0, max: 1 };
const lengthErrors = [
  "portFromThroatUncertainty",
  "portDiameterUncertainty",
  "windowUncertainty",
  "lanternWidthUncertainty",
  "ringHeightUncertainty",
  "glandGapUncertainty",
] as const satisfies readonly (keyof LanternUncertainties)[];

function refuseUncertainties(given: LanternUncertainties): Refused | undefined {
  for (const name of lengthErrors) {
    const value = given[name];
    const refused = value === undefined ? undefined : notWithin(name, value, errors, "m");
    if (refused) return refused;
  }
  return notWithin("shareUncertainty", given.shareUncertainty ?? 0, shares, "1");
}

/** Standard uncertainties: of offset plus reach, of the same without the rings' height, of the share as a part of it. */
interface Spread {
  readonly place: number;
  readonly fixed: number;
  readonly share: number;
}

function spreads(work: Workings, given: LanternAndPort & LanternUncertainties): Spread {
  const place = given.portFromThroatUncertainty ?? work.assume(portFromThroatTaken, 0.5 * millimetre);
  const port = given.portDiameterUncertainty ?? work.assume(portDiameterTaken, 0.15 * millimetre);
  const window = given.windowUncertainty ?? work.assume(windowTaken, 0.1 * millimetre);
  const width = given.lanternWidthUncertainty ?? work.assume(lanternWidthTaken, 0.1 * millimetre);
  const height = given.ringHeightUncertainty ?? work.assume(heightTaken, 0.0115) * given.ringHeight;
  const share = given.shareUncertainty ?? work.assume(shareTaken, 0.1);
  const fixed = Math.hypot(place, port / 2, window / 2, width / 2);
  return { place: Math.hypot(fixed, given.ringsThroatSide * height), fixed, share };
}

function say(work: Workings, { limits, repackGap, closedBy }: LanternLimit, glandGap: Length): void {
  if (!limits || repackGap === undefined) {
    work.warn({ kind: "note", says: { id: "lantern-does-not-limit" } });
    return;
  }
  if (repackGap >= glandGap) {
    work.warn({ kind: "limit", input: "portFromThroat", says: { id: "lantern-may-close-at-once", with: { gap: length(glandGap) } } });
    return;
  }
  const shown = { value: repackGap, kind: "length", decimals: 0 };
  work.warn({
    kind: "limit",
    says:
      closedBy === undefined
        ? { id: "lantern-repack", with: { gap: shown } }
        : { id: "lantern-repack-by-ring", with: { gap: shown, ring: closedBy } },
  });
}
