import type { Seating } from "../gland/index.ts";
import type { Stress } from "../units/index.ts";
import { type Band, rule, type Workings } from "../workings/index.ts";
import type { StemFacts } from "./stem-facts.ts";

const inputs = [
  { symbol: "σ_g", name: "gland-stress", unit: "Pa" },
  { symbol: "k", name: "share-of-load-left", unit: "1" },
] as const;
const citation = {
  source: "fsa-valve-compression-2016",
  at: "3500 psi falls to 2500 to 3000 psi; to about 1500 psi when pushed in together",
} as const;

const lowRule = rule({ id: "load-left-low", symbol: "σ_lo", expression: "k σ_g", unit: "Pa", inputs, citation });
const highRule = rule({ id: "load-left-high", symbol: "σ_hi", expression: "k σ_g", unit: "Pa", inputs, citation });

/** What a hundred strokes leave of the gland stress, by how the rings were seated; seating not known spans both. */
export function loadLeft(
  work: Workings,
  glandStress: Stress,
  seating: Seating,
  { eachTamped, rammed }: StemFacts["loadLoss"],
): Band<Stress> {
  const low = seating === "each-tamped" ? eachTamped.low : rammed.low;
  const high = seating === "rammed" ? rammed.high : eachTamped.high;
  return {
    low: work.step(lowRule, [glandStress, low], (low * glandStress) as Stress),
    high: work.step(highRule, [glandStress, high], (high * glandStress) as Stress),
  };
}
