import { canonicalText } from "./canonical.ts";
import type { Entry, Json } from "./entry.ts";
import { isId } from "./id.ts";
import { isKnown, isRead, kinds } from "./kinds.ts";
import { isGroup } from "./shapes.ts";
import { timeOf } from "./time.ts";

/** What is wrong with something that was handed in as an entry. */
export interface Fault {
  /** Where: `body.field`, `at.device`. */
  readonly at: string;
  readonly id: "entry-not-json" | "entry-malformed" | "entry-text" | "entry-too-large";
}

export type Read = { readonly ok: true; readonly entry: Entry; readonly text: string } | { readonly ok: false; readonly fault: Fault };

/** No entry is larger, in characters of its canonical text: pictures travel beside entries, not in them. */
export const largestEntry = 262_144;
/** An entry names no more than this many that it comes after. */
export const mostAfter = 1000;
const deepest = 32;
// Most texts are of plain letters alone, which is quick to see.
const unkeepable = (text: string) => !/^[ -~]*$/u.test(text) && (text.includes("\u0000") || /\p{Surrogate}/u.test(text));

const members = {
  v: (json) => json === 1,
  id: isId,
  site: isId,
  box: (json) => json === null || isId(json),
  kind: (json) => typeof json === "string" && /^[a-z][a-z0-9-]{0,40}$/u.test(json),
  kindVersion: (json) => Number.isInteger(json) && (json as number) >= 1,
  at: (json) => isGroup(json) && faultInTime(json) === undefined,
  by: (json) => typeof json === "string" && json.length > 0 && json.length <= 80,
  device: isId,
  seq: (json) => Number.isSafeInteger(json) && (json as number) >= 1,
  prev: (json) => json === null || (typeof json === "string" && /^[0-9a-f]{64}$/u.test(json)),
  after: (json) => Array.isArray(json) && json.length <= mostAfter && json.every((one: Json) => isId(one)),
  body: isGroup,
  method: (json) => json === null || (typeof json === "string" && json.length <= 200),
} as const satisfies Readonly<Record<keyof Entry, (json: Json | undefined) => boolean>>;
const eachMember = Object.entries(members);

function isTime(json: Json | undefined): boolean {
  return typeof json === "string" && Number.isFinite(timeOf(json));
}

function faultInTime(at: { readonly [name: string]: Json }): string | undefined {
  if (!isTime(at.device)) return "device";
  if (at.serverOffsetMs !== null && !Number.isSafeInteger(at.serverOffsetMs)) return "serverOffsetMs";
  if (at.happened !== undefined && !isTime(at.happened)) return "happened";
  return Object.keys(at).find((name) => !["device", "serverOffsetMs", "happened"].includes(name));
}

/**
 * Reads the text of an entry. Only its canonical text is taken: what names a
 * member twice, or says a number otherwise, is not the text of what was read.
 */
export function readEntryText(text: string): Read {
  if (text.length > largestEntry) return fault("", "entry-too-large");
  let json: Json;
  try {
    json = JSON.parse(text) as Json;
  } catch {
    return fault("", "entry-not-json");
  }
  const read = readEntry(json);
  return read.ok && read.text !== text ? fault("", "entry-not-json") : read;
}

/**
 * Reads an entry from JSON. Kinds and versions newer than this program pass:
 * they are kept and handed on. A text with the character U+0000 or half a
 * surrogate pair is refused, since not every store keeps those, and so is -0,
 * which canonical JSON has not.
 */
export function readEntry(json: Json): Read {
  if (!isGroup(json)) return fault("", "entry-malformed");
  for (const [name, fits] of eachMember) if (!fits(json[name])) return fault(name, "entry-malformed");
  const odd = oddText(json, 0);
  if (odd !== undefined) return fault(odd.join("."), "entry-text");
  const stranger = Object.keys(json).find((name) => !Object.hasOwn(members, name));
  if (stranger !== undefined) return fault(stranger, "entry-malformed");
  const entry = json as unknown as Entry;
  if (isKnown(entry.kind) && isRead(entry)) {
    const wrong = kinds[entry.kind].body.faultIn(entry.body);
    if (wrong !== undefined) return fault(`body.${wrong}`, "entry-malformed");
  }
  const text = canonicalText(entry);
  return text.length > largestEntry ? fault("", "entry-too-large") : { ok: true, entry, text };
}

function fault(at: string, id: Fault["id"]): Read {
  return { ok: false, fault: { at, id } };
}

/** Where a text stands that can't be kept everywhere, a number that canonical JSON has not, or more levels than any entry needs. */
function oddText(json: Json, depth: number): readonly string[] | undefined {
  if (typeof json === "string") return unkeepable(json) ? [] : undefined;
  if (typeof json === "number") return Number.isFinite(json) && !Object.is(json, -0) ? undefined : [];
  if (typeof json !== "object" || json === null) return undefined;
  if (depth >= deepest) return [];
  const group = json as { readonly [name: string]: Json };
  for (const name of Object.keys(group)) {
    if (unkeepable(name)) return [];
    const odd = oddText(group[name] ?? null, depth + 1);
    if (odd !== undefined) return [name, ...odd];
  }
  return undefined;
}
