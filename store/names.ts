import type { Home } from "./home.ts";

/** Names of people and small settings: what may change. */
export function namesIn(home: Home) {
  return {
    async people() {
      return home.ask((db) => db.selectFrom("people").selectAll().orderBy("person").execute());
    },

    async namePerson(person: string, name: string | null): Promise<void> {
      await home.change(async (db) => {
        if (name === null) await db.deleteFrom("people").where("person", "=", keepable(person)).execute();
        else
          await db
            .insertInto("people")
            .values({ person: keepable(person), name: keepable(name) })
            .onConflict((taken) => taken.column("person").doUpdateSet({ name }))
            .execute();
      });
    },

    async setting(name: string): Promise<string | undefined> {
      const row = await home.ask((db) => db.selectFrom("settings").select("value").where("name", "=", keepable(name)).executeTakeFirst());
      return row?.value;
    },

    async keepSetting(name: string, value: string): Promise<void> {
      await home.change(async (db) => {
        await db
          .insertInto("settings")
          .values({ name: keepable(name), value: keepable(value) })
          .onConflict((taken) => taken.column("name").doUpdateSet({ value }))
          .execute();
      });
    },
  };
}

/** SQLite would keep such a text only up to U+0000, and PostgreSQL not at all: better refused than cut. */
function keepable(text: string): string {
  if (text.includes("\u0000") || /\p{Surrogate}/u.test(text)) throw new RangeError("U+0000 and halves of surrogate pairs are not kept");
  return text;
}
