import type { Temperature } from "../units/index.ts";

/** Linear expansion, 1/K, of a material at some temperatures, as printed. Lives in data/tables/. */
export interface ExpansionTable {
  readonly points: readonly { readonly temperature: Temperature; readonly expansion: number }[];
}

/** Facts of this topic, read from data/tables/ and already in SI. */
export interface HeatFacts {
  readonly ptfeExpansion: ExpansionTable;
}

interface ExpansionCurve {
  readonly from: Temperature;
  readonly to: Temperature;
  /** Strain on warming from the first temperature of the table; straight lines between the table's coefficients. */
  strainAt(temperature: Temperature): number;
}

/** Integrates a table of coefficients in 1/K. */
export function expansionCurve({ points }: ExpansionTable): ExpansionCurve {
  const at = points.map(({ temperature }) => temperature);
  const alpha = points.map(({ expansion }) => expansion);
  const sums = [0];
  for (let i = 1; i < at.length; i++) {
    sums.push((sums[i - 1] ?? 0) + (((alpha[i] ?? 0) + (alpha[i - 1] ?? 0)) / 2) * ((at[i] ?? 0) - (at[i - 1] ?? 0)));
  }
  const last = at.length - 1;
  return {
    from: at[0] ?? (Number.NaN as Temperature),
    to: at[last] ?? (Number.NaN as Temperature),
    strainAt(temperature) {
      let i = 0;
      while (i < last - 1 && temperature > (at[i + 1] ?? Infinity)) i++;
      const [t0 = 0, t1 = 0, a0 = 0, a1 = 0, sum = 0] = [at[i], at[i + 1], alpha[i], alpha[i + 1], sums[i]];
      const t = temperature - t0;
      return sum + a0 * t + ((a1 - a0) * t * t) / (2 * (t1 - t0));
    },
  };
}
