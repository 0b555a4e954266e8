import type { Kysely } from "kysely";
import type { Tables } from "./tables.ts";

/** What the two homes do differently. */
export interface Home {
  /** Runs one question that stands alone. */
  ask<T>(question: (db: Kysely<Tables>) => Promise<T>): Promise<T>;
  /** Runs a change: all of it is on disk before this says so, or none of it is kept. */
  change<T>(change: (db: Kysely<Tables>) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

/** Runs something and lets the faults of an engine out as `StoreFault`. */
export async function inOurIds<T>(run: () => Promise<T>, ours: (fault: unknown) => unknown): Promise<T> {
  try {
    return await run();
  } catch (fault) {
    throw ours(fault);
  }
}
