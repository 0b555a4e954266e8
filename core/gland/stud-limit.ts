import type { Force } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";
import type { GlandFacts } from "./gland-facts.ts";
import { findClass, forDiameter } from "./property-class.ts";
import { pitchDiameter, rootDiameter, stressArea } from "./stress-area.ts";
import { findThread } from "./thread.ts";

const twistRule = rule({
  id: "twist-to-pull",
  symbol: "τ/σ",
  expression: "1.5 (d2 / d0) (P / (π d2) + 1.155 μ_t),  d0 = (d2 + d3) / 2",
  unit: "1",
  inputs: [
    { symbol: "d2", name: "pitch-diameter", unit: "m" },
    { symbol: "d3", name: "thread-root-diameter", unit: "m" },
    { symbol: "P", name: "thread-pitch", unit: "m" },
    { symbol: "μ_t", name: "friction-thread", unit: "1", valid: { min: 0.04, max: 0.35 } },
  ],
  citation: { source: "vdi-2230", at: "assembly preload, part 1", seen: "memory" },
});

const limitRule = rule({
  id: "tightening-limit",
  symbol: "F_M",
  expression: "ν · R_p0.2 · A_s / √(1 + 3 (τ/σ)²)",
  unit: "N",
  inputs: [
    { symbol: "ν", name: "use-of-yield", unit: "1" },
    { symbol: "R_p0.2", name: "yield-stress", unit: "Pa" },
    { symbol: "A_s", name: "stress-area", unit: "m2" },
    { symbol: "τ/σ", name: "twist-to-pull", unit: "1" },
  ],
  citation: { source: "vdi-2230", at: "assembly preload, part 1", seen: "memory" },
});

/**
 * The most a stud may be pulled while it is being turned: pull and twist
 * together reach a share of the 0.2 % stress.
 *
 *   F_M = ν R_p0.2 A_s / √(1 + 3 (τ/σ)²)
 *
 * Units: force N, friction and share plain numbers.
 * Range: metric threads and classes as `bolt`, friction 0 to 1, share above 0 to 1; refused outside. Unified threads take the root of the metric profile; the two differ by less than the thread's tolerance.
 * Source: VDI 2230 part 1, formula from memory, checked against its printed table for fine threads of class 8.8.
 * @example studLimit({ thread: "M12x1.25", propertyClass: "8.8", frictionThread: 0.12, useOfYield: 0.9 }, facts) // 48 kN
 */
export function studLimit(
  given: { readonly thread: string; readonly propertyClass?: string; readonly frictionThread: number; readonly useOfYield: number },
  facts: GlandFacts,
): Answer<{ readonly load: Force }> {
  const { frictionThread, useOfYield } = given;
  const thread = findThread(given.thread, facts.threads);
  if (!thread.ok) return thread;
  const found = findClass(given.propertyClass, facts.classes);
  if (!found.ok) return found;
  const refused = outside([
    ["frictionThread", frictionThread, { min: 0, max: 1 }, "1"],
    ["useOfYield", useOfYield, { min: Number.MIN_VALUE, max: 1 }, "1"],
  ]);
  if (refused) return refused;
  const work = begin();
  const { diameter, pitch } = work.take(thread);
  const area = stressArea(work, thread.value);
  const stress = work.step(found.value.yieldRule, [diameter], forDiameter(found.value.yield, diameter));
  const d2 = pitchDiameter(work, thread.value);
  const d3 = rootDiameter(work, thread.value);
  const twist = work.step(
    twistRule,
    [d2, d3, pitch, frictionThread],
    ((3 * d2) / (d2 + d3)) * (pitch / (Math.PI * d2) + 1.155 * frictionThread),
  );
  const load = (useOfYield * stress * area) / Math.sqrt(1 + 3 * twist ** 2);
  if (found.assumed) work.warn({ kind: "gap", input: "propertyClass", says: { id: "stud-ungraded", with: { class: found.value.name } } });
  return work.found({ load: work.step(limitRule, [useOfYield, stress, area, twist], load as Force) });
}
