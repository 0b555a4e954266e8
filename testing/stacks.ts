import type { Part, Push, Stack } from "@ringwright/core/gland";
import { type Length, quantity, type Stress } from "@ringwright/core/units";
import fc from "fast-check";

export const mm = (value: number): Length => quantity("length", value, "mm");
export const MPa = (value: number): Stress => quantity("stress", value, "MPa");

/** A ring or, with ratio 0, a lantern ring. Height in mm. */
export const ring = (height: number, ratio: number, frictionShaft: number, frictionBore: number): Part => ({
  height: mm(height),
  ratio,
  frictionShaft,
  frictionBore,
});

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyPart: fc.Arbitrary<Part> = fc
  .record({ height: real(2, 30), ratio: fc.oneof(real(0.2, 0.95), fc.constant(0)), shaft: real(0, 0.3), bore: real(0, 0.3) })
  .map(({ height, ratio, shaft, bore }) => ring(height, ratio, shaft, bore));

/** Any box from a small valve to a large pump, with one to ten parts. */
export const anyStack: fc.Arbitrary<Stack> = fc
  .record({ shaft: real(8, 400), section: real(3, 30), parts: fc.array(anyPart, { minLength: 1, maxLength: 10 }), turning: fc.boolean() })
  .map(({ shaft, section, parts, turning }) => ({ shaft: mm(shaft), bore: mm(shaft + 2 * section), parts, turning }));

export const anyPush: fc.Arbitrary<Push> = fc
  .record({ stack: anyStack, glandStress: real(0.01, 60) })
  .map(({ stack, glandStress }) => ({ ...stack, glandStress: MPa(glandStress) }));
