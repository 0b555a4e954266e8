import { type Kysely, Migrator } from "kysely";
import type { Engine } from "../engine.ts";
import { StoreFault } from "../store.ts";
import { entries } from "./0001-entries.ts";

/** Changes of the tables by name, in the order of their names. */
export type Steps = Readonly<Record<string, (db: Kysely<never>, engine: Engine) => Promise<void>>>;

/** Every change there was. One that was ever published is never edited: another follows it. */
export const steps: Steps = { "0001-entries": entries };

const migrationTableName = "migrations";

/** Brings the tables up to date: by all that is missing, or not at all. Tables of a newer program are left as they are. */
export async function migrate(db: Kysely<never>, engine: Engine, wanted: Steps = steps): Promise<void> {
  const newer = (await applied(db, engine)).find((name) => !Object.hasOwn(wanted, name));
  if (newer !== undefined) throw new StoreFault("store-newer", { step: newer });
  const migrations = Object.entries(wanted).map(([name, up]) => [name, { up: (on: Kysely<never>) => up(on, engine) }]);
  const { error } = await new Migrator({
    db,
    provider: { getMigrations: async () => Object.fromEntries(migrations) },
    migrationTableName,
    migrationLockTableName: "migrations_lock",
    ...(engine.schema === undefined ? {} : { migrationTableSchema: engine.schema }),
  }).migrateToLatest();
  if (error !== undefined) throw error;
}

/** Names of the changes that a database has behind it. */
async function applied(db: Kysely<never>, { schema }: Engine): Promise<readonly string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === migrationTableName && (schema === undefined || table.schema === schema))) return [];
  const rows = await (db as unknown as Kysely<{ migrations: { name: string } }>).selectFrom(migrationTableName).select("name").execute();
  return rows.map((row) => row.name);
}
