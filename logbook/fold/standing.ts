import { canonicalText } from "../canonical.ts";
import type { Entry, Json } from "../entry.ts";
import type { Fact, Said } from "./state.ts";

/** When an entry's matter happened, milliseconds since 1970: for the order of display only. */
export function shownAt({ at }: Entry): number {
  return at.happened === undefined ? Date.parse(at.device) + (at.serverOffsetMs ?? 0) : Date.parse(at.happened);
}

/** Newest first; where clocks agree, the later id. */
export function newestFirst(one: Entry, other: Entry): number {
  return shownAt(other) - shownAt(one) || (one.id < other.id ? 1 : -1);
}

/** An entry's body as what it says, with who said it and when. */
export function saidBy<Value>(entry: Entry, value: Value): Said<Value> {
  return { value, entry: entry.id, by: entry.by, at: entry.at.happened ?? entry.at.device };
}

/**
 * What stands of all that was ever said about one fact. An entry gives way to
 * one that was written after it had been seen, at any remove, unless that one
 * was crossed out. Links only count towards earlier ids, so that no ring of
 * them can make everything vanish. Entries that say the very same stand as one.
 */
export function factFrom<Value>(
  entries: readonly Entry[],
  crossedOut: ReadonlyMap<string, string>,
  read: (entry: Entry) => Value,
): Fact<Value> {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const seen = new Set<string>();
  const queue = entries.filter(({ id }) => !crossedOut.has(id));
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    for (const id of next.after) {
      const before = byId.get(id);
      if (before === undefined || id >= next.id || seen.has(id)) continue;
      seen.add(id);
      queue.push(before);
    }
  }
  const standing = entries.filter(({ id }) => !seen.has(id) && !crossedOut.has(id)).sort(newestFirst);
  const texts = new Set<string>();
  return {
    standing: standing.flatMap((entry) => {
      const value = read(entry);
      const text = canonicalText(value as Json);
      if (texts.has(text)) return [];
      texts.add(text);
      return [saidBy(entry, value)];
    }),
    said: entries.length,
  };
}

/**
 * Which entries were crossed out, each with the entry that did it. A crossing
 * can itself be crossed out, by a later id; then what it crossed stands again.
 */
export function crossings(entries: readonly Entry[]): ReadonlyMap<string, string> {
  const crossed = new Map<string, string>();
  const strokes = entries.filter(({ kind, kindVersion }) => kind === "crossed-out" && kindVersion === 1);
  // The latest first: whether a stroke counts is then known before what it strikes is looked at.
  for (const stroke of strokes.sort((one, other) => (one.id < other.id ? 1 : -1))) {
    const target = (stroke.body as { readonly entry: string }).entry;
    if (!crossed.has(stroke.id) && target < stroke.id) crossed.set(target, stroke.id);
  }
  return crossed;
}
