/** Any JSON value. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };

/**
 * One thing that happened to one box, written where it happened and never
 * changed. Its truth is its canonical JSON bytes (RFC 8785); everything else
 * that the program shows is worked out from entries.
 */
export interface Entry<Kind extends string = string, Body = { readonly [name: string]: Json }> {
  /** Version of this envelope. */
  readonly v: 1;
  /** UUID version 7 (RFC 9562), made on the device. */
  readonly id: string;
  readonly site: string;
  /** The box it is about; null when it is about the site. */
  readonly box: string | null;
  readonly kind: Kind;
  /** Version of the body's shape. Older ones are lifted on reading, newer ones kept and shown as newer. */
  readonly kindVersion: number;
  readonly at: At;
  /** Opaque id of a person; the name stands in a table that may change. */
  readonly by: string;
  /** The installation that wrote it. */
  readonly device: string;
  /** Counts up from 1 per site and device, without gaps. */
  readonly seq: number;
  /** SHA-256 in hexadecimal of the bytes of the entry before, of the same site and device; null for the first. */
  readonly prev: string | null;
  /** The entries that said the same fact last, as far as the writer had seen. Neither after the other: both stand until a person settles it. */
  readonly after: readonly string[];
  readonly body: Body;
  /** The method behind a worked-out figure in the body, with its version; null when there is none. */
  readonly method: string | null;
}

/** When something happened. Clocks only order what is shown; `after` and `seq` say what came first. */
export interface At {
  /** RFC 3339 with offset, by the clock of the device. */
  readonly device: string;
  /** How far the server's clock was ahead, milliseconds; null when it was not known. */
  readonly serverOffsetMs: number | null;
  /** When it happened, for what was written on paper and typed later: RFC 3339 with offset. */
  readonly happened?: string;
}

/** A quantity as measured: the SI value rules, and what was typed is kept. */
export interface Measured {
  readonly value: number;
  /** SI unit, spelled as core/units does. */
  readonly unit: string;
  readonly typed: string;
}

/** Several readings of one dimension, and how they were taken. */
export interface Readings {
  readonly readings: readonly Measured[];
  readonly how?: string;
  readonly resolution?: Measured;
}

/** Readings of one dimension in several planes, and how they were taken. */
export interface Planes {
  readonly planes: readonly (readonly Measured[])[];
  readonly readings?: readonly Measured[];
  readonly how?: string;
  readonly resolution?: Measured;
}

/** What is said about one field of a box: null is "don't know", which is an answer. */
export type FieldValue = null | boolean | number | string | readonly string[] | Measured | readonly Measured[] | Readings | Planes;

/** The body of an entry that says one field: a name of the survey in dots, such as `port.diameter`. */
export interface FieldBody {
  readonly field: string;
  readonly value: FieldValue;
}

/** Bodies of every kind that this version writes. */
export interface Bodies {
  /** What the box is and where it stands: its identity, motion, zone, datum, service. */
  "box-described": FieldBody;
  /** What was measured or seen at the box. */
  measured: FieldBody;
  /** Section, packing and set that a person settled on. */
  "rings-chosen": FieldBody;
  /** One step of a fitting job: ticked, counted, measured, or not done and why. */
  "fit-step": {
    readonly job: string;
    readonly step: string;
    /** Ticked, or what was counted, measured, chosen. Null when the step was not done. */
    readonly found: null | boolean | number | string | Measured | readonly Measured[];
    /** What the plan foretold for this number when it was written down. The entry's method says by what. */
    readonly expected?: number | Measured;
    /** What was written into the step's blanks, by the blank's id. */
    readonly blanks?: { readonly [blank: string]: string };
    /** Reason why it can't be done, by id; a bridge entry says who owns it and until when. */
    readonly cannot?: string;
  };
  /** The machine runs on the set of a job. */
  started: { readonly job: string };
  /** Something read on a round or during run-in. */
  reading: { readonly what: string; readonly state?: string; readonly value: null | number | string | Measured };
  /** Nuts moved: flats in, negative out, per nut or all alike. */
  adjustment: { readonly flats: readonly number[]; readonly why?: string };
  /** Old rings as they came out, from the gland inward. */
  "old-rings": { readonly rings: readonly { readonly [name: string]: Json }[]; readonly note?: string };
  /** A make-do with an owner and an end date. */
  bridge: {
    readonly job?: string;
    readonly step?: string;
    readonly why: string;
    readonly owner: string;
    /** A day: 2031-04-30. */
    readonly until: string;
  };
  photo: { readonly hash: string; readonly type: string; readonly bytes: number; readonly caption?: string };
  note: { readonly text: string };
  /** A limit that the site sets for this box, with who set it and why. */
  "limit-set": { readonly item: string; readonly value: null | number | Measured; readonly setBy: string; readonly why?: string };
  /** A card as issued: its numbers and method versions stay as they were. */
  "card-issued": { readonly card: string; readonly paper: string; readonly survey: Json; readonly figures: Json };
  signed: { readonly entry: string; readonly meaning: string; readonly name: string };
  /** An entry that was wrong. It stays readable. */
  "crossed-out": { readonly entry: string; readonly why?: string };
  linked: { readonly to: string; readonly as: string };
}

export type EntryKind = keyof Bodies;
