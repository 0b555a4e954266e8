import { storeOver } from "./over.ts";
import type { Store } from "./store.ts";

/** How a store is opened. */
export interface Opening {
  /** Where this program can be reached, for whoever starts a second one on the same folder. */
  readonly address?: string;
}

/**
 * Opens the store of a folder, or of a PostgreSQL database by its address,
 * such as `postgres://name@host/database`. Throws `StoreFault` when it can't.
 */
export async function open(where: string, { address = "" }: Opening = {}): Promise<Store> {
  // Drivers are loaded when they are wanted: one installation uses one of them.
  if (/^postgres(?:ql)?:\/\//u.test(where)) {
    const { postgresHome } = await import("./postgres/home.ts");
    return storeOver(await postgresHome(where));
  }
  const { sqliteHome } = await import("./sqlite/home.ts");
  return storeOver(await sqliteHome(where, address));
}
