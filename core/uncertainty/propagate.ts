/** One input of a result: how strongly the result follows it, how uncertain it is, and how well that is known. */
export interface Influence {
  /** Partial derivative of the result with respect to this input. */
  readonly sensitivity: number;
  /** Standard uncertainty of the input. */
  readonly u: number;
  /** Degrees of freedom behind `u`; left out where there is no end to them. */
  readonly degrees?: number;
}

/** A pair of inputs through which the result bends: its second derivative with respect to both. */
export interface Bend {
  readonly second: number;
  readonly u: number;
  /** Uncertainty of the other input; the same one again for a square term. */
  readonly uOther: number;
  readonly same?: true;
}

/**
 * Standard uncertainty of a result worked out from uncertain, independent
 * inputs: first order, and with `bends` the second-order terms too.
 *
 *   u² = Σ (∂f/∂xᵢ)² u²(xᵢ) + Σ over pairs (∂²f/∂xᵢ∂xⱼ)² u²(xᵢ) u²(xⱼ), squares counted half
 *
 * Units: each sensitivity in unit of the result per unit of its input.
 * Range: independent inputs; terms with third derivatives are left out, so the second order is complete only for a result at most linear in each input.
 * Source: JCGM 100:2008, 5.1.2 equation (10) and its note.
 * @example propagate([{ sensitivity: 0.5, u: 0.02 }, { sensitivity: -0.5, u: 0.01 }]) // 0.01118
 */
export function propagate(influences: readonly Influence[], bends: readonly Bend[] = []): number {
  let squares = 0;
  for (const { sensitivity, u } of influences) squares += (sensitivity * u) ** 2;
  for (const { second, u, uOther, same } of bends) squares += (same ? 0.5 : 1) * (second * u * uOther) ** 2;
  return Math.sqrt(squares);
}

/**
 * Degrees of freedom behind a propagated uncertainty (Welch-Satterthwaite).
 *
 *   ν = u⁴ / Σ (cᵢ uᵢ)⁴ / νᵢ
 *
 * Units: none.
 * Range: independent inputs; without any input of limited degrees of freedom there is no end to them (Infinity).
 * Source: JCGM 100:2008, equation (G.2b).
 * @example effectiveDegrees([{ sensitivity: 1, u: 3, degrees: 5 }, { sensitivity: 1, u: 4 }]) // 38.58
 */
export function effectiveDegrees(influences: readonly Influence[]): number {
  let known = 0;
  for (const { sensitivity, u, degrees } of influences) {
    if (degrees !== undefined) known += (sensitivity * u) ** 4 / degrees;
  }
  return known === 0 ? Number.POSITIVE_INFINITY : propagate(influences) ** 4 / known;
}
