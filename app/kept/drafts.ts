import { signal } from "@preact/signals";
import { now } from "../device/clock.ts";
import type { Storage } from "../device/storage.ts";

/**
 * What was typed and not yet kept, by screen and field. Every keystroke goes
 * to this device's storage at once, so that a killed page finds it again.
 */
export class Drafts {
  readonly #storage: Storage;
  readonly #texts = new Map<string, string>();
  /** Counts up with every keystroke. */
  readonly changes = signal(0);

  private constructor(storage: Storage) {
    this.#storage = storage;
  }

  static async open(storage: Storage): Promise<Drafts> {
    const drafts = new Drafts(storage);
    for (const { key, text } of await storage.getAll("drafts")) drafts.#texts.set(key, text);
    return drafts;
  }

  /** The draft under a key, if there is one. */
  text(key: string): string | undefined {
    void this.changes.value;
    return this.#texts.get(key);
  }

  /** All drafts whose key begins so, by the rest of the key. */
  under(prefix: string): ReadonlyMap<string, string> {
    void this.changes.value;
    return new Map([...this.#texts].filter(([key]) => key.startsWith(prefix)).map(([key, text]) => [key.slice(prefix.length), text]));
  }

  /** Notes a keystroke. */
  async put(key: string, text: string): Promise<void> {
    this.#texts.set(key, text);
    this.changes.value++;
    await this.#storage.put("drafts", { key, text, at: now() });
  }

  /** Drops a draft: its matter has become an entry, or was taken back. */
  async drop(key: string): Promise<void> {
    if (!this.#texts.delete(key)) return;
    this.changes.value++;
    await this.#storage.delete("drafts", key);
  }
}
