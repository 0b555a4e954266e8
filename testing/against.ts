import { appendFileSync } from "node:fs";
import { type Citation, sources } from "@ringwright/core/sources";
import { expect, test } from "vitest";

/** One figure of ours beside the one that an outside source gives. */
export interface Comparison {
  /** The case, as a reader would say it. */
  readonly what: string;
  /** Their figure, as printed or computed there. */
  readonly theirs: number;
  /** Ours, worked out by the program, in the same unit. */
  readonly ours: () => number;
  readonly unit: string;
  /** Largest difference allowed, absolute or relative to theirs. */
  readonly within: { readonly absolute: number } | { readonly relative: number };
}

export interface Outside {
  /** Which page of docs/verification/ this stands on: the topic's folder name. */
  readonly topic: string;
  /** What is checked, as a title. */
  readonly check: string;
  /** Where their figures come from. */
  readonly source: Citation;
  /** Why the tolerance has its size: printed digits, rounded inputs, another formulation. */
  readonly tolerance: string;
}

/**
 * Compares the program with an outside source, row by row, each row a test.
 * Every row is also written down for docs/verification/, so that the pages
 * cannot say anything that was not just checked.
 */
export function against(outside: Outside, rows: readonly Comparison[]): void {
  const source = sources[outside.source.source];
  const place = [source.title, outside.source.at].filter(Boolean).join(", ");
  test(`${outside.check}: the table has rows`, () => expect(rows.length).toBeGreaterThan(0));
  for (const row of rows) {
    test(`${outside.check}: ${row.what} (${place})`, () => {
      const ours = row.ours();
      const difference = Math.abs(ours - row.theirs);
      const allowed = "absolute" in row.within ? row.within.absolute : row.within.relative * Math.abs(row.theirs);
      expect(difference, `${row.what}: ours ${ours}, theirs ${row.theirs} ${row.unit}`).toBeLessThanOrEqual(allowed);
      const file = process.env.RINGWRIGHT_AGAINST;
      if (!file) return;
      const { ours: _, ...printed } = row;
      appendFileSync(file, `${JSON.stringify({ ...outside, place, seen: outside.source.seen ?? source.seen, ...printed, ours })}\n`);
    });
  }
}
