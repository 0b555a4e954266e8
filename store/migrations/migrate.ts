import { type Kysely, Migrator, NO_MIGRATIONS } from "kysely";
import type { Engine } from "../engine.ts";
import { StoreFault } from "../store.ts";
import { entries } from "./0001-entries.ts";

type Step = (db: Kysely<never>, engine: Engine) => Promise<void>;

/** Every change of the tables, in order. One that was ever published is never edited: add another. */
export const steps: Readonly<Record<string, Step>> = { "0001-entries": entries };

const migrationTableName = "migrations";

/**
 * Brings the tables up to date, or up to one step of them. All of it is kept
 * or none. Tables of a newer program are left as they are.
 */
export async function migrate(db: Kysely<never>, engine: Engine, schema?: string, upTo?: string): Promise<void> {
  const migrator = new Migrator({
    db,
    provider: {
      getMigrations: async () =>
        Object.fromEntries(Object.entries(steps).map(([name, up]) => [name, { up: (on: Kysely<never>) => up(on, engine) }])),
    },
    migrationTableName,
    migrationLockTableName: "migrations_lock",
    ...(schema === undefined ? {} : { migrationTableSchema: schema }),
  });
  const newer = (await applied(db, schema)).find((name) => !Object.hasOwn(steps, name));
  if (newer !== undefined) throw new StoreFault("store-newer", { step: newer });
  const { error } = await (upTo === undefined ? migrator.migrateToLatest() : migrator.migrateTo(upTo || NO_MIGRATIONS));
  if (error !== undefined) throw error;
}

/** Names of the steps that a database has behind it. */
async function applied(db: Kysely<never>, schema?: string): Promise<readonly string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === migrationTableName && (schema === undefined || table.schema === schema))) return [];
  const rows = await (db as unknown as Kysely<{ migrations: { name: string } }>).selectFrom(migrationTableName).select("name").execute();
  return rows.map((row) => row.name);
}
