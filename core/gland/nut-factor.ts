import type { Length } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";
import type { GlandFacts } from "./gland-facts.ts";
import { pitchDiameter } from "./stress-area.ts";
import { findThread } from "./thread.ts";

const leverRule = rule({
  id: "torque-per-load",
  symbol: "T/F",
  expression: "0.16 P + 0.58 μ_t d2 + μ_f D_f / 2",
  unit: "m",
  inputs: [
    { symbol: "P", name: "thread-pitch", unit: "m" },
    { symbol: "μ_t", name: "friction-thread", unit: "1", valid: { min: 0.04, max: 0.35 } },
    { symbol: "d2", name: "pitch-diameter", unit: "m" },
    { symbol: "μ_f", name: "friction-face", unit: "1", valid: { min: 0.04, max: 0.35 } },
    { symbol: "D_f", name: "face-diameter", unit: "m" },
  ],
  citation: { source: "vdi-2230", at: "tightening torque, part 1", seen: "memory" },
});

const nutFactorRule = rule({
  id: "nut-factor",
  symbol: "K_n",
  expression: "(T/F) / d",
  unit: "1",
  inputs: [
    { symbol: "T/F", name: "torque-per-load", unit: "m" },
    { symbol: "d", name: "thread-diameter", unit: "m" },
  ],
  citation: { source: "definition" },
});

export interface NutFactor {
  readonly nutFactor: number;
  /** Torque for each newton of load: a lever. */
  readonly torquePerLoad: Length;
}

/**
 * The nut factor that two coefficients of friction make: under thread and nut face.
 *
 *   T / F = 0.16 P + 0.58 μ_t d2 + μ_f D_f / 2,   K_n = (T / F) / d
 *
 * Units: lengths m, friction and K_n plain numbers.
 * Range: threads as `findThread`, friction 0 to 1, face diameter above the thread's and up to 4 times it; refused outside. Friction outside 0.04 to 0.35 is flagged.
 * Source: VDI 2230 part 1, formula from memory, checked against its printed table for fine threads.
 * @example nutFactor({ thread: "M12", frictionThread: 0.12, frictionFace: 0.12, faceDiameter: quantity("length", 14.2, "mm") }, facts) // 0.157
 */
export function nutFactor(
  given: {
    readonly thread: string;
    readonly frictionThread: number;
    readonly frictionFace: number;
    /** Mean diameter of the ring on which the nut rubs. */
    readonly faceDiameter: Length;
  },
  facts: GlandFacts,
): Answer<NutFactor> {
  const { frictionThread, frictionFace, faceDiameter } = given;
  const thread = findThread(given.thread, facts.threads);
  if (!thread.ok) return thread;
  const { diameter, pitch } = thread.value;
  const refused = outside([
    ["frictionThread", frictionThread, { min: 0, max: 1 }, "1"],
    ["frictionFace", frictionFace, { min: 0, max: 1 }, "1"],
    ["faceDiameter", faceDiameter, { min: diameter, max: 4 * diameter }, "m"],
  ]);
  if (refused) return refused;
  const work = begin();
  work.take(thread);
  const d2 = pitchDiameter(work, thread.value);
  const lever = 0.16 * pitch + 0.58 * frictionThread * d2 + (frictionFace * faceDiameter) / 2;
  const torquePerLoad = work.step(leverRule, [pitch, frictionThread, d2, frictionFace, faceDiameter], lever as Length);
  return work.found({ nutFactor: work.step(nutFactorRule, [lever, diameter], lever / diameter), torquePerLoad });
}
