import { randomBytes } from "node:crypto";
import pg from "pg";

/** A database of its own for one test, on the server that the tests were given. */
export interface Scratch {
  readonly url: string;
  drop(): Promise<void>;
}

/** Makes an empty database on a server. */
export async function scratchDatabase(server: string): Promise<Scratch> {
  const name = `ringwright_test_${randomBytes(8).toString("hex")}`;
  await run(server, `create database ${name}`);
  return {
    url: server.replace(/^(postgres(?:ql)?:\/\/[^/?]*)(?:\/[^?]*)?/u, `$1/${name}`),
    drop: () => run(server, `drop database ${name} with (force)`),
  };
}

async function run(server: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: server });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
