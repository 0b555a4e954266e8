import type { HardnessScale, HardnessScales } from "./facts.ts";

/**
 * The same hardness on another scale, straight between the rows of the table.
 * `undefined` beyond the rows, where the scales cannot be compared.
 */
export function onScale(value: number, from: HardnessScale, to: HardnessScale, scales: HardnessScales): number | undefined {
  if (from === to) return value;
  const source = scales.columns.indexOf(from);
  const target = scales.columns.indexOf(to);
  for (let row = 1; row < scales.rows.length; row++) {
    const low = scales.rows[row - 1]?.[source] ?? null;
    const high = scales.rows[row]?.[source] ?? null;
    if (low === null || high === null || value < low || value > high) continue;
    const lowTarget = scales.rows[row - 1]?.[target] ?? null;
    const highTarget = scales.rows[row]?.[target] ?? null;
    if (lowTarget === null || highTarget === null) return undefined;
    return lowTarget + ((value - low) / (high - low)) * (highTarget - lowTarget);
  }
  return undefined;
}

/**
 * Whether a hardness lies below another, whichever scales they were taken on.
 * Beyond the table the scale itself decides: Brinell ends below what Vickers
 * still reads, and what is too soft for Rockwell C is soft.
 */
export function softer(value: number, scale: HardnessScale, limit: number, limitScale: HardnessScale, scales: HardnessScales): boolean {
  const there = onScale(limit, limitScale, scale, scales);
  if (there !== undefined) return value < there;
  const here = onScale(value, scale, limitScale, scales);
  if (here !== undefined) return here < limit;
  // Neither is on the other's scale: the softest scale to end first holds the softer piece.
  const reach: Readonly<Record<HardnessScale, number>> = { HB: 0, HRC: 1, HV: 2 };
  return reach[scale] < reach[limitScale];
}
