import type { Bodies, Entry } from "../entry.ts";
import { factFrom, saidBy, shownAt } from "./standing.ts";
import type { Fact, Job, Said } from "./state.ts";

interface Begun {
  begun: Entry;
  readonly steps: Map<string, Fact<Bodies["fit-step"]>>;
  started?: Said<Bodies["started"]>;
}

/** The fitting jobs of a box, oldest first, from what was said about each fact, newest first. */
export function jobsOf(facts: ReadonlyMap<string, readonly Entry[]>, crossedOut: ReadonlyMap<string, string>): readonly Job[] {
  const jobs = new Map<string, Begun>();
  const jobOf = (id: string, entry: Entry) => {
    const job: Begun = jobs.get(id) ?? { begun: entry, steps: new Map() };
    jobs.set(id, job);
    if (isBefore(entry, job.begun)) job.begun = entry;
    return job;
  };
  for (const [name, all] of [...facts].sort(([one], [other]) => (one < other ? -1 : 1))) {
    const left = all.filter(({ id }) => !crossedOut.has(id));
    if (name.startsWith("step:")) {
      for (const entry of left) {
        const { job, step } = entry.body as unknown as Bodies["fit-step"];
        const { steps } = jobOf(job, entry);
        if (!steps.has(step))
          steps.set(
            step,
            factFrom(all, crossedOut, (one) => one.body as unknown as Bodies["fit-step"]),
          );
      }
    } else if (name.startsWith("started:")) {
      const [first] = factFrom(all, crossedOut, (one) => one.body as unknown as Bodies["started"]).standing;
      const entry = left.find(({ id }) => id === first?.entry);
      if (first && entry) jobOf(first.value.job, entry).started = first;
    }
  }
  return [...jobs]
    .sort(([, one], [, other]) => (isBefore(one.begun, other.begun) ? -1 : 1))
    .map(
      ([id, { begun, steps, started }]): Job => ({
        id,
        begun: saidBy(begun, id).at,
        steps,
        ...(started === undefined ? {} : { started }),
      }),
    );
}

function isBefore(one: Entry, other: Entry): boolean {
  return shownAt(one) < shownAt(other) || (shownAt(one) === shownAt(other) && one.id < other.id);
}
