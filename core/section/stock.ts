import type { Length } from "../units/index.ts";
import type { SectionTable } from "./opinions.ts";

/** Which of the two trade series of square packing may be bought. */
export const stockSeries = ["metric", "inch", "both"] as const;
export type StockSeries = (typeof stockSeries)[number];

/** One section as it is sold. */
export interface StockSize {
  readonly size: Length;
  /** As it is called at the counter: `3/8 in`, `10 mm`. */
  readonly label: string;
  readonly series: readonly ("metric" | "inch")[];
}

/** A share taken for lack of anything better, with the spread to show beside it. */
interface Share {
  readonly low: number;
  readonly high: number;
}

/** Facts about packing as it is sold. */
export interface StockFacts {
  /** Ascending, no size twice. */
  readonly sizes: readonly StockSize[];
  /** Half-width of the section as braided, as a share of it. */
  readonly braidTolerance: Share & { readonly usual: number };
  /** How much above the gap a braid may be and still be rolled to it, as a share of the gap. */
  readonly rolling: Share & { readonly most: number };
}

/** Facts that the section rests on. */
export interface SectionFacts {
  readonly stock: StockFacts;
  /** Shown beside the box, as opinion. */
  readonly tables: readonly SectionTable[];
}

/**
 * What a stock size can do in a gap: go in as it is, be rolled down to it,
 * or neither.
 */
export const fits = ["fits", "roll", "too-big", "too-small"] as const;
export type Fit = (typeof fits)[number];

/** How far a size may lie from the gap, as shares of the gap. */
export interface FitLimits {
  readonly tolerance: number;
  /** No more than `tolerance` for rings that must not be rolled. */
  readonly rolling: number;
}

/** What a size does in a gap of exactly this width. */
export function fitOf(size: number, gap: number, limits: FitLimits): Fit {
  const misfit = size - gap;
  if (misfit < -limits.tolerance * gap) return "too-small";
  if (misfit <= limits.tolerance * gap) return "fits";
  return misfit <= limits.rolling * gap ? "roll" : "too-big";
}

/** The gaps that a size can fill, as it is or rolled. */
export function fillable(size: number, limits: FitLimits): { readonly low: number; readonly high: number } {
  return { low: size / (1 + Math.max(limits.rolling, limits.tolerance)), high: size / (1 - limits.tolerance) };
}
