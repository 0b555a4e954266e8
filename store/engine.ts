import { type RawBuilder, sql } from "kysely";

/** How an engine spells the kinds of columns that we use. */
export interface Engine {
  /** Text that compares by its bytes, whatever language the database speaks. */
  readonly text: RawBuilder<unknown>;
  readonly bytes: RawBuilder<unknown>;
  /** Whole numbers up to 2^53. */
  readonly count: RawBuilder<unknown>;
}

export const sqliteEngine: Engine = { text: sql`text`, bytes: sql`blob`, count: sql`integer` };
export const postgresEngine: Engine = { text: sql`text collate "C"`, bytes: sql`bytea`, count: sql`bigint` };
