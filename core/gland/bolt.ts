import type { Area, Force, Length, Stress } from "../units/index.ts";
import { type Answer, begin, rule, type Workings, within } from "../workings/index.ts";
import type { GlandFacts } from "./gland-facts.ts";
import { findClass, forDiameter, type PropertyClass } from "./property-class.ts";
import { stressArea } from "./stress-area.ts";
import { findThread, type Thread } from "./thread.ts";

const proofLoadRule = rule({
  id: "proof-load",
  symbol: "F_p",
  expression: "A_s · S_p",
  unit: "N",
  inputs: [
    { symbol: "A_s", name: "stress-area", unit: "m2" },
    { symbol: "S_p", name: "proof-stress", unit: "Pa" },
  ],
  citation: { source: "iso-898-1", at: "proof load = nominal stress area × stress under proof load" },
});

/** How a proof load was come by. */
export const proofLoadBases = ["printed", "area-times-stress", "yield-in-place-of-proof"] as const;
export type ProofLoadBasis = (typeof proofLoadBases)[number];

export interface Bolt {
  /** The thread as the standard designates it. */
  readonly thread: string;
  /** The class reckoned with; the lowest when none is marked. */
  readonly propertyClass: string;
  readonly pitch: Length;
  readonly stressArea: Area;
  readonly proofStress: Stress;
  readonly proofLoad: Force;
  readonly basis: ProofLoadBasis;
}

/**
 * What a gland stud can carry by its thread and class: stress area and proof load.
 *
 *   F_p = A_s · S_p, or as printed in the standard, which rounds
 *
 * No class marked counts as the lowest, with a warning: 4.6 for steel, A2-50 for
 * stainless. Where a standard gives no proof stress, the 0.2 % stress stands in.
 *
 * Units: area m2, stress Pa, load N.
 * Range: threads as `findThread`; classes of the tables, `not-known` for others; a class beyond its largest size is flagged.
 * Source: ISO 898-1 (area, proof load), ISO 3506-1 (stainless), ASME B1.1, SAE J429 and ASTM A193 from memory (inch).
 * @example bolt({ thread: "M12", propertyClass: "8.8" }, facts) // 84.27 mm2, 48 900 N
 */
export function bolt(given: { readonly thread: string; readonly propertyClass?: string }, facts: GlandFacts): Answer<Bolt> {
  const thread = findThread(given.thread, facts.threads);
  if (!thread.ok) return thread;
  const found = findClass(given.propertyClass, facts.classes);
  if (!found.ok) return found;
  const work = begin();
  work.take(thread);
  const area = stressArea(work, thread.value);
  const load = proofLoad(work, thread.value, area, found.value);
  flagClass(work, thread.value, found.value, found.assumed);
  const { name: propertyClass } = found.value;
  return work.found({ thread: thread.value.name, propertyClass, pitch: thread.value.pitch, stressArea: area, ...load });
}

function proofLoad(
  work: Workings,
  thread: Thread,
  area: Area,
  propertyClass: PropertyClass,
): Pick<Bolt, "proofStress" | "proofLoad" | "basis"> {
  const proofStress = work.step(propertyClass.proofRule, [thread.diameter], forDiameter(propertyClass.proof, thread.diameter));
  const printed = thread.printedLoads?.[propertyClass.name];
  if (printed !== undefined && thread.rules.printedLoad) {
    return { proofStress, proofLoad: work.step(thread.rules.printedLoad, [thread.diameter], printed), basis: "printed" };
  }
  // The standard multiplies its printed area, so that is used where it is known.
  const used =
    thread.printedArea !== undefined && thread.rules.printedArea
      ? work.step(thread.rules.printedArea, [thread.diameter], thread.printedArea)
      : area;
  const load = work.step(proofLoadRule, [used, proofStress], (used * proofStress) as Force);
  return { proofStress, proofLoad: load, basis: propertyClass.standsIn ? "yield-in-place-of-proof" : "area-times-stress" };
}

function flagClass(work: Workings, thread: Thread, { name, upTo, standsIn }: PropertyClass, assumed: boolean): void {
  if (assumed) work.warn({ kind: "gap", input: "propertyClass", says: { id: "stud-ungraded", with: { class: name } } });
  if (standsIn) work.warn({ kind: "note", input: "propertyClass", says: { id: "stud-yield-for-proof", with: { class: name } } });
  if (!within({ max: upTo }, thread.diameter)) {
    work.warn({
      kind: "outside-validity",
      input: "thread",
      given: thread.name,
      says: { id: "stud-class-size", with: { class: name, thread: thread.name, upTo: { value: upTo, kind: "length" } } },
    });
  }
}
