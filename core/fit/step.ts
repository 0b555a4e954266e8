import type { When } from "../cautions/index.ts";
import type { Citation } from "../sources/index.ts";
import type { Kind } from "../units/index.ts";
import type { Says } from "../workings/index.ts";

/** The parts of the job, in the order in which they are done. */
export const stepGroups = ["kit", "isolate", "open", "clean", "inspect", "cut", "fit", "close", "start", "run", "settle", "check"] as const;
export type StepGroup = (typeof stepGroups)[number];

export const stepKinds = ["tick", "number", "text", "choice", "wait"] as const;
export type StepKind = (typeof stepKinds)[number];

/** What a number measures: a quantity, a count of things, or events per minute. */
export type Measured = Kind | "count" | "rate";

/** One step as it stands in data/. */
export interface StepFact {
  readonly id: string;
  readonly kind: StepKind;
  readonly when?: readonly When[];
  /** Done once for each ring on that side of the lantern ring; neighbours with the same side are done ring by ring. */
  readonly each?: "throat-side" | "gland-side";
  readonly measures?: Measured;
  /** Which predicted value stands beside the number. */
  readonly expects?: string;
  /** Settings that bound the number, or that the step waits, moves or repeats by. */
  readonly most?: string;
  readonly least?: string;
  readonly wait?: string;
  readonly flats?: string;
  readonly rounds?: string;
  /** Steps with the same name here are done over and over, until the named end. */
  readonly loop?: string;
  readonly until?: string;
  /** Done at each of these times after the start. */
  readonly at?: readonly string[];
  readonly items?: readonly string[];
  readonly blanks?: readonly string[];
  readonly choices?: readonly string[];
  /** Reasons to tap for "can't do it", beside those that every step has. */
  readonly also?: readonly string[];
  /** What leaving it out comes to: a make-do with owner and end date, or no way past. */
  readonly without: "bridge" | "stop";
  readonly citations: readonly Citation[];
}

/** A number with its kind, for a step's prediction or limit. */
export interface StepValue {
  readonly kind: Measured;
  readonly value: number;
}

/** From low to high; an open end where the source says "at least". */
export interface OpenBand {
  readonly low: number;
  readonly high?: number;
}

/** One thing to do, with a tick or a number. */
export interface Step {
  /** Unique in the list: `step-seat-ring-firm-3`. */
  readonly id: string;
  readonly group: StepGroup;
  readonly kind: StepKind;
  readonly says: Says;
  readonly ring?: number | undefined;
  readonly measures?: Measured | undefined;
  readonly predicted?: StepValue | undefined;
  /** Off by more than this either way: stop. */
  readonly tolerance?: StepValue | undefined;
  readonly least?: StepValue | undefined;
  readonly most?: StepValue | undefined;
  /** s */
  readonly wait?: OpenBand | undefined;
  /** Sixths of a turn of every nut. */
  readonly flats?: OpenBand | undefined;
  readonly rounds?: OpenBand | undefined;
  readonly loop?: string | undefined;
  readonly until?: string | undefined;
  /** s after the start */
  readonly at?: number | undefined;
  readonly items: readonly string[];
  readonly blanks: readonly string[];
  readonly choices: readonly string[];
  /** Ids of the cautions that stand above it, in reading order. */
  readonly cautions: readonly string[];
  /** Reasons to tap when it can't be done. */
  readonly cannot: readonly string[];
  /** Leaving it out makes a bridge entry with owner and end date; when false there is no way past it. */
  readonly bridge: boolean;
  readonly citations: readonly Citation[];
}

export type StepFacts = {
  readonly [group in StepGroup]?: readonly StepFact[];
};
