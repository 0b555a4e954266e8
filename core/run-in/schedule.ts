import type { Motion } from "../box/index.ts";
import { isStem } from "../box/index.ts";
import type { OpenBand } from "../fit/index.ts";
import type { Citation } from "../sources/index.ts";
import { quantity } from "../units/index.ts";

/** A band as printed, in its own unit of time; flats have none. */
interface Printed {
  readonly low: number;
  readonly high?: number;
  readonly unit?: string;
}

/** One published schedule as it stands in data/. `null`: the source does not say. */
export interface ScheduleFact {
  readonly id: string;
  readonly motion: Motion | "stem";
  readonly firstWait: Printed | null;
  /** Flats of every nut in one move. */
  readonly step: Printed | null;
  readonly interval: Printed | null;
  /** Flats back when it runs hot. */
  readonly back?: Printed;
  readonly rounds?: number;
  readonly end: string;
  /** Drops a minute at the end. */
  readonly drip?: Printed;
  readonly citation: Citation;
}

/** One published schedule in SI. */
export interface Schedule {
  readonly id: string;
  readonly firstWait?: OpenBand;
  readonly step?: OpenBand;
  readonly interval?: OpenBand;
  readonly back?: OpenBand;
  readonly rounds?: number;
  readonly end: string;
  readonly drip?: OpenBand;
  readonly citation: Citation;
}

/** How far published schedules lie apart. */
export interface Spread {
  readonly firstWait?: OpenBand;
  readonly step?: OpenBand;
  readonly interval?: OpenBand;
  readonly schedules: readonly Schedule[];
}

const made = new WeakMap<readonly ScheduleFact[], Map<string, Spread>>();

/** The published schedules for one kind of motion, and their spread. Made once for each file of facts. */
export function spreadOf(motion: Motion, facts: readonly ScheduleFact[]): Spread {
  const branch = isStem(motion) ? "stem" : motion;
  let byBranch = made.get(facts);
  if (byBranch === undefined) {
    byBranch = new Map();
    made.set(facts, byBranch);
  }
  const before = byBranch.get(branch);
  if (before) return before;
  const schedules = facts.filter((fact) => fact.motion === branch).map(toSchedule);
  const spread: Spread = {
    ...widest("firstWait", schedules),
    ...widest("step", schedules),
    ...widest("interval", schedules),
    schedules,
  };
  byBranch.set(branch, spread);
  return spread;
}

function toSchedule(fact: ScheduleFact): Schedule {
  const { id, end, rounds, citation } = fact;
  return {
    id,
    ...inSi("firstWait", fact.firstWait),
    ...inSi("step", fact.step),
    ...inSi("interval", fact.interval),
    ...inSi("back", fact.back),
    ...(rounds === undefined ? {} : { rounds }),
    end,
    ...inSi("drip", fact.drip),
    citation,
  };
}

function inSi<N extends string>(name: N, printed: Printed | null | undefined): { readonly [key in N]?: OpenBand } {
  if (printed === null || printed === undefined) return {};
  const { unit } = printed;
  const si = (value: number): number => (unit === undefined ? value : quantity("time", value, unit));
  const band: OpenBand = printed.high === undefined ? { low: si(printed.low) } : { low: si(printed.low), high: si(printed.high) };
  return { [name]: band } as { readonly [key in N]?: OpenBand };
}

function widest<N extends "firstWait" | "step" | "interval">(name: N, schedules: readonly Schedule[]): { readonly [key in N]?: OpenBand } {
  const bands = schedules.flatMap((schedule) => schedule[name] ?? []);
  if (bands.length === 0) return {};
  const low = Math.min(...bands.map((band) => band.low));
  const high = Math.max(...bands.map((band) => band.high ?? band.low));
  return { [name]: { low, high } } as { readonly [key in N]?: OpenBand };
}
