import { sql } from "kysely";
import { entriesIn } from "./entries.ts";
import type { Home } from "./home.ts";
import { namesIn } from "./names.ts";
import type { Store } from "./store.ts";

/** The store over a home: the same questions, whichever engine answers. */
export function storeOver(home: Home): Store {
  return {
    ...entriesIn(home),
    ...namesIn(home),
    async ping() {
      await home.ask((db) => sql`select 1`.execute(db));
    },
    close: () => home.close(),
  };
}
