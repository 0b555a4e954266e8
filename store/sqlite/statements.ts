import type { SqliteDatabase, SqliteStatement } from "kysely";
import type Database from "libsql";

const remembered = 64;

/**
 * What Kysely needs of a database, over libsql: statements are prepared once
 * and used again, and rolling back what SQLite has rolled back by itself (a
 * full disk) is no fault of its own.
 */
export function statementsOf(database: Database.Database): SqliteDatabase {
  const ready = new Map<string, SqliteStatement>();
  const nothing: SqliteStatement = {
    reader: false,
    all: () => [],
    run: () => ({ changes: 0, lastInsertRowid: 0 }),
    iterate: () => [][Symbol.iterator](),
  };
  return {
    close() {
      ready.clear();
      database.close();
    },
    prepare(sql) {
      if (sql === "rollback" && !database.inTransaction) return nothing;
      const known = ready.get(sql) ?? (database.prepare(sql) as unknown as SqliteStatement);
      ready.delete(sql);
      ready.set(sql, known);
      const [oldest] = ready.keys();
      if (ready.size > remembered && oldest !== undefined) ready.delete(oldest);
      return known;
    },
  };
}
