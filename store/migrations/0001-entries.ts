import type { Kysely } from "kysely";
import type { Engine } from "../engine.ts";

/** Entries, how far each site has counted, names of people, settings. */
export async function entries(db: Kysely<never>, { text, bytes, count }: Engine): Promise<void> {
  await db.schema
    .createTable("sites")
    .addColumn("site", text, (column) => column.notNull())
    .addColumn("cursor", count, (column) => column.notNull())
    .addColumn("entries", count, (column) => column.notNull())
    .addPrimaryKeyConstraint("sites_key", ["site"])
    .execute();
  await db.schema
    .createTable("entries")
    .addColumn("site", text, (column) => column.notNull())
    .addColumn("position", count, (column) => column.notNull())
    .addColumn("id", text, (column) => column.notNull())
    .addColumn("box", text)
    .addColumn("device", text, (column) => column.notNull())
    .addColumn("seq", count, (column) => column.notNull())
    .addColumn("bytes", bytes, (column) => column.notNull())
    .addPrimaryKeyConstraint("entries_key", ["site", "position"])
    .addUniqueConstraint("entries_id", ["site", "id"])
    .addUniqueConstraint("entries_chain", ["site", "device", "seq"])
    .execute();
  await db.schema.createIndex("entries_box").on("entries").columns(["site", "box", "position"]).execute();
  await db.schema
    .createTable("people")
    .addColumn("person", text, (column) => column.notNull())
    .addColumn("name", text, (column) => column.notNull())
    .addPrimaryKeyConstraint("people_key", ["person"])
    .execute();
  await db.schema
    .createTable("settings")
    .addColumn("name", text, (column) => column.notNull())
    .addColumn("value", text, (column) => column.notNull())
    .addPrimaryKeyConstraint("settings_key", ["name"])
    .execute();
}
