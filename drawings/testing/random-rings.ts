import { type Length, quantity } from "@ringwright/core/units";
import fc, { type Arbitrary } from "fast-check";
import type { CutStrip, JointClock, StressCurve } from "../index.ts";

const mm = (value: number): Length => quantity("length", value, "mm");
const between = (min: number, max: number): Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Joints at 12, 3, 6 and 9 for 2 to 12 rings of any shaft, square or skive. */
export const randomJoints: Arbitrary<JointClock> = fc
  .record({
    shaft: between(8, 400),
    section: between(3, 25),
    hours: fc.array(fc.constantFrom(12, 3, 6, 9), { minLength: 2, maxLength: 12 }),
    angle: between(20, 90),
    datum: fc.constantFrom("top", "discharge", "tag mark"),
  })
  .map(({ shaft, section, hours, angle, datum }) => ({
    shaft: mm(shaft),
    bore: mm(shaft + 2 * section),
    joints: hours.map((clock, i) => ({ ring: i + 1, clock })),
    angle: quantity("angle", angle, "deg"),
    datum,
  }));

/** Strips for any shaft and section, cut at 15 to 90 degrees. */
export const randomStrip: Arbitrary<CutStrip> = fc
  .record({ shaft: between(8, 400), section: between(3, 25), degrees: fc.oneof(between(15, 89), fc.constant(90)) })
  .filter(({ shaft, section }) => Math.PI * (shaft + section) > 2 * section)
  .map(({ shaft, section, degrees }) => {
    const length = Math.PI * (shaft + section);
    const angle = quantity("angle", degrees, "deg");
    return {
      section: mm(section),
      length: mm(length),
      cutLength: mm(length + (degrees === 90 ? 0 : section / Math.tan(angle))),
      angle,
      mandrel: mm(shaft),
    };
  });

/** Sets of 2 to 12 rings with a lantern ring anywhere, and pushes that grow towards the gland. */
export const randomPush: Arbitrary<StressCurve> = fc
  .record({
    section: between(3, 25),
    heights: fc.array(between(0.7, 1.1), { minLength: 2, maxLength: 12 }),
    lantern: fc.nat(12),
    lost: fc.tuple(between(0, 1), between(0, 1)),
    basis: fc.boolean(),
  })
  .map(({ section, heights, lantern, lost, basis }) => {
    const parts: StressCurve["parts"][number][] = [];
    let at = 0;
    for (const [i, height] of heights.entries()) {
      parts.push({ ring: i + 1, from: mm(at), to: mm(at + height * section) });
      at += height * section;
      if (i !== lantern) continue;
      parts.push({ kind: "lantern", from: mm(at), to: mm(at + 1.3 * section) });
      at += 1.3 * section;
    }
    const line = (loss: number) =>
      Array.from({ length: 21 }, (_, i) => ({ fromThroat: mm((at * i) / 20), share: 1 - loss * (1 - i / 20) }));
    return {
      parts,
      curves: [
        { motion: "turning", points: line(Math.min(...lost)) },
        { motion: "standing", points: line(Math.max(...lost)) },
      ],
      ...(basis ? { basis: "Ratio 0.5 (0.3 to 0.9), friction 0.10 (0.05 to 0.25): weakly known." } : {}),
    };
  });
