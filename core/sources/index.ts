import { books } from "./books.ts";
import { forums } from "./forums.ts";
import { government } from "./government.ts";
import { libraries } from "./libraries.ts";
import { manuals } from "./manuals.ts";
import { methods } from "./methods.ts";
import { military } from "./military.ts";
import { notes } from "./notes.ts";
import { own } from "./own.ts";
import { pages } from "./pages.ts";
import { papers } from "./papers.ts";
import { sheets } from "./sheets.ts";
import type { Seen } from "./source.ts";
import { standards } from "./standards.ts";
import { trade } from "./trade.ts";

export type { Seen, Source } from "./source.ts";

/** Every source the project cites, once, by id. */
export const sources = {
  ...books,
  ...standards,
  ...military,
  ...government,
  ...papers,
  ...methods,
  ...sheets,
  ...manuals,
  ...trade,
  ...notes,
  ...pages,
  ...forums,
  ...libraries,
  ...own,
} as const;

/** Id of a source in the registry. */
export type SourceId = keyof typeof sources;

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
