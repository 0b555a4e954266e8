import { isId } from "@ringwright/logbook";
import { type Appending, append } from "./append.ts";
import type { Home } from "./home.ts";
import type { Appended, Kept, Page } from "./store.ts";
import { textOf } from "./tables.ts";

/** Appending entries of one site and reading them. */
export function entriesIn(home: Home) {
  const spelled: Appending["spelled"] = new Map();
  return {
    async append(site: string, batch: readonly Kept[]): Promise<Appended> {
      const stranger = batch.find(({ entry }) => entry.site !== site);
      if (!isId(site) || stranger) throw new RangeError(`entry ${stranger?.entry.id} is not of site ${site}`);
      return home.change((db) => append({ db, site, spelled }, batch));
    },

    async since(site: string, cursor: number, limit: number): Promise<Page> {
      if (!isId(site)) return { texts: [], cursor, more: false };
      const rows = await home.ask((db) =>
        db
          .selectFrom("entries")
          .select(["position", "bytes"])
          .where("site", "=", site)
          .where("position", ">", cursor)
          .orderBy("position")
          .limit(limit + 1)
          .execute(),
      );
      const page = rows.slice(0, limit);
      return { texts: page.map(textOf), cursor: page.at(-1)?.position ?? cursor, more: rows.length > limit };
    },

    async ofBox(site: string, box: string): Promise<readonly string[]> {
      if (!isId(site) || !isId(box)) return [];
      const rows = await home.ask((db) =>
        db.selectFrom("entries").select("bytes").where("site", "=", site).where("box", "=", box).orderBy("position").execute(),
      );
      return rows.map(textOf);
    },

    async entry(site: string, id: string): Promise<string | undefined> {
      if (!isId(site) || !isId(id)) return undefined;
      const row = await home.ask((db) =>
        db.selectFrom("entries").select("bytes").where("site", "=", site).where("id", "=", id).executeTakeFirst(),
      );
      return row && textOf(row);
    },

    async sites() {
      return home.ask((db) => db.selectFrom("sites").selectAll().where("entries", ">", 0).orderBy("site").execute());
    },
  };
}
