import type { Bodies, Entry, EntryKind, FieldValue } from "../entry.ts";
import { factOf, isRead } from "../kinds.ts";
import { jobsOf } from "./jobs.ts";
import { crossings, factFrom, newestFirst, saidBy, theOneThatCounts } from "./standing.ts";
import type { BoxState, Fact, Said, Shown } from "./state.ts";

/**
 * What the entries of one box add up to. Any order and any repetition of the
 * same entries gives the same state.
 */
export function fold(box: string | null, given: readonly Entry[]): BoxState {
  const entries = newestFirst(eachOnce(given)).filter((entry) => entry.box === box);
  const crossedOut = crossings(entries);
  const facts = new Map<string, Entry[]>();
  const counting = new Map<string, Entry[]>();
  for (const entry of entries) {
    if (!isRead(entry)) continue;
    const fact = factOf(entry);
    if (fact !== undefined) listed(facts, fact, entry);
    else if (!crossedOut.has(entry.id)) listed(counting, entry.kind, entry);
  }
  const standing = <Kind extends EntryKind>(kind: Kind): readonly Said<Bodies[Kind]>[] =>
    (counting.get(kind) ?? []).map((entry) => saidBy(entry, entry.body as unknown as Bodies[Kind])).reverse();
  const factsOf = <Value>(prefix: string, read: (entry: Entry) => Value): ReadonlyMap<string, Fact<Value>> =>
    new Map(
      [...facts]
        .filter(([name]) => name.startsWith(prefix))
        .map(([name, said]) => [name.slice(prefix.length), factFrom(said, crossedOut, read)] as const)
        .sort(([one], [other]) => (one < other ? -1 : 1)),
    );
  return {
    box,
    fields: factsOf("field:", (entry) => entry.body.value as FieldValue),
    limits: factsOf("limit:", (entry) => entry.body as unknown as Bodies["limit-set"]),
    jobs: jobsOf(facts, crossedOut),
    readings: standing("reading"),
    adjustments: standing("adjustment"),
    bridges: standing("bridge"),
    notes: standing("note"),
    oldRings: standing("old-rings"),
    cards: standing("card-issued"),
    photos: standing("photo"),
    signatures: standing("signed"),
    entries: entries.map((entry): Shown => {
      const crossedOutBy = crossedOut.get(entry.id);
      return { entry, ...(crossedOutBy === undefined ? {} : { crossedOutBy }), ...(isRead(entry) ? {} : { newer: true }) };
    }),
  };
}

function eachOnce(given: readonly Entry[]): Iterable<Entry> {
  const byId = new Map<string, Entry>();
  for (const entry of given) byId.set(entry.id, theOneThatCounts(byId.get(entry.id) ?? entry, entry));
  return byId.values();
}

function listed(lists: Map<string, Entry[]>, name: string, entry: Entry): void {
  const list = lists.get(name);
  if (list) list.push(entry);
  else lists.set(name, [entry]);
}
