import { inUnit, quantity } from "@ringwright/core/units";

/** User space of a PDF has 72 units to the inch (ISO 32000-1, 8.3.2.3). */
const perMillimetre = 72 * inUnit("length", quantity("length", 1, "mm"), "in");

/** Millimetres of paper in the file's own units. */
export function points(millimetres: number): number {
  return millimetres * perMillimetre;
}
