import { Kysely, PostgresDialect, WithSchemaPlugin } from "kysely";
import pg from "pg";
import { postgresEngine } from "../engine.ts";
import { type Home, inOurIds } from "../home.ts";
import { migrate } from "../migrations/migrate.ts";
import { StoreFault } from "../store.ts";
import type { Tables } from "../tables.ts";
import { faultOfServer } from "./faults.ts";

const { schema } = postgresEngine;
const whole = pg.types.builtins.INT8;
const types = {
  // Our counts stay below 2^53.
  getTypeParser: ((oid: number, format?: "text" | "binary") =>
    oid === whole ? Number : pg.types.getTypeParser(oid, format as "text")) as typeof pg.types.getTypeParser,
};

/** A commit is on disk before it is said, whatever the database was told to prefer. */
const durable = "select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'";

/** Kysely over a database of PostgreSQL, by its address. */
export function kyselyOf(where: string): Kysely<Tables> {
  // A connection that breaks while it rests or between two statements is replaced, and whoever asks next
  // hears of a server that is gone. Unheard, the event would end the program.
  const onBreak = () => undefined;
  const pool = new pg.Pool({
    connectionString: where,
    types,
    connectionTimeoutMillis: 10_000,
    keepAlive: true,
    // Not Kysely's own hook: a connection that broke in there was never given back.
    async onConnect(client) {
      client.on("error", onBreak);
      await client.query(durable);
    },
  });
  pool.on("error", onBreak);
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool }), plugins: [new WithSchemaPlugin(schema)] });
}

/** The home in a database of PostgreSQL. */
export async function postgresHome(where: string): Promise<Home> {
  const address = addressIn(where);
  const ours = (fault: unknown) => faultOfServer(address, fault);
  const db = kyselyOf(where);
  try {
    await migrate(db as unknown as Kysely<never>, postgresEngine);
  } catch (fault) {
    await db.destroy();
    throw ours(fault);
  }
  return {
    ask: (question) => inOurIds(() => question(db), ours),
    // The lock on a site's row only orders appends when every statement sees what was committed before it.
    change: (change) => inOurIds(() => db.transaction().setIsolationLevel("read committed").execute(change), ours),
    close: () => db.destroy(),
  };
}

/** The address as it may be shown: without the password. */
function addressIn(where: string): string {
  try {
    const { user, host, port, database } = new pg.Client(where);
    return `${user ?? ""}@${host}:${port}/${database ?? ""}`;
  } catch (fault) {
    throw new StoreFault("store-unreachable", { address: "" }, { cause: fault });
  }
}
