import { type Refused, refuse, type Workings } from "../workings/index.ts";

/** Where a leak was seen to come out. Only what comes along the shaft says anything about the gap there. */
export const leakPlaces = ["along-shaft", "round-outside", "under-sleeve", "spray"] as const;
type LeakPlace = (typeof leakPlaces)[number];

export const shaftStates = ["running", "standing"] as const;
export type ShaftState = (typeof shaftStates)[number];

/** How a leak was observed. */
export interface Observed {
  readonly where?: LeakPlace;
  readonly state?: ShaftState;
  /** With the flush on, the leak is flush water that comes past the gland-side rings only. */
  readonly flushOn?: boolean;
}

/** Refuses a leak that does not come along the shaft. */
export function wrongPlace({ where }: Observed): Refused | undefined {
  if (where === undefined || where === "along-shaft") return undefined;
  return refuse({
    kind: "impossible",
    input: "where",
    given: where,
    allowed: ["along-shaft"],
    says: { id: `leak-${where}` },
    citation: { source: "mechanics", at: "the formula is for the gap between shaft and rings" },
  });
}

/** Says what a reading holds for, and what was not said about it. */
export function sayWhatItHoldsFor(work: Workings, { where, state, flushOn }: Observed): void {
  if (where === undefined) work.warn({ kind: "gap", input: "where", says: { id: "leak-place-not-said" } });
  if (state === undefined) work.warn({ kind: "gap", input: "state", says: { id: "leak-state-not-said" } });
  else work.warn({ kind: "note", input: "state", given: state, says: { id: `leak-${state}-only` } });
  if (flushOn === undefined) work.warn({ kind: "gap", input: "flushOn", says: { id: "leak-flush-not-said" } });
  else work.warn({ kind: "note", input: "flushOn", says: { id: flushOn ? "leak-flush-on" : "leak-flush-off" } });
}
