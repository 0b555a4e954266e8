import { Book, type BoxState, type Entry, fold, readEntryText } from "@ringwright/logbook";
import type { Store } from "@ringwright/store";

/** Sites whose entries are kept at hand. */
const mostBooks = 8;
const page = 1000;

interface Open {
  readonly book: Book;
  cursor: number;
  /** Catching up with the store, one at a time. */
  turn: Promise<void>;
}

/** Entries of sites folded as they come in; nothing is folded twice that did not change. */
export class Books {
  readonly #store: Store;
  readonly #open = new Map<string, Open>();

  constructor(store: Store) {
    this.#store = store;
  }

  /** A site's book with everything that was kept before this was asked. */
  async of(site: string): Promise<Book> {
    const open = this.#open.get(site) ?? { book: new Book(), cursor: 0, turn: Promise.resolve() };
    // The one asked for last stands last; the one at the front is put away first.
    this.#open.delete(site);
    this.#open.set(site, open);
    for (const name of this.#open.keys()) if (this.#open.size > mostBooks) this.#open.delete(name);
    const turn = open.turn.catch(() => undefined).then(() => this.#catchUp(site, open));
    open.turn = turn;
    await turn;
    return open.book;
  }

  async #catchUp(site: string, open: Open): Promise<void> {
    for (let more = true; more; ) {
      const { texts, cursor, more: further } = await this.#store.since(site, open.cursor, page);
      open.book.add(texts.map(entryOf));
      open.cursor = cursor;
      more = further;
    }
  }
}

/** What one box's entries add up to; nothing when there are none. */
export async function stateOf(store: Store, site: string, box: string): Promise<BoxState | undefined> {
  const texts = await store.ofBox(site, box);
  return texts.length === 0 ? undefined : fold(box, texts.map(entryOf));
}

function entryOf(text: string): Entry {
  const read = readEntryText(text);
  // The store gives back what it was given, and it was given what had been read.
  if (!read.ok) throw new Error(`the store holds what is no entry: ${read.fault.id} at ${read.fault.at}`);
  return read.entry;
}
