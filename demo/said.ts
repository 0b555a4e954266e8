import { type Kind, parseQuantity, siUnits } from "@ringwright/core/units";
import type { FieldValue, Measured, Readings } from "@ringwright/logbook";

/** A quantity as somebody would type it. Throws where it is none: a mistake in this invented site. */
export function typed(kind: Kind, text: string): Measured {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text} is no ${kind}`);
  return { value: parsed.quantity.value, unit: siUnits[kind], typed: text };
}

export const mm = (value: number | string): Measured => typed("length", `${value} mm`);
export const bar = (value: number): Measured => typed("pressure", `${value} bar`);
export const degC = (value: number): Measured => typed("temperature", `${value} °C`);
export const rpm = (value: number): Measured => typed("rotation", `${value} rpm`);

/** Several readings of one dimension, in millimetres as read. */
export function readings(how: string, ...values: readonly (number | string)[]): Readings {
  return { readings: values.map(mm), how };
}

/** What is said of a box, field by field. */
export type Known = Readonly<Record<string, FieldValue>>;
