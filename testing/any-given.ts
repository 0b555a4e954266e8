import fc from "fast-check";
import { expect } from "vitest";
import type { Answer } from "../core/workings/index.ts";

/** Numbers of every size, and those that are none. */
const anyNumber = fc.oneof(
  fc.double(),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 1, max: 1e7, noNaN: true }),
  fc.constantFrom(0, -0, -1, 1e308, -1e308, 5e-324, Number.NaN, Infinity, -Infinity),
);

/** A question with any numbers in these fields, and perhaps in those. */
export const anyGiven = (always: readonly string[], sometimes: readonly string[] = []) =>
  fc.record(Object.fromEntries([...always, ...sometimes].map((name) => [name, anyNumber])), { requiredKeys: [...always] });

/** Holds for a refusal that names its input, and for an answer whose value, workings and warnings carry finite numbers only. */
export function expectFinite(answer: Answer<unknown>): void {
  if (!answer.ok) {
    expect(answer.refusal.input).toBeTruthy();
    return;
  }
  JSON.stringify([answer.value, answer.workings.map(([, inputs, value]) => [inputs, value]), answer.warnings], (name, value: unknown) => {
    if (typeof value === "number") expect(Number.isFinite(value), name).toBe(true);
    return value;
  });
}
