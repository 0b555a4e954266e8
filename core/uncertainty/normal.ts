/** Coefficients of J. F. Hart, Computer Approximations (1968), algorithm 5666, as G. West gives them (Wilmott, 2005); from memory, compared with SciPy. */
const upper = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871, 221.213596169931, 220.206867912376,
] as const;
const lower = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831, 793.826512519948,
  440.413735824752,
] as const;

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}

/**
 * Probability that a normally distributed value lies below a limit.
 *
 *   P = Φ((limit - mean) / u)
 *
 * Units: limit, mean and u alike; P a plain number from 0 to 1.
 * Range: u from 0; with u = 0 the value is its mean, and a limit at the mean itself has even odds.
 * Source: J. F. Hart, Computer Approximations, 1968, algorithm 5666, good to about 15 digits.
 * @example probabilityBelow(11, 10, 1) // 0.8413447460685
 */
export function probabilityBelow(limit: number, mean: number, u: number): number {
  if (limit === mean) return 0.5;
  if (u <= 0) return limit > mean ? 1 : 0;
  const z = (limit - mean) / u;
  const x = Math.abs(z);
  let tail: number;
  if (x > 37) tail = 0;
  else if (x < 7.07106781186547) tail = (Math.exp(-x * x * 0.5) * polynomial(upper, x)) / polynomial(lower, x);
  else {
    // A continued fraction far out in the tail.
    const fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
    tail = Math.exp(-x * x * 0.5) / fraction / 2.506628274631;
  }
  return z > 0 ? 1 - tail : tail;
}
