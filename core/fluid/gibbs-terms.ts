/** Terms n x^I y^J of a Gibbs energy, laid out for summing. */
export interface GibbsTerms {
  readonly count: number;
  readonly rows: readonly (readonly [I: number, J: number, n: number])[];
  /** n I and the places of x^(I-1), x^I, y^J and y^(J-2) in the tables of powers. */
  readonly nI: Float64Array;
  readonly nJJ: Float64Array;
  readonly I: Uint8Array;
  readonly J: Uint8Array;
  readonly xPowers: Float64Array;
  readonly yPowers: Float64Array;
  /** Place of y^0 in the table of powers. */
  readonly yZero: number;
}

/** The two derivatives that density and heat capacity need. */
export interface GibbsDerivatives {
  /** First derivative by x. */
  readonly x: number;
  /** Second derivative by y. */
  readonly yy: number;
}

/** Lays out the terms of a published table, rows `[I, J, n]`. */
export function gibbsTerms(rows: GibbsTerms["rows"]): GibbsTerms {
  const lowestJ = Math.min(0, ...rows.map(([, J]) => J)) - 2;
  const highestJ = Math.max(...rows.map(([, J]) => J));
  return {
    count: rows.length,
    rows,
    nI: Float64Array.from(rows, ([I, , n]) => n * I),
    nJJ: Float64Array.from(rows, ([, J, n]) => n * J * (J - 1)),
    I: Uint8Array.from(rows, ([I]) => I + 1),
    J: Uint8Array.from(rows, ([, J]) => J - lowestJ),
    xPowers: new Float64Array(Math.max(...rows.map(([I]) => I)) + 2),
    yPowers: new Float64Array(highestJ - lowestJ + 1),
    yZero: -lowestJ,
  };
}

/**
 * Sums the derivatives of the terms at x and y, both above zero. The tables of
 * powers are filled anew on every call, so nothing is carried from one to the next.
 */
export function gibbsDerivatives(terms: GibbsTerms, x: number, y: number): GibbsDerivatives {
  const { count, nI, nJJ, I, J, xPowers, yPowers, yZero } = terms;
  xPowers[0] = 0; // x^-1 goes with I = 0, whose factor is zero
  let power = 1;
  for (let i = 1; i < xPowers.length; i++, power *= x) xPowers[i] = power;
  power = 1;
  for (let j = yZero; j < yPowers.length; j++, power *= y) yPowers[j] = power;
  power = 1 / y;
  for (let j = yZero - 1; j >= 0; j--, power /= y) yPowers[j] = power;
  let byX = 0;
  let byYy = 0;
  for (let k = 0; k < count; k++) {
    const i = I[k] as number;
    const j = J[k] as number;
    byX += (nI[k] as number) * (xPowers[i - 1] as number) * (yPowers[j] as number);
    byYy += (nJJ[k] as number) * (xPowers[i] as number) * (yPowers[j - 2] as number);
  }
  return { x: byX, yy: byYy };
}
