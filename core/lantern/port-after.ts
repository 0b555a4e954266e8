import type { Length } from "../units/index.ts";
import { type Opening, openingAt, reachOf } from "./port.ts";

/** The lantern ring at finger-tight, and the port it should stay under. */
export interface LanternAtStart {
  /** Lantern ring from port at finger-tight; positive towards the gland. */
  readonly offsetAtStart: Length;
  /** Share of the gland's movement that the lantern ring makes. */
  readonly share: number;
  readonly window: Length;
  readonly portDiameter: Length;
}

/**
 * How the lantern ring stands to the flush port once the gland has moved on
 * from finger-tight: one place on the way that `lanternTrack` describes.
 *
 *   o(y) = o − f · y;  open while |o| ≤ (window − port) / 2, shut from |o| ≥ (window + port) / 2
 *
 * Units: lengths m; share 1.
 * Range: as `lanternTrack`, not checked.
 * Source: geometry, as `lanternTrack`.
 * @example portAfter({ offsetAtStart: quantity("length", 2, "mm"), share: 0.4, window: quantity("length", 12, "mm"), portDiameter: quantity("length", 6, "mm") }, quantity("length", 15, "mm")) // 4 mm to the throat, part closed
 */
export function portAfter(
  { offsetAtStart, share, ...widths }: LanternAtStart,
  gland: Length,
): { readonly offset: Length; readonly opening: Opening } {
  const offset = (offsetAtStart - share * gland) as Length;
  return { offset, opening: openingAt(offset, reachOf(widths)) };
}
