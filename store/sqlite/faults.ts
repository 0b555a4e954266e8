import { StoreFault } from "../store.ts";

const ids: Readonly<Record<string, StoreFault["id"]>> = {
  SQLITE_FULL: "store-full",
  SQLITE_READONLY: "store-unwritable",
  SQLITE_CANTOPEN: "store-unwritable",
  SQLITE_PERM: "store-unwritable",
  SQLITE_IOERR: "store-unwritable",
  SQLITE_BUSY: "store-in-use",
  SQLITE_LOCKED: "store-in-use",
  SQLITE_CORRUPT: "store-damaged",
  SQLITE_NOTADB: "store-damaged",
  ENOSPC: "store-full",
  EDQUOT: "store-full",
};

/** A fault of SQLite or of the file system in our ids; what is neither stays what it is. */
export function faultOfFolder(folder: string, fault: unknown): unknown {
  if (fault instanceof StoreFault || !(fault instanceof Error)) return fault;
  const code = "code" in fault && typeof fault.code === "string" ? fault.code : "";
  // SQLITE_IOERR_WRITE and its kin say more than we tell apart.
  const id =
    ids[code] ??
    ids[code.split("_").slice(0, 2).join("_")] ??
    (("syscall" in fault || /unable to open/iu.test(fault.message)) && "store-unwritable");
  return id ? new StoreFault(id, { folder }, { cause: fault }) : fault;
}
