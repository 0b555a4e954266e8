import { quantity } from "@ringwright/core/units";
import type { CutStrip, JointClock, StressCurve } from "../index.ts";

const mm = (value: number) => quantity("length", value, "mm");

/** Five rings, joints a quarter turn apart. */
export const joints: JointClock = {
  shaft: mm(50),
  bore: mm(75),
  joints: [12, 3, 6, 9, 12].map((clock, i) => ({ ring: i + 1, clock })),
  datum: "discharge",
};

/** The same joints, cut on the skew, for twelve rings. */
export const manyJoints: JointClock = {
  shaft: mm(160),
  bore: mm(192),
  joints: Array.from({ length: 12 }, (_, i) => ({ ring: i + 1, clock: [12, 3, 6, 9][i % 4] ?? 12 })),
  angle: quantity("angle", 45, "deg"),
};

/** 12.5 mm braid on a 50 mm sleeve: 62.5 mm mean diameter, 196.35 mm round; cut at 45 degrees it is a section longer tip to tip. */
export const skiveStrip: CutStrip = {
  section: mm(12.5),
  length: mm(62.5 * Math.PI),
  cutLength: mm(62.5 * Math.PI + 12.5),
  angle: quantity("angle", 45, "deg"),
  mandrel: mm(50),
  family: "graphite",
};

export const shallowStrip: CutStrip = {
  ...skiveStrip,
  cutLength: mm(62.5 * Math.PI + 12.5 / Math.tan(Math.PI / 6)),
  angle: quantity("angle", 30, "deg"),
  family: "aramid",
};

export const squareStrip: CutStrip = { ...skiveStrip, cutLength: mm(62.5 * Math.PI), angle: quantity("angle", 90, "deg"), family: "ptfe" };

/** A push of one along the stock pump's set, with invented decay. */
export const push: StressCurve = {
  parts: [
    { ring: 1, from: mm(0), to: mm(12.5) },
    { ring: 2, from: mm(12.5), to: mm(25) },
    { kind: "lantern", from: mm(25), to: mm(41) },
    { ring: 3, from: mm(41), to: mm(53.5) },
    { ring: 4, from: mm(53.5), to: mm(66) },
    { ring: 5, from: mm(66), to: mm(78.5) },
  ],
  curves: [
    { motion: "turning", points: decay(0.24) },
    { motion: "standing", points: decay(0.4) },
  ],
  basis: "Ratio 0.5 (0.3 to 0.9), friction 0.10 (0.05 to 0.25): weakly known. Seated rings keep their own load.",
};

function decay(rate: number) {
  return Array.from({ length: 158 }, (_, i) => {
    const fromThroat = i / 2;
    const packing = fromThroat >= 41 ? 78.5 - fromThroat : fromThroat >= 25 ? 37.5 : 62.5 - fromThroat;
    return { fromThroat: mm(fromThroat), share: Math.exp((-rate * packing) / 50) };
  });
}
