import type { Entry } from "../entry.ts";
import { factOf } from "../kinds.ts";
import { fold } from "./fold.ts";
import type { BoxState } from "./state.ts";

/**
 * All entries of a site as they come in, one by one or in heaps, in any order
 * and any number of times. Only boxes that something new came for are folded again.
 */
export class Book {
  readonly #entries = new Map<string, Entry>();
  readonly #byBox = new Map<string | null, Entry[]>();
  readonly #states = new Map<string | null, BoxState>();

  /** Takes entries in; tells which boxes they changed. */
  add(entries: Iterable<Entry>): ReadonlySet<string | null> {
    const changed = new Set<string | null>();
    for (const entry of entries) {
      if (this.#entries.has(entry.id)) continue;
      this.#entries.set(entry.id, entry);
      const about = this.#byBox.get(entry.box);
      if (about) about.push(entry);
      else this.#byBox.set(entry.box, [entry]);
      this.#states.delete(entry.box);
      changed.add(entry.box);
    }
    return changed;
  }

  /** How many entries there are. */
  get size(): number {
    return this.#entries.size;
  }

  entry(id: string): Entry | undefined {
    return this.#entries.get(id);
  }

  /** Every box that an entry is about, in the order of their ids. */
  boxes(): readonly string[] {
    return [...this.#byBox.keys()].filter((box): box is string => box !== null).sort();
  }

  /** What the entries of a box add up to; of the site itself for null. */
  state(box: string | null): BoxState {
    const known = this.#states.get(box);
    if (known) return known;
    const state = fold(box, this.#byBox.get(box) ?? []);
    this.#states.set(box, state);
    return state;
  }

  /** The entries that a new one of the same fact comes after: those that nobody has followed up yet. */
  headsOf(said: {
    readonly box: string | null;
    readonly kind: string;
    readonly kindVersion: number;
    readonly body: unknown;
  }): readonly string[] {
    const fact = factOf(said);
    if (fact === undefined) return [];
    const same = (this.#byBox.get(said.box) ?? []).filter((entry) => factOf(entry) === fact);
    const followed = new Set(same.flatMap(({ id, after }) => after.filter((before) => before < id)));
    return same
      .filter(({ id }) => !followed.has(id))
      .map(({ id }) => id)
      .sort();
  }
}
