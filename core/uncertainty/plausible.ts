import type { Kind } from "../units/index.ts";

/** Dimensions and readings of a packed box that have a range anyone would believe. */
export const plausibleFields = [
  "shaft",
  "bore",
  "depth",
  "packed-length",
  "along-box",
  "section",
  "ring-height",
  "part-height",
  "lantern-width",
  "window",
  "land",
  "port",
  "gap",
  "entry",
  "nose",
  "spacer",
  "clearance",
  "runout",
  "lift",
  "groove",
  "finish",
  "reading-error",
  "stroke",
  "thread-left",
  "thread-pitch",
  "nut-face",
  "cut-length",
  "trim",
  "drip-edge",
  "pressure",
  "stem-pressure",
  "absolute-pressure",
  "atmosphere",
  "pressure-drop",
  "gland-stress",
  "modulus",
  "torque",
  "rotation",
  "slow-rotation",
  "speed",
  "temperature",
  "temperature-rise",
  "flow",
  "drop-volume",
  "catch",
  "power",
  "conductance",
  "viscosity",
  "density",
  "heat-capacity",
  "surface-tension",
] as const;
export type PlausibleField = (typeof plausibleFields)[number];

/** The range within which nearly every packed box lies; outside it a reading is asked about, never blocked. */
export interface PlausibleRange {
  readonly kind: Kind;
  readonly low: number;
  readonly high: number;
}

export type PlausibleRanges = Readonly<Record<PlausibleField, PlausibleRange>>;
