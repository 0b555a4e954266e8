import type { Bodies, Entry, EntryKind, FieldValue } from "../entry.ts";
import { factOf, isKnown, kinds } from "../kinds.ts";
import { crossings, factFrom, newestFirst, saidBy, shownAt } from "./standing.ts";
import type { BoxState, Fact, Job, Said, Shown } from "./state.ts";

/**
 * What the entries of one box add up to. Any order and any repetition of the
 * same entries gives the same state.
 */
export function fold(box: string | null, given: readonly Entry[]): BoxState {
  const entries = [...new Map(given.filter((entry) => entry.box === box).map((entry) => [entry.id, entry])).values()].sort(newestFirst);
  const crossedOut = crossings(entries);
  const facts = grouped(entries);
  const standing = <Kind extends EntryKind>(kind: Kind): readonly Said<Bodies[Kind]>[] =>
    entries
      .filter((entry) => entry.kind === kind && entry.kindVersion <= kinds[kind].version && !crossedOut.has(entry.id))
      .map((entry) => saidBy(entry, entry.body as unknown as Bodies[Kind]))
      .reverse();
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
    jobs: jobsOf(entries, facts, crossedOut),
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
      const newer = !isKnown(entry.kind) || entry.kindVersion > kinds[entry.kind].version;
      return { entry, ...(crossedOutBy === undefined ? {} : { crossedOutBy }), ...(newer ? { newer } : {}) };
    }),
  };
}

function grouped(entries: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> {
  const facts = new Map<string, Entry[]>();
  for (const entry of entries) {
    const fact = factOf(entry);
    if (fact === undefined) continue;
    const said = facts.get(fact);
    if (said) said.push(entry);
    else facts.set(fact, [entry]);
  }
  return facts;
}

interface Begun {
  begun: Entry;
  readonly steps: Map<string, Fact<Bodies["fit-step"]>>;
  started?: Said<Bodies["started"]>;
}

/** The fitting jobs of a box, oldest first. */
function jobsOf(
  entries: readonly Entry[],
  facts: ReadonlyMap<string, readonly Entry[]>,
  crossedOut: ReadonlyMap<string, string>,
): readonly Job[] {
  const jobs = new Map<string, Begun>();
  const jobOf = (id: string, entry: Entry) => {
    const job: Begun = jobs.get(id) ?? { begun: entry, steps: new Map() };
    jobs.set(id, job);
    if (shownAt(entry) < shownAt(job.begun)) job.begun = entry;
    return job;
  };
  for (const entry of entries) {
    if (entry.kind !== "fit-step" || entry.kindVersion !== 1 || crossedOut.has(entry.id)) continue;
    const { job: id, step } = entry.body as unknown as Bodies["fit-step"];
    const job = jobOf(id, entry);
    if (job.steps.has(step)) continue;
    const fact = facts.get(`step:${id}:${step}`) ?? [];
    job.steps.set(
      step,
      factFrom(fact, crossedOut, (one) => one.body as unknown as Bodies["fit-step"]),
    );
  }
  for (const [name, said] of facts) {
    if (!name.startsWith("started:")) continue;
    const [first] = factFrom(said, crossedOut, (one) => one.body as unknown as Bodies["started"]).standing;
    const entry = said.find(({ id }) => id === first?.entry);
    if (first && entry) jobOf(first.value.job, entry).started = first;
  }
  return [...jobs]
    .sort(([, one], [, other]) => shownAt(one.begun) - shownAt(other.begun) || (one.begun.id < other.begun.id ? -1 : 1))
    .map(
      ([id, { begun, steps, started }]): Job => ({
        id,
        begun: begun.at.happened ?? begun.at.device,
        steps: new Map([...steps].sort(([one], [other]) => (one < other ? -1 : 1))),
        ...(started === undefined ? {} : { started }),
      }),
    );
}
