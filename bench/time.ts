/** How a thing was timed: runs a second in the middle one of several rounds. */
export interface Timed {
  readonly perSecond: number;
  readonly rounds: readonly number[];
}

/** Times a function: warmed up, then the middle of several rounds of about `seconds` each. */
export function timed(work: () => unknown, { rounds = 7, seconds = 0.4 } = {}): Timed {
  const enough = (limit: number) => {
    const start = process.hrtime.bigint();
    let done = 0;
    let spent = 0;
    while (spent < limit) {
      for (let i = 0; i < 8; i++) work();
      done += 8;
      spent = Number(process.hrtime.bigint() - start) / 1e9;
    }
    return done / spent;
  };
  // Long enough for the engine to have compiled what is timed, several times over.
  enough(8 * seconds);
  const rates = Array.from({ length: rounds }, () => enough(seconds)).sort((a, b) => a - b);
  return { perSecond: rates[Math.floor(rounds / 2)] ?? Number.NaN, rounds: rates };
}
