import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { StoreFault } from "../store.ts";

/**
 * Holds a folder for this process alone, by SQLite's lock on a small file of
 * its own. The operating system drops that lock when the process ends,
 * however it ends. Whoever comes second is told the address of the first.
 */
export function hold(folder: string, address: string): () => void {
  const told = join(folder, "ringwright.address");
  const lock = new Database(join(folder, "ringwright.lock"));
  try {
    lock.exec("begin exclusive");
  } catch (fault) {
    lock.close();
    if (!(fault instanceof Database.SqliteError) || fault.code !== "SQLITE_BUSY") throw fault;
    throw new StoreFault("store-in-use", { folder, address: addressIn(told) }, { cause: fault });
  }
  writeFileSync(told, address);
  return () => {
    rmSync(told, { force: true });
    lock.close();
  };
}

function addressIn(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    // The first is just starting or stopping: there is no address to tell.
    return "";
  }
}
