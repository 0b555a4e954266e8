import { mostLoss, type Opening, portAfter } from "../lantern/index.ts";
import type { Binding } from "../rings/index.ts";
import type { Length } from "../units/index.ts";
import type { Band } from "../workings/index.ts";
import { answerOf } from "./part.ts";
import type { Plan } from "./plan.ts";

/** The set once the gland has moved on from finger-tight. */
export interface GlandMoved {
  readonly gland: Length;
  /** Share of the movement that the lantern ring makes; none without one. */
  readonly share: number;
  /** Gland gap left, where it is known at finger-tight. */
  readonly gap?: Length;
  /** Where port and lantern ring are known: how the port stands, and the lantern ring from it, positive towards the gland. */
  readonly port?: { readonly opening: Opening; readonly offset: Length };
}

/** How far the gland can be taken, and what happens to the port on the way. Movements count from finger-tight. */
export interface GlandTravel {
  readonly end: Length;
  /** What ends it; `rings` where nothing was measured that would, or the rings give no more before that. */
  readonly by: Exclude<Binding, "lantern"> | "rings";
  /** One flat of every nut, where the thread is known: a sixth of its pitch. */
  readonly flat?: Length;
  /** The gland has to move this far before the port is open. */
  readonly opens?: Length;
  /** Where to repack, for the sake of the port: the careful end of where it begins to close, in whole millimetres of gap. */
  readonly repack?: Length;
  /** Where the port begins to close, as well as it is known. */
  readonly closes?: Band<Length>;
  /** Where the port is shut, as well as it is known. */
  readonly shuts?: Band<Length>;
}

/** Gap and nose may say the same; a millionth of a millimetre does not make the one the lesser. */
const rounding = 1e-9;

/**
 * How far the gland of a plan's set can move from finger-tight, what stops it,
 * and on which stretches of the way the flush port begins to close and is
 * shut. None when the set is not known.
 *
 *   movement = gland gap at finger-tight − gland gap left
 *
 * Units: m.
 * Range: any plan; nothing is refused. Stretches beyond the end of the travel are left out.
 * Source: definition; that rings give at most 35 % of their height: as `lanternTrack`.
 * @example glandTravel(plan)?.by // "gland-gap"
 */
export function glandTravel(plan: Plan): GlandTravel | undefined {
  const set = answerOf(plan.rings.set);
  if (!set) return undefined;
  let by: GlandTravel["by"] = "rings";
  let end = (mostLoss * set.rings.reduce((sum, { height }) => sum + height, 0)) as Length;
  for (const limit of set.limits) {
    if (limit.by === "lantern" || limit.travel >= end - rounding) continue;
    by = limit.by;
    end = limit.travel;
  }
  const repack = set.limits.find((limit) => limit.by === "lantern")?.travel;
  const { gap, shutGap } = set.lantern?.limit ?? {};
  const opens = answerOf(plan.rings.track)?.opensFrom;
  const closes = moved(set.glandGap, gap, end);
  const shuts = moved(set.glandGap, shutGap, end);
  const pitch = plan.load.thread?.pitch;
  return {
    end,
    by,
    ...(pitch === undefined ? {} : { flat: (pitch / 6) as Length }),
    ...(opens === undefined ? {} : { opens }),
    ...(repack === undefined || repack >= end ? {} : { repack }),
    ...(closes === undefined ? {} : { closes }),
    ...(shuts === undefined ? {} : { shuts }),
  };
}

/** The stretch of movement on which the gap left runs through a band, as far as the gland gets. */
function moved(atStart: Length | undefined, left: Band<Length> | undefined, end: Length): Band<Length> | undefined {
  if (atStart === undefined || left === undefined) return undefined;
  const [low, high] = [atStart - left.high, Math.min(end, atStart - left.low)];
  return low < end && low < high ? { low: low as Length, high: high as Length } : undefined;
}

/**
 * A plan's set with its gland moved on from finger-tight: what the lantern
 * ring makes of the movement, the gap that is left, and how the flush port
 * stands. None when the set is not known.
 *
 * Units: m; share 1.
 * Range: movements from 0 to the end of the travel, not checked.
 * Source: mechanics, as `lanternTrack`; all rings shorten alike.
 * @example glandMoved(plan, quantity("length", 3, "mm"))?.port?.opening // "open"
 */
export function glandMoved(plan: Plan, gland: Length): GlandMoved | undefined {
  const set = answerOf(plan.rings.set);
  if (!set) return undefined;
  const { lantern, glandGap } = set;
  const track = answerOf(plan.rings.track);
  const share = lantern ? (track?.share ?? lantern.afterRing / set.rings.length) : 0;
  const portDiameter = plan.survey.port?.diameter;
  return {
    gland,
    share,
    ...(glandGap === undefined ? {} : { gap: (glandGap - gland) as Length }),
    ...(lantern && track && portDiameter !== undefined
      ? { port: portAfter({ offsetAtStart: track.offsetAtStart, share, window: lantern.window, portDiameter }, gland) }
      : {}),
  };
}
