/** How a thing was timed: runs a second of processor time, the middle one of several rounds, and each of them. */
export interface Timed {
  readonly perSecond: number;
  readonly rounds: readonly number[];
}

/** Processor time that this process has used, in seconds. On a machine that others use too it tells more than a clock on the wall. */
function used(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function run(work: () => unknown, times: number): number {
  const start = used();
  for (let i = 0; i < times; i++) work();
  return used() - start;
}

/**
 * Times a function. It is first run for `warm` seconds, so that the engine has
 * compiled what it is going to, then for several rounds of about `seconds` each.
 */
export function timed(work: () => unknown, { rounds = 7, seconds = 0.4, warm = 3 } = {}): Timed {
  let times = 1;
  for (let spent = 0; spent < warm; ) {
    const took = run(work, times);
    spent += took;
    // In batches of a fiftieth of a round, looking at the time costs nothing that counts.
    if (took < seconds / 50) times *= 2;
  }
  const rates = Array.from({ length: rounds }, () => {
    let done = 0;
    let spent = 0;
    while (spent < seconds) {
      spent += run(work, times);
      done += times;
    }
    return done / spent;
  }).sort((a, b) => a - b);
  return { perSecond: rates[Math.floor(rounds / 2)] ?? Number.NaN, rounds: rates };
}
