import { probabilityBelow } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import type { Uncertain, Workings } from "../workings/index.ts";
import { fillRule, misfitRule, probabilityOfLargestRule, probabilityOfSmallestRule, probabilityRule } from "./section-rules.ts";
import { type Fit, type FitLimits, fillable, fitOf, type StockSeries, type StockSize } from "./stock.ts";

/** One stock size beside the gap. */
export interface Stock {
  readonly size: Length;
  readonly label: string;
  readonly series: readonly ("metric" | "inch")[];
  /** Stock size less the gap: positive when the packing is too big. */
  readonly misfit: Length;
  /** That the true gap is nearer to this size than to any other of the series. */
  readonly probability: number;
  /** That this size fills the true gap, as it is or rolled. */
  readonly fills: number;
  readonly fit: Fit;
  /** Id of what to do with it. */
  readonly advice: string;
}

/** A chance smaller than this is not worth a line. */
const negligible = 0.001;

/** Sizes worth showing: the two about the gap in each series asked for, and any that may yet be the nearest. */
export function nearStock(
  work: Workings,
  gap: Uncertain<Length>,
  limits: FitLimits,
  series: StockSeries,
  all: readonly StockSize[],
): readonly Stock[] {
  const sizes = series === "both" ? all : all.filter((entry) => entry.series.includes(series));
  const wanted = [
    ...(series === "inch" ? [] : about(sizes, gap.mean, "metric")),
    ...(series === "metric" ? [] : about(sizes, gap.mean, "inch")),
  ];
  const listed: Stock[] = [];
  for (let i = 0; i < sizes.length; i++) {
    const entry = sizes[i];
    if (!entry) continue;
    const below = halfway(sizes[i - 1], entry);
    const above = halfway(entry, sizes[i + 1]);
    const upTo = above === undefined ? 1 : probabilityBelow(above, gap.mean, gap.u);
    const under = below === undefined ? 0 : probabilityBelow(below, gap.mean, gap.u);
    const probability = Math.max(0, upTo - under);
    if (probability < negligible && !wanted.includes(entry)) continue;
    listed.push(oneStock(work, gap, limits, entry, noteProbability(work, gap, below, above, probability)));
  }
  return listed.sort((a, b) => Math.abs(a.misfit) - Math.abs(b.misfit));
}

function halfway(one: StockSize | undefined, other: StockSize | undefined): number | undefined {
  return one && other ? (one.size + other.size) / 2 : undefined;
}

/** The sizes of a series next below and next above the gap. */
function about(sizes: readonly StockSize[], gap: number, series: "metric" | "inch"): readonly StockSize[] {
  let below: StockSize | undefined;
  for (const entry of sizes) {
    if (!entry.series.includes(series)) continue;
    if (entry.size > gap) return below ? [below, entry] : [entry];
    below = entry;
  }
  return below ? [below] : [];
}

function noteProbability(
  work: Workings,
  gap: Uncertain<Length>,
  below: number | undefined,
  above: number | undefined,
  probability: number,
): number {
  if (below !== undefined && above !== undefined) return work.step(probabilityRule, [below, above, gap.mean, gap.u], probability);
  if (above !== undefined) return work.step(probabilityOfSmallestRule, [above, gap.mean, gap.u], probability);
  if (below !== undefined) return work.step(probabilityOfLargestRule, [below, gap.mean, gap.u], probability);
  return probability;
}

function oneStock(work: Workings, gap: Uncertain<Length>, limits: FitLimits, entry: StockSize, probability: number): Stock {
  const { size, label, series } = entry;
  const { low, high } = fillable(size, limits);
  const fills = Math.max(0, probabilityBelow(high, gap.mean, gap.u) - probabilityBelow(low, gap.mean, gap.u));
  const fit = fitOf(size, gap.mean, limits);
  return {
    size,
    label,
    series,
    misfit: work.step(misfitRule, [size, gap.mean], (size - gap.mean) as Length, gap.u),
    probability,
    fills: work.step(fillRule, [size, limits.tolerance, limits.rolling, gap.mean, gap.u], fills),
    fit,
    advice: `stock-${fit}`,
  };
}
