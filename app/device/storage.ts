import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** One entry on this device. Its canonical text is the truth; the rest is for finding it. */
export interface StoredEntry {
  readonly id: string;
  readonly site: string;
  readonly text: string;
  /** 1 until the server has said that it keeps it; then absent. */
  readonly unsent?: 1;
  /** Why the server would not take it, as it said. */
  readonly refused?: string;
}

interface StoredDraft {
  /** Screen and field: `box/019…/measure/shaft`. */
  readonly key: string;
  readonly text: string;
  readonly at: number;
}

interface Tables extends DBSchema {
  entries: { key: string; value: StoredEntry; indexes: { unsent: number; site: string } };
  drafts: { key: string; value: StoredDraft };
  settings: { key: string; value: unknown };
}

export type Storage = IDBPDatabase<Tables>;

/** Opens what is kept on this device. */
export function openStorage(name = "ringwright"): Promise<Storage> {
  return openDB<Tables>(name, 1, {
    upgrade(database) {
      const entries = database.createObjectStore("entries", { keyPath: "id" });
      entries.createIndex("unsent", "unsent");
      entries.createIndex("site", "site");
      database.createObjectStore("drafts", { keyPath: "key" });
      database.createObjectStore("settings");
    },
    // A newer page of the same app waits for this one to let go.
    blocking(_from, _to, event) {
      (event.target as IDBDatabase).close();
    },
  });
}

/** On disk before it is said to be kept. */
export const strict = { durability: "strict" } as const;
