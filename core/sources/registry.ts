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
import { standards } from "./standards.ts";
import { trade } from "./trade.ts";

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
