/** Degrees of freedom of the rows below; between rows the lower one is taken, as JCGM 100 G.4.1 truncates. */
const rows = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 40, 50, 100, 1000] as const;

/** Student's t, both tails together leaving 5 % and 1 % (computed with SciPy 1.17.1, six decimals). */
const t95 = [
  12.706205, 4.302653, 3.182446, 2.776445, 2.570582, 2.446912, 2.364624, 2.306004, 2.262157, 2.228139, 2.200985, 2.178813, 2.160369,
  2.144787, 2.13145, 2.119905, 2.109816, 2.100922, 2.093024, 2.085963, 2.059539, 2.042272, 2.021075, 2.008559, 1.983972, 1.962339,
] as const;
const t99 = [
  63.656741, 9.924843, 5.840909, 4.604095, 4.032143, 3.707428, 3.499483, 3.355387, 3.249836, 3.169273, 3.105807, 3.05454, 3.012276,
  2.976843, 2.946713, 2.920782, 2.898231, 2.87844, 2.860935, 2.84534, 2.787436, 2.749996, 2.704459, 2.677793, 2.625891, 2.580755,
] as const;

const level = { 95: { rows: t95, normal: 1.959964 }, 99: { rows: t99, normal: 2.575829 } } as const;

/**
 * How many standard uncertainties make an interval of the stated level of
 * confidence, given how many degrees of freedom stand behind them.
 *
 *   k = t_p(ν)
 *
 * Units: none.
 * Range: degrees of freedom from 1; fewer are taken as 1, an endless number as the normal distribution. Between rows the next lower row.
 * Source: JCGM 100:2008 G.3, G.4 and table G.2; values computed with SciPy.
 * @example coverageFactor(16, 99) // 2.920782
 */
export function coverageFactor(degrees: number, percent: 95 | 99 = 95): number {
  const { rows: factors, normal } = level[percent];
  if (degrees === Number.POSITIVE_INFINITY) return normal;
  let factor: number = factors[0];
  for (let i = 1; i < rows.length && (rows[i] ?? 0) <= degrees; i++) factor = factors[i] ?? factor;
  return factor;
}
