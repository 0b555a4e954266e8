import type { Family } from "../materials/index.ts";
import { type Angle, type Length, quantity } from "../units/index.ts";
import { type Answer, begin, outside, type Refused, type Uncertain, uncertain, type Workings } from "../workings/index.ts";
import { type ButtGap, lessGap, stepGap } from "./butt-gap.ts";
import {
  angleAssumed,
  bevelRule,
  cutLengthRule,
  flattest,
  fromSquareRule,
  grace,
  lengthRule,
  millimetre,
  otherReadingRule,
  roundedInchRule,
  roundedRule,
  shortcutRule,
  square,
  squareRule,
  thirtySecond,
} from "./cut-rules.ts";
import type { RingFacts } from "./facts.ts";
import { type RingSpace, refuseSpace, ringSection, uncertaintyOf } from "./ring-section.ts";

/** A square cut, or a slanting one of which the ends overlap. */
export const cuts = ["butt", "skive"] as const;
export type Cut = (typeof cuts)[number];

export interface CutQuestion extends RingSpace {
  readonly cut: Cut;
  /** Between cut face and strip: 90° is square. */
  readonly angle?: Angle;
}

/** One ring as it lies and as it is cut. */
export interface RingGeometry {
  readonly section: Length;
  /** On the mean line of the ring. */
  readonly length: Uncertain<Length>;
  /** What the slant adds. */
  readonly bevel: Length;
  /** Between cut face and strip. */
  readonly angle: Angle;
  /** From tip to tip of the strip. */
  readonly cutLength: Length;
}

export interface RingCut extends RingGeometry {
  /** The same cut as read off a square. */
  readonly angleFromSquare: Angle;
  /** Cut length if the angle was meant from square; none when that would be no cut. */
  readonly cutLengthIfFromSquare?: Length | undefined;
  /** Diameter of the bar to cut on. */
  readonly mandrel: Length;
  /** Whole millimetres. */
  readonly lengthRounded: Length;
  readonly cutLengthRounded: Length;
  /** Nearest thirty-second of an inch. */
  readonly lengthRoundedInch: Length;
  readonly cutLengthRoundedInch: Length;
  /** How much too short a ring comes out when only the shaft's circumference is cut. */
  readonly shortcutError: Length;
  readonly gap: ButtGap;
  /** Cut length with the middle of the gap taken off, whole millimetres, where the packing swells. */
  readonly cutLengthLessGap?: Length | undefined;
}

/** Refuses a slant outside 15° to 90°. */
export function refuseCut({ cut, angle }: CutQuestion): Refused | undefined {
  if (cut === "butt" || angle === undefined) return undefined;
  return outside([["angle", angle, { min: flattest - grace, max: square + grace }, "rad"]]);
}

/**
 * Length and slant of one ring, without what its material asks for.
 */
export function cutGeometry(work: Workings, given: CutQuestion): RingGeometry {
  const { shaft, cut } = given;
  const section = ringSection(work, given);
  // With a bore the mean line lies midway between two measured walls; with a section only the shaft is measured.
  const u = uncertaintyOf(given.bore === undefined ? Math.PI : Math.PI / 2, given.shaftUncertainty, given.boreUncertainty);
  const length = work.step(lengthRule, [shaft, section], (Math.PI * (shaft + section)) as Length, u);
  const angle = angleOf(work, given);
  const bevel = cut === "butt" ? (0 as Length) : work.step(bevelRule, [section, angle], (section * slope(angle)) as Length);
  return {
    section,
    length: uncertain(length, u ?? 0),
    bevel,
    angle,
    cutLength: work.step(cutLengthRule, [length, bevel], (length + bevel) as Length),
  };
}

/**
 * How long to cut a ring, and what to cut it on.
 *
 *   L = π (d + s),  s = (D − d) / 2
 *   L_c = L + s / tan α  tip to tip, two parallel cuts at α to the strip
 *
 * Wound on a bar of the worn sleeve's size the strip's mean line is L. A square
 * cut has α = 90°. The same number read from square gives another length, so
 * both are told.
 *
 * Units: lengths m, angles rad.
 * Range: shaft above 0 to 5 m; bore above the shaft, or a section above 0 to 1 m, else refused; skive 15° to 90° to the strip, refused outside; section thicker than the shaft is asked about.
 * Source: Mobley 1999, p. 226 for section and length; geometry for the slant; angles 45° (FSA 2016) and 30° (Mobley).
 * @example ringCut({ shaft: quantity("length", 50, "mm"), bore: quantity("length", 75, "mm"), cut: "butt", family: "ptfe" }, facts) // 196 mm on a 50 mm bar
 */
export function ringCut(given: CutQuestion & { readonly family?: Family }, facts: RingFacts): Answer<RingCut> {
  const refused = refuseSpace(given) ?? refuseCut(given);
  if (refused) return refused;
  const work = begin();
  const ring = cutGeometry(work, given);
  const { section, angle, cutLength } = ring;
  const length = ring.length.mean;
  const gap = stepGap(work, given.family, facts);
  return work.found({
    section,
    length: ring.length,
    bevel: ring.bevel,
    angle,
    cutLength,
    angleFromSquare: work.step(fromSquareRule, [angle], Math.max(0, square - angle) as Angle),
    cutLengthIfFromSquare: ifFromSquare(work, given.cut, ring),
    mandrel: given.shaft,
    lengthRounded: toMillimetre(work, length),
    cutLengthRounded: toMillimetre(work, cutLength),
    lengthRoundedInch: toThirtySecond(work, length),
    cutLengthRoundedInch: toThirtySecond(work, cutLength),
    shortcutError: work.step(shortcutRule, [section], (Math.PI * section) as Length),
    gap,
    cutLengthLessGap: gap.gap && gap.policy === "swell" ? lessGap(work, cutLength, gap.gap) : undefined,
  });
}

/** The other reading of the angle, where it gives a cut that can be made. */
function ifFromSquare(work: Workings, cut: Cut, { length, section, angle }: RingGeometry): Length | undefined {
  if (cut === "butt" || angle > square - flattest + grace) return undefined;
  return work.step(otherReadingRule, [length.mean, section, angle], (length.mean + section * Math.tan(angle)) as Length);
}

/** 1 / tan α, exactly nothing for a square cut. */
function slope(angle: Angle): number {
  return Math.max(0, 1 / Math.tan(angle));
}

function angleOf(work: Workings, { cut, angle }: CutQuestion): Angle {
  if (cut === "butt") {
    if (angle !== undefined && Math.abs(angle - square) > 1e-6) {
      work.warn({
        kind: "slip",
        input: "angle",
        given: angle,
        suggestion: square,
        says: { id: "rings-butt-is-square", with: { angle: { value: angle, kind: "angle", decimals: 1 } } },
      });
    }
    return work.step(squareRule, [], square);
  }
  return angle ?? work.assume(angleAssumed, quantity("angle", 45, "deg"));
}

function toMillimetre(work: Workings, length: Length): Length {
  return work.step(roundedRule, [length], quantity("length", Math.round(length / millimetre), "mm"));
}

function toThirtySecond(work: Workings, length: Length): Length {
  return work.step(roundedInchRule, [length], quantity("length", Math.round(length / thirtySecond) / 32, "in"));
}
