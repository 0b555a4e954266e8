import type { Motion } from "../box/index.ts";
import type { Length } from "../units/index.ts";
import type { HouseLimit } from "./verdict.ts";

/** Readings of the survey that are lengths. */
export const conditionReadings = [
  "shaftLift",
  "endFloat",
  "runout",
  "sleeveGroove",
  "finish",
  "boreFinish",
  "followerClearance",
  "throatClearance",
  "boxDepth",
] as const;
export type ConditionReading = (typeof conditionReadings)[number];

/** What is looked at and not measured, with what may be said of it. */
export const conditionSightings = {
  alignment: ["even", "uneven", "not-known"],
  alignmentAgain: ["even", "uneven", "not-known"],
  scoring: ["none", "rough-spots", "scored", "not-known"],
  surface: ["coated", "file-skates", "file-cuts", "not-known"],
  nailCatches: ["no", "yes", "not-known"],
  noseConcentric: ["yes", "no", "not-known"],
  followerLipSquare: ["yes", "no", "not-known"],
  nutsFree: ["yes", "no", "not-known"],
  studsSound: ["yes", "no", "not-known"],
} as const;
export type ConditionSighting = keyof typeof conditionSightings;

export interface ConditionQuestion extends Readonly<Partial<Record<ConditionReading, Length>>> {
  readonly motion?: Motion;
  /** Critical service: the dial is not optional. */
  readonly critical?: boolean;
  /** What was renewed in this repack. */
  readonly renewed?: readonly ("shaft" | "sleeve")[];
  readonly shaft?: Length;
  readonly bore?: Length;
  /** Used instead of half of bore less shaft, where given. */
  readonly section?: Length;
  readonly lantern?: boolean;
  /** Brinell number. */
  readonly hardness?: number;
  /** Gaps between shaft and bore at 12, 3, 6 and 9 o'clock. */
  readonly clockGaps?: readonly Length[];
  readonly sightings?: Readonly<Partial<Record<ConditionSighting, string>>>;
  readonly houseLimits?: readonly HouseLimit[];
  /** Standard uncertainty of a reading, by its field, where it is known better than the usual one. */
  readonly uncertainties?: Readonly<Partial<Record<ConditionReading | "clockGaps" | "section", Length>>>;
}
