import { type RawBuilder, sql } from "kysely";

/** How an engine spells the kinds of columns that we use. */
export interface Engine {
  /** Text that compares by its bytes, whatever language the database speaks. */
  readonly text: RawBuilder<unknown>;
  readonly bytes: RawBuilder<unknown>;
  /** Whole numbers up to 2^53. */
  readonly count: RawBuilder<unknown>;
  /** Where our tables lie apart from those of others, in a database that may be shared. */
  readonly schema?: string;
}

export const sqliteEngine = { text: sql`text`, bytes: sql`blob`, count: sql`integer` } as const satisfies Engine;
export const postgresEngine = {
  text: sql`text collate "C"`,
  bytes: sql`bytea`,
  count: sql`bigint`,
  schema: "ringwright",
} as const satisfies Engine;
