import type { Length } from "../units/index.ts";
import { type Band, band, rule, type Uncertain, uncertain, type Workings } from "../workings/index.ts";
import type { RingFacts } from "./facts.ts";
import type { RingHeight } from "./ring-height.ts";
import { length } from "./ring-section.ts";
import type { RingSetQuestion } from "./survey.ts";

/** How far the follower stands in the box at finger-tight: as reckoned, and between what it can be. */
export interface Entry {
  readonly entry?: Uncertain<Length> | undefined;
  readonly entryBand?: Band<Length> | undefined;
}

const entryRule = rule({
  id: "follower-entry",
  symbol: "E",
  name: "entry",
  expression: "B − z_n",
  unit: "m",
  inputs: [
    { symbol: "B", name: "depth", unit: "m" },
    { symbol: "z_n", name: "setHeight", unit: "m" },
  ],
  citation: { source: "geometry", at: "what the set leaves of the box depth at finger-tight" },
});

const entryEndRule = rule({
  ...entryRule,
  id: "follower-entry-end",
  name: "entryBand",
  expression: "B − z_n + n · (h − h_end)",
  inputs: [
    ...entryRule.inputs,
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "h", name: "ringHeight", unit: "m" },
    { symbol: "h_end", name: "ring-height-end", unit: "m" },
  ],
});

/** What a set of some height leaves of the box depth; undefined when the depth is not known. */
export function entryOf({ depth }: RingSetQuestion, setHeight: number): Length | undefined {
  return depth === undefined ? undefined : ((depth - setHeight) as Length);
}

/** Follower flange to box face, worked out from the nose; undefined when nose or entry is not known. */
export function noseGap({ noseLength }: RingSetQuestion, entry: Length | undefined): Length | undefined {
  return noseLength === undefined || entry === undefined ? undefined : (Math.max(0, noseLength - entry) as Length);
}

/** The entry with its uncertainty and ends. */
export function stepEntry(work: Workings, { depth }: RingSetQuestion, setHeight: Length, rings: number, height: RingHeight): Entry {
  if (depth === undefined) return {};
  const u = (rings * height.uncertainty) as Length;
  const entry = work.step(entryRule, [depth, setHeight], (depth - setHeight) as Length, u);
  const end = (ringHeight: Length) =>
    work.step(
      entryEndRule,
      [depth, setHeight, rings, height.height, ringHeight],
      (depth - setHeight + rings * (height.height - ringHeight)) as Length,
    );
  return { entry: uncertain(entry, u), entryBand: band(end(height.tallest), end(height.lowest)) };
}

/** Says when the follower hardly enters, or not at all. */
export function judgeEntry(
  work: Workings,
  entry: Length,
  low: Length,
  { leastEntry, wantedEntry }: RingFacts,
  given: RingSetQuestion,
): void {
  const least = given.leastEntry ?? leastEntry.value;
  const wanted = given.leastEntry ?? wantedEntry.value;
  const shown = { entry: length(entry), low: length(low), least: length(least) };
  const citation = leastEntry.rule.citation;
  if (entry < least) work.warn({ kind: "limit", input: "depth", says: { id: "rings-no-entry", with: shown }, citation });
  else if (low < wanted) work.warn({ kind: "limit", input: "depth", says: { id: "rings-little-entry", with: shown }, citation });
}
