import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import { scratchDatabase } from "./postgres/scratch.ts";

/** A place for a store that nobody else has. */
export interface Place {
  /** What `open` is given. */
  readonly where: string;
  clear(): Promise<void>;
}

/** A folder of its own under the system's temporary one. */
export function ownFolder(): { readonly folder: string; clear(): void } {
  const folder = mkdtempSync(join(tmpdir(), "ringwright-"));
  return { folder, clear: () => rmSync(folder, { recursive: true, force: true }) };
}

/** Both homes of the store, each with a fresh place for a test. */
export const homes: readonly { readonly home: "sqlite" | "postgres"; readonly fresh: () => Promise<Place> }[] = [
  {
    home: "sqlite",
    async fresh() {
      const { folder, clear } = ownFolder();
      return { where: folder, clear: async () => clear() };
    },
  },
  {
    home: "postgres",
    async fresh() {
      const { url, drop } = await scratchDatabase(inject("postgres"));
      return { where: url, clear: drop };
    },
  },
];
