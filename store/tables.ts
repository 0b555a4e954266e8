/** Every table, alike in both homes. The site stands first in every key, so that sites can be spread over machines. */
export interface Tables {
  /** Entries. `bytes` is the truth, the canonical text in UTF-8; every other column is worked out from it. */
  readonly entries: {
    readonly site: string;
    /** Counts up from 1 per site in the order of keeping: the cursor. Places of entries that were not kept stay empty. */
    readonly position: number;
    readonly id: string;
    readonly box: string | null;
    readonly device: string;
    readonly seq: number;
    readonly bytes: Uint8Array;
  };
  /** How far each site has counted. Its row is the lock that appends of a site wait for. */
  readonly sites: { readonly site: string; readonly cursor: number; readonly entries: number };
  readonly people: { readonly person: string; readonly name: string };
  readonly settings: { readonly name: string; readonly value: string };
}

/** The text that a row of entries keeps. */
export function textOf({ bytes }: { readonly bytes: Uint8Array }): string {
  return Buffer.from(bytes).toString("utf8");
}
