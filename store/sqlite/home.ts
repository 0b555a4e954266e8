import { join } from "node:path";
import { Kysely, SqliteAdapter, SqliteDialect, sql } from "kysely";
import Database from "libsql";
import { sqliteEngine } from "../engine.ts";
import { type Home, inOurIds } from "../home.ts";
import { migrate } from "../migrations/migrate.ts";
import type { Tables } from "../tables.ts";
import { faultOfFolder } from "./faults.ts";
import { claim } from "./folder.ts";
import { hold } from "./lock.ts";
import { statementsOf } from "./statements.ts";
import { turns } from "./turns.ts";

/** SQLite makes and changes tables inside a transaction; Kysely leaves that out unless told. */
class Adapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

class Dialect extends SqliteDialect {
  override createAdapter(): SqliteAdapter {
    return new Adapter();
  }
}

/** Opens the database file in a folder that is held already. A commit is on disk before it is said. */
export function openDatabase(folder: string): Database.Database {
  const database = new Database(join(folder, "ringwright.db"));
  for (const pragma of ["journal_mode = wal", "synchronous = full", "foreign_keys = on"]) database.pragma(pragma);
  return database;
}

/** Kysely over a database of SQLite. */
export function kyselyOf(database: Database.Database): Kysely<Tables> {
  return new Kysely<Tables>({ dialect: new Dialect({ database: statementsOf(database) }) });
}

/** The home in a folder. `address` is what a second start on the same folder is told. */
export async function sqliteHome(folder: string, address = ""): Promise<Home> {
  const ours = (fault: unknown) => faultOfFolder(folder, fault);
  return inOurIds(async () => {
    claim(folder);
    const release = hold(folder, address);
    try {
      return await homeOf(openDatabase(folder), ours, release);
    } catch (fault) {
      release();
      throw fault;
    }
  }, ours);
}

/** A home over an open database. */
export async function homeOf(database: Database.Database, ours: (fault: unknown) => unknown, release: () => void): Promise<Home> {
  const db = kyselyOf(database);
  try {
    await migrate(db as unknown as Kysely<never>, sqliteEngine);
  } catch (fault) {
    database.close();
    throw fault;
  }
  const inTurn = turns();
  return {
    ask: (question) => inOurIds(() => inTurn(() => question(db)), ours),
    change: (change) => inOurIds(() => inTurn(() => db.transaction().execute(change)), ours),
    close: () =>
      inOurIds(async () => {
        try {
          // Everything into the one file: the driver may hold on to the log beside it for longer than we do.
          await inTurn(() => sql`pragma wal_checkpoint(truncate)`.execute(db));
        } finally {
          await db.destroy();
          release();
        }
      }, ours),
  };
}
