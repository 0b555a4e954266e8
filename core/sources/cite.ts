import type { SourceId } from "./registry.ts";
import type { Seen } from "./source.ts";

/** Where one value comes from. */
export interface Citation {
  readonly source: SourceId;
  /** Place inside the source: page, table, clause, step. */
  readonly at?: string;
  /** How this one value was seen, where that differs from the source's own `seen`. */
  readonly seen?: Seen;
}

/**
 * Makes a citation. Left-out parts stay absent, so that a citation survives a round trip through JSON unchanged.
 *
 * @param source id in the registry
 * @param at page, table, clause or step
 * @param seen given only where this value was seen otherwise than the source as a whole
 * @example cite("neale-1995", "table 25.2") // { source: "neale-1995", at: "table 25.2" }
 */
export function cite(source: SourceId, at?: string, seen?: Seen): Citation {
  return {
    source,
    ...(at === undefined ? {} : { at }),
    ...(seen === undefined ? {} : { seen }),
  };
}
