import { type GlandTravel, glandTravel, type Plan } from "@ringwright/core/plan";
import { type Length, quantity, type UnitSystem } from "@ringwright/core/units";
import { type BoxDrawing, roomToMove } from "@ringwright/drawings";

/** The way of the gland on screen: how far it goes, and how much one press of a button is. */
export interface Way extends Omit<GlandTravel, "by"> {
  /** What ends it; `drawn` where not enough was measured and the drawing ends it. */
  readonly by: GlandTravel["by"] | "drawn";
  /** A flat of every nut, or a little where the thread is not known. */
  readonly step: Length;
}

/** Rounding of a drawing in millimetres against core in metres. */
const rounding = 1e-9;

/** The way of a plan's gland in a drawing of its box; none where the set is not known or the gland can't move. */
export function wayOf(plan: Plan, drawn: BoxDrawing, system: UnitSystem): Way | undefined {
  const travel = glandTravel(plan);
  const room = roomToMove(drawn);
  const end = travel && (Math.min(travel.end, room) as Length);
  if (!travel || end === undefined || !(end > 0)) return undefined;
  const step = travel.flat ?? (system === "metric" ? quantity("length", 0.5, "mm") : quantity("length", 1 / 64, "in"));
  return { ...travel, end, by: room < travel.end - rounding ? "drawn" : travel.by, step };
}

/** A place on the way, never beyond either end of it. */
export function onWay({ end }: Way, gland: number): Length {
  return Math.min(end, Math.max(0, gland)) as Length;
}

/** Part of the way that is gone, 0 at finger-tight and 1 at the end. */
export function shareOf({ end }: Way, gland: Length): number {
  return gland / end;
}

/** Flats that every nut was turned, to the tenth; none where the thread is not known. */
export function flatsOf({ flat }: Way, gland: Length): number | undefined {
  return flat === undefined ? undefined : Math.round((10 * gland) / flat) / 10;
}

/** Where a key of the keyboard takes the gland; nothing for keys that do not move it. */
export function keyed(way: Way, gland: Length, key: string): Length | undefined {
  const by: Readonly<Record<string, number>> = {
    ArrowRight: gland + way.step,
    ArrowUp: gland + way.step,
    ArrowLeft: gland - way.step,
    ArrowDown: gland - way.step,
    PageUp: gland + 6 * way.step,
    PageDown: gland - 6 * way.step,
    Home: 0,
    End: way.end,
  };
  const to = Object.hasOwn(by, key) ? by[key] : undefined;
  return to === undefined ? undefined : onWay(way, to);
}

/** Part of the time of a glide that is over to part of its way: slow at both ends. */
export function glided(from: Length, to: Length, time: number): Length {
  const eased = time < 1 ? time * time * (3 - 2 * time) : 1;
  return (from + (to - from) * eased) as Length;
}
