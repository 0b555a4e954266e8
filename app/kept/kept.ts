import { type Signal, signal } from "@preact/signals";
import {
  type Bodies,
  Book,
  type BoxState,
  type Entry,
  type EntryKind,
  type Head,
  noHead,
  readEntryText,
  uuidv7,
  writeEntry,
} from "@ringwright/logbook";
import { breath } from "../device/breath.ts";
import { randomBytes } from "../device/chance.ts";
import { now, rfc3339 } from "../device/clock.ts";
import { openStorage, type Storage, strict } from "../device/storage.ts";

/** What an entry may carry beside its body. */
export interface Beside {
  /** When it happened, for what stood on paper first; milliseconds since 1970. */
  readonly happened?: number | undefined;
  /** Method and version behind a figure in the body that was worked out. */
  readonly method?: string | undefined;
}

/** A person as chosen on this device. */
export interface Person {
  readonly id: string;
  readonly name: string;
}

/**
 * The logbook of one site as this device holds it. Everything on screen is
 * worked out from it; the server only gets and gives entries.
 */
export class Kept {
  readonly storage: Storage;
  readonly site: string;
  readonly device: string;
  readonly book = new Book();
  /** Counts up with every change of the book: screens that read it are drawn again. */
  readonly changes: Signal<number> = signal(0);
  /** Names by opaque id, as this device has heard them; entries carry ids only. */
  readonly people: Signal<ReadonlyMap<string, string>> = signal(new Map());
  /** How many entries the server has not said it keeps. */
  readonly unsent: Signal<number> = signal(0);
  readonly #offset: { ms: number | null } = { ms: null };
  readonly #taken = new Set<string>();
  readonly #others = new BroadcastChannel("ringwright");
  #onWrite: () => void = () => undefined;

  private constructor(storage: Storage, site: string, device: string) {
    this.storage = storage;
    this.site = site;
    this.device = device;
    this.#others.onmessage = () => void this.read();
  }

  /** Opens what is kept on this device for a site, and reads it all. */
  static async open(site: string, storage?: Storage): Promise<Kept> {
    const opened = storage ?? (await openStorage());
    const device = (await opened.get("settings", "device")) as string | undefined;
    const kept = new Kept(opened, site, device ?? (await newDevice(opened)));
    await Promise.all([kept.read(), kept.#readPeople()]);
    return kept;
  }

  /** Reads every entry of the site that is on this device; those already known cost nothing. */
  async read(): Promise<void> {
    const stored = await this.storage.getAllFromIndex("entries", "site", this.site);
    this.unsent.value = stored.filter(({ unsent }) => unsent === 1).length;
    await this.takeAll(stored.map(({ text }) => text));
  }

  /** Takes entries into the book, however many, without keeping taps waiting; those it took before cost nothing. */
  async takeAll(texts: readonly string[]): Promise<void> {
    const rest = breath();
    const entries: Entry[] = [];
    for (const text of texts) {
      if (this.#taken.has(text)) continue;
      this.#taken.add(text);
      const read = readEntryText(text);
      if (read.ok) entries.push(read.entry);
      await rest();
    }
    this.#add(entries);
  }

  #add(entries: readonly Entry[]): void {
    if (this.book.add(entries).size > 0) this.changes.value++;
  }

  /** What the entries of a box add up to; read inside a component it draws again when they change. */
  state(box: string | null): BoxState {
    void this.changes.value;
    return this.book.state(box);
  }

  /** The boxes of the site. */
  boxes(): readonly string[] {
    void this.changes.value;
    return this.book.boxes();
  }

  /** How far the server's clock is ahead, as the last reply told. */
  serverIsAheadBy(ms: number): void {
    this.#offset.ms = ms;
  }

  /** Calls back after every entry that was written here. */
  onWrite(called: () => void): void {
    this.#onWrite = called;
  }

  /**
   * Writes one entry. When the promise is kept it is on this device's disk;
   * only then may a screen say so. The head of the chain and the entry go down
   * together, so two open pages can't fork the chain.
   */
  async write<Kind extends EntryKind>(
    kind: Kind,
    box: string | null,
    body: Bodies[Kind],
    { happened, method }: Beside = {},
  ): Promise<string> {
    const by = (await this.person())?.id ?? "owner";
    const written = await this.storage.transaction(["entries", "settings"], "readwrite", strict);
    const settings = written.objectStore("settings");
    const head = ((await settings.get(`head/${this.site}`)) as Head | undefined) ?? noHead;
    const ms = now();
    const after = this.book.headsOf({ box, kind, kindVersion: 1, body });
    const at = {
      device: rfc3339(ms),
      serverOffsetMs: this.#offset.ms,
      ...(happened === undefined ? {} : { happened: rfc3339(happened) }),
    };
    const doing = { site: this.site, box, kind, body, by, device: this.device, at, after, ...(method === undefined ? {} : { method }) };
    const made = writeEntry(doing, head, ms, randomBytes(10));
    await Promise.all([
      written.objectStore("entries").add({ id: made.entry.id, site: this.site, text: made.text, unsent: 1 }),
      settings.put(made.head, `head/${this.site}`),
      written.done,
    ]);
    this.unsent.value++;
    this.#taken.add(made.text);
    this.#add([made.entry]);
    this.#others.postMessage("entries");
    this.#onWrite();
    return made.entry.id;
  }

  async person(): Promise<Person | undefined> {
    return (await this.storage.get("settings", "person")) as Person | undefined;
  }

  /** Keeps who holds this device. */
  async keepPerson(person: Person): Promise<void> {
    await this.storage.put("settings", person, "person");
    await this.#readPeople();
  }

  /** Keeps the names that the server knows. */
  async keepPeople(people: readonly Person[]): Promise<void> {
    // Heard at every exchange, and seldom anything new.
    if (JSON.stringify(await this.storage.get("settings", "people")) === JSON.stringify(people)) return;
    await this.storage.put("settings", people, "people");
    await this.#readPeople();
  }

  async #readPeople(): Promise<void> {
    const heard = ((await this.storage.get("settings", "people")) as readonly Person[] | undefined) ?? [];
    const own = await this.person();
    this.people.value = new Map([...heard, ...(own ? [own] : [])].map(({ id, name }) => [id, name]));
  }

  close(): void {
    this.#others.close();
    this.storage.close();
  }
}

async function newDevice(storage: Storage): Promise<string> {
  const device = uuidv7(now(), randomBytes(10));
  await storage.put("settings", device, "device");
  return device;
}
