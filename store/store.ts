import type { Entry } from "@ringwright/logbook";

/** An entry as it is kept: read once, with the canonical text that is its truth. */
export interface Kept {
  readonly entry: Entry;
  readonly text: string;
}

/** What became of each entry that was handed in, by id, as if they had come one after the other. */
export interface Appended {
  /** Kept for good by this call: on disk before it was said. */
  readonly kept: readonly string[];
  /** Kept before with the very same bytes. */
  readonly known: readonly string[];
  /** Not kept: the id, or the place in its device's chain, is taken by another entry. Nothing that was there was touched. */
  readonly clashing: readonly string[];
  /** The site's cursor after this call. It rises with every entry kept, not always by one. */
  readonly cursor: number;
}

/** Entries of a site in the order in which they came, after a cursor. */
export interface Page {
  readonly texts: readonly string[];
  /** Where to go on from. */
  readonly cursor: number;
  readonly more: boolean;
}

/**
 * Where entries are kept for good. Two homes, one behaviour: SQLite in a file,
 * and PostgreSQL. Every call names one site. A promise that is kept means that
 * the data is on disk.
 */
export interface Store {
  /** Keeps entries of one site, all or none of those that do not clash, in one transaction. The same entries again change nothing. */
  append(site: string, entries: readonly Kept[]): Promise<Appended>;
  /** Entries of a site after a cursor, 0 for all, in the order they came; at most `limit`. A later page never misses an entry of an earlier cursor. */
  since(site: string, cursor: number, limit: number): Promise<Page>;
  /** Every entry about one box, in the order they came. */
  ofBox(site: string, box: string): Promise<readonly string[]>;
  entry(site: string, id: string): Promise<string | undefined>;
  /** Sites that have entries, with how many. */
  sites(): Promise<readonly { readonly site: string; readonly entries: number; readonly cursor: number }[]>;
  /** Names of people by their opaque id: a table that may change, apart from the entries. */
  people(): Promise<readonly { readonly person: string; readonly name: string }[]>;
  /** Gives a person a name, another name, or none any more. */
  namePerson(person: string, name: string | null): Promise<void>;
  /** Small settings of this installation by name, such as which site it opens. */
  setting(name: string): Promise<string | undefined>;
  keepSetting(name: string, value: string): Promise<void>;
  /** For a health check: answers, or throws `StoreFault`. */
  ping(): Promise<void>;
  close(): Promise<void>;
}

/** Why a store can't be opened or used, in ids that words/ turns into sentences. */
export class StoreFault extends Error {
  readonly id: "store-unwritable" | "store-foreign" | "store-in-use" | "store-unreachable" | "store-newer" | "store-full" | "store-damaged";
  readonly shown: Readonly<Record<string, string>>;
  constructor(id: StoreFault["id"], shown: Readonly<Record<string, string>> = {}, options?: ErrorOptions) {
    super(id, options);
    this.id = id;
    this.shown = shown;
  }
}
