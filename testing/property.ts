import { appendFileSync } from "node:fs";
import fc, { type Arbitrary } from "fast-check";
import { expect, test } from "vitest";
import tiers from "./tiers.json" with { type: "json" };

type Counts = (typeof tiers)["quick"];
export type CountName = Exclude<keyof Counts, "tests">;

const tier = (process.env.RINGWRIGHT_TIER ?? "quick") as keyof typeof tiers;
const fixedSeed = 20260101;
const freshSeed = Number(process.env.RINGWRIGHT_SEED ?? Date.now() % 2 ** 31);

/** How many cases of a named kind this tier runs. */
export function runs(count: CountName): number {
  return tiers[tier][count];
}

/** Writes down how many cases of a kind were run, so that fewer is a failure and not a silence. */
export function counted(count: CountName, done: number): void {
  expect(done).toBeGreaterThanOrEqual(runs(count));
  const file = process.env.RINGWRIGHT_COUNTS;
  if (file) appendFileSync(file, `${count}\t${done}\n`);
}

/** A test with a fixed seed and one with a fresh seed. */
function twice(title: string, count: CountName, run: (seed: number, numRuns: number) => void | Promise<void>): void {
  for (const [kind, seed] of [
    ["fixed", fixedSeed],
    ["fresh", freshSeed],
  ] as const)
    test(`${title} (${kind} seed ${seed}, ${runs(count)} cases)`, { timeout: 0 }, () => run(seed, runs(count)));
}

/**
 * One property over random inputs: run with a fixed seed and with a fresh one,
 * as many times as the tier says, and counted.
 */
export function property<T extends [unknown, ...unknown[]]>(
  title: string,
  arbitraries: { [N in keyof T]: Arbitrary<T[N]> },
  holds: (...values: T) => void,
  count: CountName = "property",
): void {
  twice(title, count, (seed, numRuns) => {
    let done = 0;
    const counting = fc.property(...arbitraries, (...values) => {
      done++;
      holds(...(values as T));
    });
    fc.assert(counting, { seed, numRuns });
    counted(count, done);
  });
}

/** The same for what has to be waited for. */
export function propertyInTime<T extends [unknown, ...unknown[]]>(
  title: string,
  arbitraries: { [N in keyof T]: Arbitrary<T[N]> },
  holds: (...values: T) => Promise<void>,
  count: CountName = "property",
): void {
  twice(title, count, async (seed, numRuns) => {
    let done = 0;
    const counting = fc.asyncProperty(...arbitraries, async (...values) => {
      done++;
      await holds(...(values as T));
    });
    await fc.assert(counting, { seed, numRuns });
    counted(count, done);
  });
}
