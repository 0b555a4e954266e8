import type { EntryKind, Json } from "./entry.ts";
import { fieldBody, fitStepBody, type Shape, shape } from "./shapes.ts";

interface KindOf {
  /** The version that this program writes. */
  readonly version: number;
  readonly body: Shape;
  /** What fact the entry says, within its box; none for what simply adds up. */
  readonly fact?: (body: { readonly [name: string]: Json }) => string;
}

const field: KindOf = { version: 1, body: fieldBody, fact: (body) => `field:${String(body.field)}` };

/** Every kind of entry, with what its body must look like and what fact it says. */
export const kinds: Readonly<Record<EntryKind, KindOf>> = {
  "box-described": field,
  measured: field,
  "rings-chosen": field,
  "fit-step": { version: 1, body: fitStepBody, fact: (body) => `step:${String(body.job)}:${String(body.step)}` },
  started: { version: 1, body: shape({ job: "id" }), fact: (body) => `started:${String(body.job)}` },
  reading: { version: 1, body: shape({ what: "text", value: "reading" }, { state: "text" }) },
  adjustment: { version: 1, body: shape({ flats: "numbers" }, { why: "text" }) },
  "old-rings": { version: 1, body: shape({ rings: "groups" }, { note: "text" }) },
  bridge: { version: 1, body: shape({ why: "text", owner: "text", until: "day" }, { job: "id", step: "text" }) },
  photo: { version: 1, body: shape({ hash: "hash", type: "text", bytes: "count" }, { caption: "text" }) },
  note: { version: 1, body: shape({ text: "text" }) },
  "limit-set": {
    version: 1,
    body: shape({ item: "text", value: "limit", setBy: "text" }, { why: "text" }),
    fact: (body) => `limit:${String(body.item)}`,
  },
  "card-issued": { version: 1, body: shape({ card: "id", paper: "text", survey: "anything", figures: "anything" }) },
  signed: { version: 1, body: shape({ entry: "id", meaning: "text", name: "text" }) },
  "crossed-out": { version: 1, body: shape({ entry: "id" }, { why: "text" }) },
  linked: { version: 1, body: shape({ to: "id", as: "text" }) },
};

/** Whether this version knows a kind. */
export function isKnown(kind: string): kind is EntryKind {
  return Object.hasOwn(kinds, kind);
}

/** Whether this version can read what an entry says: not where its kind, or the version of its kind, is newer. */
export function isRead({ kind, kindVersion }: { readonly kind: string; readonly kindVersion: number }): boolean {
  return isKnown(kind) && kindVersion <= kinds[kind].version;
}

/** The fact that an entry says; none for kinds that add up, and for what this version can't read. */
export function factOf(entry: { readonly kind: string; readonly kindVersion: number; readonly body: unknown }): string | undefined {
  if (!isKnown(entry.kind) || !isRead(entry)) return undefined;
  return kinds[entry.kind].fact?.(entry.body as { readonly [name: string]: Json });
}
