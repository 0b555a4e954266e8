import { utf8ToBytes } from "@noble/hashes/utils.js";
import { canonicalText, hashOf } from "./canonical.ts";
import type { At, Bodies, Entry, EntryKind, Json } from "./entry.ts";
import { timeOfId, uuidv7 } from "./id.ts";
import { kinds } from "./kinds.ts";
import { readEntry } from "./read.ts";

/** Where the chain of one site and one device stands. */
export interface Head {
  readonly seq: number;
  /** SHA-256 of the last entry's bytes; null before the first. */
  readonly hash: string | null;
}

/** Before anything was written. */
export const noHead: Head = { seq: 0, hash: null };

/** What a person does, before it is an entry. */
export interface Doing<Kind extends EntryKind = EntryKind> {
  readonly site: string;
  readonly box: string | null;
  readonly kind: Kind;
  readonly body: Bodies[Kind];
  readonly by: string;
  readonly device: string;
  readonly at: At;
  /** Entries that said the same fact last, as far as is known here: `headsOf`. */
  readonly after: readonly string[];
  readonly method?: string;
}

export interface Written {
  readonly entry: Entry;
  readonly text: string;
  readonly head: Head;
}

/**
 * Makes the next entry of a device's chain. Its id is later than those of all
 * entries that it comes after or crosses out, even where a clock stands wrong,
 * so that a list by id reads in order. Throws when
 * the caller hands in a body that is none of its kind: a mistake in the program.
 */
export function writeEntry<Kind extends EntryKind>(doing: Doing<Kind>, head: Head, ms: number, random: Uint8Array): Written {
  const crossed = doing.kind === "crossed-out" ? [(doing.body as Bodies["crossed-out"]).entry] : [];
  const latest = [...doing.after, ...crossed].reduce((last, id) => Math.max(last, timeOfId(id) + 1), 0);
  const entry: Entry = {
    v: 1,
    id: uuidv7(Math.max(ms, latest), random),
    site: doing.site,
    box: doing.box,
    kind: doing.kind,
    kindVersion: kinds[doing.kind].version,
    at: doing.at,
    by: doing.by,
    device: doing.device,
    seq: head.seq + 1,
    prev: head.hash,
    after: [...doing.after],
    body: doing.body as unknown as { readonly [name: string]: Json },
    method: doing.method ?? null,
  };
  const read = readEntry(JSON.parse(canonicalText(entry)) as Json);
  if (!read.ok) throw new Error(`not an entry: ${read.fault.id} at ${read.fault.at}`);
  return { entry: read.entry, text: read.text, head: { seq: entry.seq, hash: hashOf(utf8ToBytes(read.text)) } };
}
