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

/** Runs a function for `warm` seconds, so that the engine has compiled what it is going to; hands back a way to time one round of about `seconds`. */
function warmed(work: () => unknown, seconds: number, warm: number): () => number {
  let times = 1;
  for (let spent = 0; spent < warm; ) {
    const took = run(work, times);
    spent += took;
    // In batches of a fiftieth of a round, looking at the time costs nothing that counts.
    if (took < seconds / 50) times *= 2;
  }
  return () => {
    let done = 0;
    let spent = 0;
    while (spent < seconds) {
      spent += run(work, times);
      done += times;
    }
    return done / spent;
  };
}

const middle = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Times a function: several rounds, of which the middle one counts. */
export function timed(work: () => unknown, { rounds = 7, seconds = 0.4, warm = 3 } = {}): number {
  const round = warmed(work, seconds, warm);
  return middle(Array.from({ length: rounds }, round));
}

/** Times two functions in turns, so that a busy spell of the machine falls on both alike; `ratio` is the middle one of all pairs of rounds. */
export function inTurns(one: () => unknown, other: () => unknown, { rounds = 25, seconds = 0.1, warm = 3 } = {}) {
  const rounded = [warmed(one, seconds, warm), warmed(other, seconds, warm)] as const;
  const pairs = Array.from({ length: rounds }, () => [rounded[0](), rounded[1]()] as const);
  return {
    one: middle(pairs.map(([first]) => first)),
    other: middle(pairs.map(([, second]) => second)),
    ratio: middle(pairs.map(([first, second]) => first / second)),
  };
}
