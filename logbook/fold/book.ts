import type { Entry } from "../entry.ts";
import { factOf } from "../kinds.ts";
import { mostAfter } from "../read.ts";
import { fold } from "./fold.ts";
import { gaveWay } from "./links.ts";
import { theOneThatCounts } from "./standing.ts";
import type { BoxState } from "./state.ts";

/** Entries about one box, and those of each fact among them. */
interface About {
  readonly entries: Set<Entry>;
  readonly facts: Map<string, Set<Entry>>;
  /** What they add up to, while nothing new came. */
  state?: BoxState | undefined;
}

/**
 * All entries of a site as they come in, one by one or in heaps, in any order
 * and any number of times. Only boxes that something new came for are folded again.
 */
export class Book {
  readonly #entries = new Map<string, Entry>();
  readonly #boxes = new Map<string | null, About>();

  /** Takes entries in; tells which boxes they changed. */
  add(entries: Iterable<Entry>): ReadonlySet<string | null> {
    const changed = new Set<string | null>();
    for (const entry of entries) {
      const known = this.#entries.get(entry.id);
      if (known) {
        if (theOneThatCounts(known, entry) === known) continue;
        this.#forget(known);
        changed.add(known.box);
      }
      this.#entries.set(entry.id, entry);
      const about = this.#about(entry.box);
      about.entries.add(entry);
      about.state = undefined;
      const fact = factOf(entry);
      if (fact !== undefined) about.facts.set(fact, (about.facts.get(fact) ?? new Set()).add(entry));
      changed.add(entry.box);
    }
    return changed;
  }

  #about(box: string | null): About {
    const about = this.#boxes.get(box) ?? { entries: new Set(), facts: new Map() };
    this.#boxes.set(box, about);
    return about;
  }

  #forget(entry: Entry): void {
    const about = this.#about(entry.box);
    about.entries.delete(entry);
    about.facts.get(factOf(entry) ?? "")?.delete(entry);
    about.state = undefined;
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
    return [...this.#boxes].flatMap(([box, { entries }]) => (box === null || entries.size === 0 ? [] : [box])).sort();
  }

  /** What the entries of a box add up to; of the site itself for null. */
  state(box: string | null): BoxState {
    const about = this.#boxes.get(box);
    if (!about) return fold(box, []);
    about.state ??= fold(box, [...about.entries]);
    return about.state;
  }

  /**
   * The entries that a new one of the same fact comes after: those that nobody
   * has followed up yet, crossed out or not. Never more than an entry can name;
   * the rest is then left for the next one.
   */
  headsOf(said: {
    readonly box: string | null;
    readonly kind: string;
    readonly kindVersion: number;
    readonly body: unknown;
  }): readonly string[] {
    const same = [...(this.#boxes.get(said.box)?.facts.get(factOf(said) ?? "") ?? [])];
    const followed = gaveWay(same, () => true);
    return same
      .flatMap(({ id }) => (followed.has(id) ? [] : [id]))
      .sort()
      .slice(0, mostAfter);
  }
}
