import type { Bodies, Entry, FieldValue } from "../entry.ts";

/** What stands for one fact: usually one entry, several while devices disagree. */
export interface Fact<Value> {
  /** Newest for display first; more than one only while they disagree. */
  readonly standing: readonly Said<Value>[];
  /** How many entries ever said it, those that were crossed out included. */
  readonly said: number;
}

/** One value with the entry that said it. */
export interface Said<Value> {
  readonly value: Value;
  readonly entry: string;
  readonly by: string;
  /** RFC 3339, by the clock of the device that wrote it. */
  readonly at: string;
}

/** One fitting job: from its first step until the machine runs on it. */
export interface Job {
  readonly id: string;
  readonly begun: string;
  /** By step id. */
  readonly steps: ReadonlyMap<string, Fact<Bodies["fit-step"]>>;
  readonly started?: Said<Bodies["started"]>;
}

/** Everything that the entries of one box add up to. Never stored: worked out from them. */
export interface BoxState {
  readonly box: string | null;
  /** Fields by the survey's name in dots. */
  readonly fields: ReadonlyMap<string, Fact<FieldValue>>;
  /** By item. */
  readonly limits: ReadonlyMap<string, Fact<Bodies["limit-set"]>>;
  /** Oldest first. */
  readonly jobs: readonly Job[];
  readonly readings: readonly Said<Bodies["reading"]>[];
  readonly adjustments: readonly Said<Bodies["adjustment"]>[];
  readonly bridges: readonly Said<Bodies["bridge"]>[];
  readonly notes: readonly Said<Bodies["note"]>[];
  readonly oldRings: readonly Said<Bodies["old-rings"]>[];
  readonly cards: readonly Said<Bodies["card-issued"]>[];
  readonly photos: readonly Said<Bodies["photo"]>[];
  readonly signatures: readonly Said<Bodies["signed"]>[];
  /** Every entry about the box in the order of display, those crossed out and those newer than this program included. */
  readonly entries: readonly Shown[];
}

/** An entry as the logbook of a box shows it. */
export interface Shown {
  readonly entry: Entry;
  /** The entry that crossed it out. */
  readonly crossedOutBy?: string;
  /** Written by a newer version: kept, passed on, not read. */
  readonly newer?: true;
}
