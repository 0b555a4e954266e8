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

/**
 * One property over random inputs: run with a fixed seed and with a fresh one,
 * as many times as the tier says. The runs are counted and the count is
 * written down, so that fewer is a failure and not a silence.
 */
export function property<T extends [unknown, ...unknown[]]>(
  title: string,
  arbitraries: { [N in keyof T]: Arbitrary<T[N]> },
  holds: (...values: T) => void,
  count: CountName = "property",
): void {
  for (const [kind, seed] of seeds) {
    test(titleOf(title, kind, seed, count), { timeout: 0 }, () => {
      let done = 0;
      fc.assert(
        fc.property(...arbitraries, (...values) => {
          done++;
          holds(...(values as T));
        }),
        { seed, numRuns: runs(count) },
      );
      written(done, count);
    });
  }
}

/** The same for what has to be waited for. */
export function slowProperty<T extends [unknown, ...unknown[]]>(
  title: string,
  arbitraries: { [N in keyof T]: Arbitrary<T[N]> },
  holds: (...values: T) => Promise<void>,
  count: CountName,
): void {
  for (const [kind, seed] of seeds) {
    test(titleOf(title, kind, seed, count), { timeout: 0 }, async () => {
      let done = 0;
      await fc.assert(
        fc.asyncProperty(...arbitraries, async (...values) => {
          done++;
          await holds(...(values as T));
        }),
        { seed, numRuns: runs(count) },
      );
      written(done, count);
    });
  }
}

const seeds = [
  ["fixed", fixedSeed],
  ["fresh", freshSeed],
] as const;

function titleOf(title: string, kind: string, seed: number, count: CountName): string {
  return `${title} (${kind} seed ${seed}, ${runs(count)} cases)`;
}

function written(done: number, count: CountName): void {
  expect(done).toBeGreaterThanOrEqual(runs(count));
  const file = process.env.RINGWRIGHT_COUNTS;
  if (file) appendFileSync(file, `${count}\t${done}\n`);
}
