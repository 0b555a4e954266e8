import { signal } from "@preact/signals";
import { canonicalText, type Json, readEntry } from "@ringwright/logbook";
import { breath } from "../device/breath.ts";
import { now } from "../device/clock.ts";
import { type StoredEntry, strict } from "../device/storage.ts";
import type { Kept } from "./kept.ts";

/** Whether the server answered last time it was asked. */
export const reached = signal<"unknown" | "yes" | "no">("unknown");

const pageSize = 500;
/** Bytes of one push; the server takes up to 16 MiB. */
const pushSize = 4 * 1024 * 1024;
const patience = 15_000;

interface Pushed {
  readonly kept: readonly string[];
  readonly known: readonly string[];
  readonly refused: readonly { readonly id: string | null; readonly why: string }[];
  readonly cursor: number;
}

interface Pulled {
  readonly entries: readonly Json[];
  readonly cursor: number;
  readonly more: boolean;
}

interface People {
  readonly people: readonly { readonly person: string; readonly name: string }[];
}

/** Gives the server what it has not, and takes what this device has not. Safe to call at any time, any number of times. */
export class Exchange {
  readonly #kept: Kept;
  #running: Promise<void> | undefined;
  #again = false;

  constructor(kept: Kept) {
    this.#kept = kept;
  }

  /** Runs now, or once more after the run under way. */
  run(): Promise<void> {
    if (this.#running) {
      this.#again = true;
      return this.#running;
    }
    this.#running = this.#once().finally(() => {
      this.#running = undefined;
      if (!this.#again) return;
      this.#again = false;
      void this.run();
    });
    return this.#running;
  }

  /** Keeps going while the page is open: at once, after each entry, when the signal comes back, and now and then. */
  keepUp(everyMs = 15_000): () => void {
    const go = () => void this.run();
    this.#kept.onWrite(go);
    const seen = () => document.visibilityState === "visible" && go();
    addEventListener("online", go);
    document.addEventListener("visibilitychange", seen);
    const timer = setInterval(seen, everyMs);
    go();
    return () => {
      removeEventListener("online", go);
      document.removeEventListener("visibilitychange", seen);
      clearInterval(timer);
    };
  }

  async #once(): Promise<void> {
    try {
      await this.#push();
      await this.#pull();
      await this.#names();
      reached.value = "yes";
    } catch (error) {
      if (!(error instanceof NoAnswer) && !(error instanceof TypeError) && !(error instanceof DOMException)) throw error;
      reached.value = "no";
    }
  }

  get #path(): string {
    return `/api/v1/sites/${this.#kept.site}/entries`;
  }

  async #push(): Promise<void> {
    const { storage } = this.#kept;
    for (;;) {
      const unsent = await storage.getAllFromIndex("entries", "unsent", 1);
      const waiting = withinSize(unsent.filter(({ refused }) => refused === undefined));
      if (waiting.length === 0) break;
      const said = (await ask(this.#kept, this.#path, `{"entries":[${waiting.map(({ text }) => text).join(",")}]}`)) as Pushed;
      const keptThere = new Set([...said.kept, ...said.known]);
      const refused = new Map(said.refused.map(({ id, why }) => [id, why]));
      const change = storage.transaction("entries", "readwrite", strict);
      for (const { unsent: _, ...entry } of waiting) {
        const why = refused.get(entry.id);
        if (keptThere.has(entry.id)) await change.store.put(entry);
        else if (why !== undefined) await change.store.put({ ...entry, unsent: 1, refused: why });
      }
      await change.done;
      // The server spoke of none of them: asking again would not end.
      if (!waiting.some(({ id }) => keptThere.has(id) || refused.has(id))) break;
    }
    await this.#kept.read();
  }

  /** Tells the server what the person who holds this device is called, and hears the names of the others. */
  async #names(): Promise<void> {
    const path = "/api/v1/people";
    const own = await this.#kept.person();
    const heard = (await ask(this.#kept, path)) as People;
    const known = own === undefined || heard.people.some(({ person, name }) => person === own.id && name === own.name);
    const { people } = known
      ? heard
      : ((await ask(this.#kept, path, JSON.stringify({ people: [{ person: own.id, name: own.name }] }), "PUT")) as People);
    await this.#kept.keepPeople(people.map(({ person: id, name }) => ({ id, name })));
  }

  async #pull(): Promise<void> {
    const { storage, site } = this.#kept;
    const name = `cursor/${site}`;
    for (;;) {
      const since = ((await storage.get("settings", name)) as number | undefined) ?? 0;
      const page = (await ask(this.#kept, `${this.#path}?since=${since}&limit=${pageSize}`)) as Pulled;
      const came: StoredEntry[] = [];
      const rest = breath();
      for (const json of page.entries) {
        const read = readEntry(json);
        if (read.ok) came.push({ id: read.entry.id, site, text: canonicalText(read.entry) });
        await rest();
      }
      const change = storage.transaction(["entries", "settings"], "readwrite", strict);
      const entries = change.objectStore("entries");
      for (const entry of came) if ((await entries.getKey(entry.id)) === undefined) await entries.add(entry);
      await change.objectStore("settings").put(page.cursor, name);
      await change.done;
      await this.#kept.takeAll(came.map(({ text }) => text));
      if (!page.more) return;
    }
  }
}

/** As many of the first entries as go into one push, at least one: the server takes so many, and so many bytes. */
function withinSize(entries: readonly StoredEntry[]): readonly StoredEntry[] {
  let bytes = 0;
  const fits = entries.slice(0, pageSize).findIndex(({ text }) => {
    // A character is at most three bytes in UTF-8 for each of its code units.
    bytes += 3 * text.length;
    return bytes > pushSize;
  });
  return entries.slice(0, fits === -1 ? pageSize : Math.max(1, fits));
}

/** The server did not answer as it should. */
class NoAnswer extends Error {}

async function ask(kept: Kept, path: string, body?: string, method: "POST" | "PUT" = "POST"): Promise<unknown> {
  const sent = now();
  const reply = await fetch(path, {
    ...(body === undefined ? {} : { method, body, headers: { "content-type": "application/json" } }),
    cache: "no-store",
    signal: AbortSignal.timeout(patience),
  });
  if (!reply.ok) throw new NoAnswer(`${path} answered ${reply.status}`);
  const date = Date.parse(reply.headers.get("date") ?? "");
  // A Date header counts whole seconds; half of one and half the way there and back are taken off.
  if (Number.isFinite(date)) kept.serverIsAheadBy(Math.round(date + 500 - (sent + now()) / 2));
  return reply.json();
}
