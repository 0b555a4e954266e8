import { canonicalText } from "../canonical.ts";
import type { Entry, Json } from "../entry.ts";
import { isGroup } from "../shapes.ts";
import { timeOf } from "../time.ts";
import { gaveWay } from "./links.ts";
import type { Fact, Said } from "./state.ts";

/** When an entry's matter happened, milliseconds since 1970: for the order of display only. */
export function shownAt({ at }: Entry): number {
  return at.happened === undefined ? timeOf(at.device) + (at.serverOffsetMs ?? 0) : timeOf(at.happened);
}

/** Newest first; where clocks agree, the later id. */
export function newestFirst(entries: Iterable<Entry>): Entry[] {
  return Array.from(entries, (entry) => ({ entry, at: shownAt(entry) }))
    .sort((one, other) => other.at - one.at || (one.entry.id < other.entry.id ? 1 : -1))
    .map(({ entry }) => entry);
}

/**
 * Of two entries that carry one id, which honest devices never make, the same
 * one counts wherever they met and in whatever order: the one whose text sorts first.
 */
export function theOneThatCounts(one: Entry, other: Entry): Entry {
  // Nearly always it is the same entry come again, from the same text: told apart cheaply.
  if (one === other || JSON.stringify(one) === JSON.stringify(other)) return one;
  return canonicalText(other) < canonicalText(one) ? other : one;
}

/** An entry's body as what it says, with who said it and when. */
export function saidBy<Value>(entry: Entry, value: Value): Said<Value> {
  return { value, entry: entry.id, by: entry.by, at: entry.at.happened ?? entry.at.device };
}

/**
 * What stands of all that was ever said about one fact, handed in newest first.
 * An entry gives way to one that was written after it had been seen, at any
 * remove, unless that one was crossed out. Entries that say the same stand as
 * one, however it was typed.
 */
export function factFrom<Value>(
  entries: readonly Entry[],
  crossedOut: ReadonlyMap<string, string>,
  read: (entry: Entry) => Value,
): Fact<Value> {
  const gone = gaveWay(entries, ({ id }) => !crossedOut.has(id));
  const standing = new Map<string, Said<Value>>();
  for (const entry of entries) {
    if (gone.has(entry.id) || crossedOut.has(entry.id)) continue;
    const value = read(entry);
    const text = canonicalText(asMeant(value as Json));
    if (!standing.has(text)) standing.set(text, saidBy(entry, value));
  }
  return { standing: [...standing.values()], said: entries.length };
}

/** What is said, without how its quantities were typed. */
function asMeant(json: Json): Json {
  if (Array.isArray(json)) return json.map((one: Json) => asMeant(one));
  if (!isGroup(json)) return json;
  const isMeasured = Object.hasOwn(json, "value") && Object.hasOwn(json, "unit");
  return Object.fromEntries(
    Object.entries(json)
      .filter(([name]) => !(isMeasured && name === "typed"))
      .map(([name, value]) => [name, asMeant(value)]),
  );
}

/**
 * Which entries were crossed out, each with the first entry that did it. A
 * crossing can itself be crossed out; then what it crossed stands again.
 * Crossings that go round in a ring, which only forgery can make, do not count.
 */
export function crossings(entries: readonly Entry[]): ReadonlyMap<string, string> {
  const targets = new Map(
    entries
      .filter(({ kind, kindVersion }) => kind === "crossed-out" && kindVersion === 1)
      .map(({ id, body }) => [id, (body as { readonly entry: string }).entry]),
  );
  const unjudged = new Map<string, number>();
  for (const target of targets.values()) unjudged.set(target, (unjudged.get(target) ?? 0) + 1);
  const crossed = new Map<string, string>();
  // A stroke is judged when every stroke against it has been; those in a ring never are.
  const judged = [...targets.keys()].filter((stroke) => !unjudged.has(stroke));
  for (const stroke of judged) {
    const target = targets.get(stroke) ?? "";
    const before = crossed.get(target);
    if (!crossed.has(stroke) && (before === undefined || stroke < before)) crossed.set(target, stroke);
    const left = (unjudged.get(target) ?? 0) - 1;
    unjudged.set(target, left);
    if (left === 0 && targets.has(target)) judged.push(target);
  }
  return crossed;
}
