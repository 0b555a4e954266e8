import {
  type At,
  type Bodies,
  Book,
  canonicalBytes,
  canonicalText,
  type Entry,
  type EntryKind,
  type Head,
  hashOf,
  type Json,
  kinds,
  noHead,
  readEntry,
  readEntryText,
  writeEntry,
} from "@ringwright/logbook";

/** Numbers from 0 to 1 that a seed decides (mulberry32). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function pick<T>(from: readonly T[], random: () => number): T {
  return from[Math.floor(random() * from.length)] as T;
}

export function shuffled<T>(from: readonly T[], random: () => number): T[] {
  const all = [...from];
  for (let i = all.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [all[i], all[j]] = [all[j] as T, all[i] as T];
  }
  return all;
}

/** A made-up id that is told apart by a number. */
export const idOf = (number: number) => `00000000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`;
export const site = idOf(1);
export const boxes: readonly string[] = [idOf(11), idOf(12)];
const noon = Date.UTC(2031, 3, 30, 12);

/** What one did not see itself but had from those whose entries it saw counts as seen. */
export interface Written {
  readonly entry: Entry;
  readonly text: string;
  /** Ids of the same fact that the writer knew of, at any remove: noted here without any link of the entry. */
  readonly past: ReadonlySet<string>;
  /** Which fact of which box it says, by a name of the test's own. */
  readonly fact: string | undefined;
}

const read = new Map<string, Entry>();

/** Reads a text as it comes over the line; each text once, since a text is always read alike. */
function entryFrom(text: string): Entry {
  const known = read.get(text);
  if (known) return known;
  const now = readEntryText(text);
  if (!now.ok) throw new Error(`refused on the way: ${now.fault.id} at ${now.fault.at}`);
  if (read.size > 10_000) read.clear();
  read.set(text, now.entry);
  return now.entry;
}

function factNamed(kind: EntryKind, body: unknown, box: string | null): string | undefined {
  if (kinds[kind].fact === undefined) return undefined;
  const { field, item, job, step } = body as { readonly [name: string]: string };
  return JSON.stringify([box, field ? "field" : kind, field ?? item ?? [job, step]]);
}

/** A tablet in a test: its own clock, its own chain, and what it has seen so far. */
export class Device {
  readonly book = new Book();
  /** Everything it has, in the order it came. */
  readonly has: Written[] = [];
  readonly #has = new Set<string>();
  readonly #id: string;
  readonly #random: () => number;
  readonly #clock: () => number;
  #head: Head = noHead;

  constructor(number: number, random: () => number, clock: () => number = () => noon) {
    this.#id = idOf(100 + number);
    this.#random = random;
    this.#clock = clock;
  }

  /** Does something, having seen all that it has. */
  say<Kind extends EntryKind>(kind: Kind, body: Bodies[Kind], box: string | null = boxes[0] ?? null, at?: At): Entry {
    const { entry, text } = this.#write(kind, body, box, at);
    const fact = factNamed(kind, body, box);
    const past = new Set<string>();
    for (const seen of fact === undefined ? [] : this.has.toReversed()) {
      if (seen.fact !== fact || past.has(seen.entry.id)) continue;
      past.add(seen.entry.id);
      for (const id of seen.past) past.add(id);
    }
    this.#keep({ entry, text, past, fact });
    return entry;
  }

  /** Does something that this version of the program has not heard of. */
  sayNewer(kind: string, kindVersion: number, body: Json, box: string | null = boxes[0] ?? null): Entry {
    const { entry: plain } = this.#write("note", { text: "" }, box);
    const newer = readEntry(JSON.parse(canonicalText({ ...plain, kind, kindVersion, body } as Entry)) as Json);
    if (!newer.ok) throw new Error(`not an entry: ${newer.fault.id} at ${newer.fault.at}`);
    this.#head = { seq: plain.seq, hash: hashOf(canonicalBytes(newer.entry)) };
    this.#keep({ entry: newer.entry, text: newer.text, past: new Set(), fact: undefined });
    return newer.entry;
  }

  #write<Kind extends EntryKind>(kind: Kind, body: Bodies[Kind], box: string | null, at?: At) {
    const now = this.#clock();
    const after = this.book.headsOf({ box, kind, kindVersion: kinds[kind].version, body });
    const written = writeEntry(
      {
        site,
        box,
        kind,
        body,
        by: "someone",
        device: this.#id,
        at: at ?? { device: new Date(now).toISOString(), serverOffsetMs: null },
        after,
      },
      this.#head,
      now,
      Uint8Array.from({ length: 10 }, () => this.#random() * 256),
    );
    this.#head = written.head;
    return written;
  }

  #keep(written: Written): void {
    this.has.push(written);
    read.set(written.text, written.entry);
    this.#has.add(written.entry.id);
    this.book.add([written.entry]);
  }

  /** Takes in what another one sends, as texts; tells how many were new. */
  take(sent: readonly Written[]): number {
    const before = this.book.size;
    for (const one of sent) {
      if (this.#has.has(one.entry.id)) continue;
      this.#has.add(one.entry.id);
      this.has.push(one);
    }
    this.book.add(sent.map(({ text }) => entryFrom(text)));
    return this.book.size - before;
  }
}

const fields = ["shaft", "motion", "port.diameter"];
const jobs = [idOf(21), idOf(22)];

/** Does one thing out of all that can be done: says, measures, ticks, crosses out. */
export function doAnything(device: Device, random: () => number): void {
  const box = pick(boxes, random);
  const value = Math.floor(random() * 4);
  const measured = { value: value / 1000, unit: "m", typed: `${value} mm` };
  const does = random();
  if (does < 0.4) device.say(pick(["measured", "box-described"] as const, random), { field: pick(fields, random), value: measured }, box);
  else if (does < 0.55) {
    const target = pick(device.has, random);
    if (target) device.say("crossed-out", { entry: target.entry.id }, target.entry.box);
  } else if (does < 0.7) device.say("fit-step", { job: pick(jobs, random), step: `step-${value}`, found: true }, box);
  else if (does < 0.75) device.say("started", { job: pick(jobs, random) }, box);
  else if (does < 0.8) device.say("limit-set", { item: "runout", value: measured, setBy: "reliability (invented)" }, box);
  else if (does < 0.9) device.say("reading", { what: "gland-gap", value: measured }, box);
  else if (does < 0.95) device.say("note", { text: `note ${value}` }, box);
  else device.sayNewer(pick(["measured", "weighed"], random), 9, { field: "shaft", value }, box);
}

/** Hands some of what one device has to another: in any order, some of it twice. */
export function exchange(from: Device, to: Device, random: () => number): void {
  const share = random();
  const some = from.has.filter(() => random() < share);
  to.take(shuffled([...some, ...some.filter(() => random() < 0.2)], random));
}

/** Devices that do things and see each other in part. The same seed does the same whatever the clocks say. */
export function history(seed: number, size: { readonly devices: number; readonly steps: number }, faults?: () => number): Device[] {
  const random = chance(seed);
  let now = noon;
  const devices = Array.from({ length: size.devices }, (_, number) => {
    const ids = chance(seed * 31 + number + 1);
    return new Device(number, ids, () => now + (faults?.() ?? 0));
  });
  for (let step = 0; step < size.steps; step++) {
    now += Math.floor(random() * 100_000);
    const device = pick(devices, random);
    if (random() < 0.75) doAnything(device, random);
    else exchange(pick(devices, random), device, random);
  }
  return devices;
}

/** Everything that any of these devices has, once each. */
export function allOf(devices: readonly Device[]): readonly Written[] {
  return [...new Map(devices.flatMap(({ has }) => has).map((one) => [one.entry.id, one])).values()];
}

/** A clock that is wrong by up to ten years, another time each time it is asked. */
export function wildClock(random: () => number): () => number {
  const tenYears = 10 * 365.25 * 24 * 3600 * 1000;
  return () => Math.round((random() * 2 - 1) * tenYears);
}

/** A state as one text, the order of everything in it included. */
export function stateText(state: unknown): string {
  return JSON.stringify(state, (_, value: unknown) => (value instanceof Map ? [...value] : value));
}
