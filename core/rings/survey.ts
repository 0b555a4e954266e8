import type { Motion } from "../box/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import { outside, type Range, type Refused, refuse, within } from "../workings/index.ts";
import type { Seating } from "./facts.ts";
import { refuseSpace } from "./ring-section.ts";

export const endRings = ["none", "throat", "gland", "both"] as const;
export type EndRings = (typeof endRings)[number];

/** What is known or wanted of the lantern ring. */
export interface LanternSurvey {
  readonly wanted?: boolean;
  readonly width?: Length;
  /** Opening between the lands. */
  readonly window?: Length;
  /** Width of one land, when the window is not given. */
  readonly land?: Length;
  /** Rings between throat and lantern ring, when it is settled. */
  readonly ringsThroatSide?: number;
}

/** What a fitter found of a box. Only the motion, and a section or shaft and bore, cannot be left out. */
export interface RingSetQuestion {
  readonly motion: Motion;
  readonly shaft?: Length;
  readonly bore?: Length;
  /** Stock section chosen; the space itself when left out. */
  readonly section?: Length;
  /** Box face to throat shoulder. */
  readonly depth?: Length;
  /** Length of a loose throat bush within that depth. */
  readonly throatBush?: Length;
  /** Length of a spacer at the bottom, when one is settled. */
  readonly spacer?: Length;
  /** Number of rings, when it is settled. */
  readonly rings?: number;
  readonly seating?: Seating;
  /** Part of its height that a ring loses in seating, from and to. */
  readonly seatingLossLow?: number;
  readonly seatingLossHigh?: number;
  /** Height of one seated ring, when found on the job. */
  readonly ringHeight?: Length;
  readonly endRings?: EndRings;
  readonly lantern?: LanternSurvey;
  /** Middle of the flush port, from the throat or from the box face. */
  readonly portFromThroat?: Length;
  readonly portFromFace?: Length;
  readonly portDiameter?: Length;
  /** Length of the follower that can go into the box. */
  readonly noseLength?: Length;
  /** Follower flange to box face at finger-tight on this set, when it could be measured. */
  readonly glandGap?: Length;
  /** Thread that the nuts can still run down, at finger-tight. */
  readonly threadLeft?: Length;
  /** Least follower entry wanted after finger-tight. */
  readonly leastEntry?: Length;
  /** Pressure in the box. */
  readonly pressure?: GaugePressure;
  /** Stroke of a rod or plunger. */
  readonly stroke?: Length;
  /** Clock hour of the first joint. */
  readonly firstJoint?: number;
  /** Hours between joints. */
  readonly jointStep?: number;
}

/** The inputs a set can rest on, in the order in which a box is measured. */
export const measured = [
  "shaft",
  "bore",
  "section",
  "depth",
  "throatBush",
  "ringHeight",
  "portFromThroat",
  "portFromFace",
  "portDiameter",
  "noseLength",
  "glandGap",
  "threadLeft",
  "pressure",
  "stroke",
] as const satisfies readonly (keyof RingSetQuestion)[];

const size = { min: Number.MIN_VALUE, max: 1 };
const deep = { min: Number.MIN_VALUE, max: 10 };
const none = { min: 0, max: 10 };
const part = { min: 0, max: 0.6 };

type Check = readonly [input: string, value: (given: RingSetQuestion) => number | undefined, range: Range, unit: string];

const checks: readonly Check[] = [
  ["section", (given) => given.section, size, "m"],
  ["depth", (given) => given.depth, deep, "m"],
  ["throatBush", (given) => given.throatBush, none, "m"],
  ["spacer", (given) => given.spacer, none, "m"],
  ["rings", (given) => given.rings, { min: 1, max: 40 }, "1"],
  ["seatingLossLow", (given) => given.seatingLossLow, part, "1"],
  ["seatingLossHigh", (given) => given.seatingLossHigh, part, "1"],
  ["ringHeight", (given) => given.ringHeight, size, "m"],
  ["lantern.width", (given) => given.lantern?.width, size, "m"],
  ["lantern.window", (given) => given.lantern?.window, size, "m"],
  ["lantern.land", (given) => given.lantern?.land, none, "m"],
  ["lantern.ringsThroatSide", (given) => given.lantern?.ringsThroatSide, { min: 0, max: 40 }, "1"],
  ["portFromThroat", (given) => given.portFromThroat, none, "m"],
  ["portFromFace", (given) => given.portFromFace, none, "m"],
  ["portDiameter", (given) => given.portDiameter, size, "m"],
  ["noseLength", (given) => given.noseLength, none, "m"],
  ["glandGap", (given) => given.glandGap, { min: 0, max: 1 }, "m"],
  ["threadLeft", (given) => given.threadLeft, { min: 0, max: 1 }, "m"],
  ["leastEntry", (given) => given.leastEntry, { min: 0, max: 0.1 }, "m"],
  ["stroke", (given) => given.stroke, none, "m"],
  ["firstJoint", (given) => given.firstJoint, { min: 1, max: 12 }, "1"],
  ["jointStep", (given) => given.jointStep, { min: 3, max: 6 }, "1"],
];

/** Refuses a survey with an impossible value in it, or with too little to go on. */
export function refuseSurvey(given: RingSetQuestion): Refused | undefined {
  for (const [input, value, range, unit] of checks) {
    const found = value(given);
    if (found !== undefined && !within(range, found)) return outside([[input, found, range, unit]]);
  }
  return refuseSection(given);
}

function refuseSection({ shaft, bore, section }: RingSetQuestion): Refused | undefined {
  if (shaft !== undefined) {
    return refuseSpace({ shaft, ...(bore === undefined ? {} : { bore }), ...(section === undefined ? {} : { section }) });
  }
  return section === undefined ? refuse({ kind: "not-known", input: "section", says: { id: "rings-no-section" } }) : undefined;
}
