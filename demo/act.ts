import type { Bodies, EntryKind, FieldValue, Measured } from "@ringwright/logbook";
import type { Person } from "./ids.ts";
import type { Known } from "./said.ts";

/** Something that somebody did at a box, before it is an entry. */
export interface Act<Kind extends EntryKind = EntryKind> {
  readonly box: string;
  readonly minutesAgo: number;
  readonly by: Person;
  readonly kind: Kind;
  readonly body: Bodies[Kind];
}

const minute = 1;
export const hour = 60 * minute;
export const day = 24 * hour;

/** Which kind of entry says a field. */
function kindOf(field: string): "box-described" | "measured" | "rings-chosen" {
  if (field.startsWith("set.")) return "rings-chosen";
  return /^(?:shaft|bore|depth|lantern|port|follower|studs|condition|flush[.]set)(?:[.]|$)/u.test(field) ? "measured" : "box-described";
}

/** Notes what happens at one box; between two things that are written, a quarter of a minute goes by. */
export class Diary {
  readonly acts: Act[] = [];
  readonly #box: string;
  #minutesAgo = 0;
  #by: Person = "fitter";

  constructor(box: string) {
    this.#box = box;
  }

  /** Goes on at a time before now, in another person's hand where one is named. */
  at(minutesAgo: number, by: Person = this.#by): this {
    this.#minutesAgo = minutesAgo;
    this.#by = by;
    return this;
  }

  write<Kind extends EntryKind>(kind: Kind, body: Bodies[Kind]): this {
    this.acts.push({ box: this.#box, minutesAgo: this.#minutesAgo, by: this.#by, kind, body });
    this.#minutesAgo -= 0.25;
    return this;
  }

  fields(known: Known): this {
    for (const [field, value] of Object.entries(known)) this.field(field, value);
    return this;
  }

  field(field: string, value: FieldValue): this {
    return this.write(kindOf(field), { field, value });
  }

  reading(what: string, value: null | number | string | Measured): this {
    return this.write("reading", { what, value });
  }

  adjustment(flats: readonly number[], why?: string): this {
    return this.write("adjustment", { flats, ...(why === undefined ? {} : { why }) });
  }
}
