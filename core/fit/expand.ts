import { holds, type OpenCase, type Sides } from "../cautions/index.ts";
import { inUnit, type Time } from "../units/index.ts";
import type { Shown } from "../workings/index.ts";
import type { Setting, Settings } from "./settings.ts";
import type { OpenBand, Step, StepFact, StepGroup, StepValue } from "./step.ts";

/** What is foretold of one step's number. */
export interface Expected {
  readonly predicted?: StepValue;
  readonly tolerance?: StepValue;
  readonly most?: StepValue;
}

/** Everything that turns steps from data/ into the steps of one box. */
export interface Expansion {
  readonly open: OpenCase;
  /** The case's sides with those of the box added. */
  readonly sides: Sides;
  readonly settings: Settings;
  /** Reasons that every step offers. */
  readonly reasons: readonly string[];
  /** Packing rings in the box, and how many lie between throat and lantern ring. */
  readonly rings: number;
  readonly throatSide: number;
  /** Clock hour of a ring's joint. */
  clock(ring: number): number | undefined;
  expected(what: string, ring: number | undefined): Expected | undefined;
  /** Which setting a step means when it depends on the box; the name itself otherwise. */
  setting?(name: string): string;
}

const none: readonly string[] = [];

/**
 * Steps of one group that fit the case, one for each ring where a step is done ring by ring, one for each time where it is done again.
 *
 * Units: as each step says; times s.
 * Range: a step whose setting or prediction is not there comes without it.
 * Source: data/steps and data/run-in, each step with its own.
 * @example expand("close", facts.groups.close ?? [], by)
 */
export function expand(group: StepGroup, facts: readonly StepFact[], by: Expansion): Step[] {
  const fitting = facts.filter((fact) => holds(fact.when, by.sides));
  const steps: Step[] = [];
  for (let at = 0; at < fitting.length; ) {
    const fact = fitting[at];
    if (fact === undefined) break;
    if (fact.each === undefined) {
      if (fact.at === undefined) steps.push(step(group, fact, by, undefined, undefined));
      else for (const time of fact.at) steps.push(step(group, fact, by, undefined, time));
      at++;
      continue;
    }
    let end = at;
    while (fitting[end]?.each === fact.each) end++;
    const [first, last] = fact.each === "throat-side" ? [1, by.throatSide] : [by.throatSide + 1, by.rings];
    for (let ring = first; ring <= last; ring++) {
      for (const one of fitting.slice(at, end)) steps.push(step(group, one, by, ring, undefined));
    }
    at = end;
  }
  return steps;
}

function step(group: StepGroup, fact: StepFact, by: Expansion, ring: number | undefined, time: string | undefined): Step {
  const { id, kind, measures, loop, until, items = none, blanks = none, choices = none, citations } = fact;
  const take = (name: string | undefined) => (name === undefined ? undefined : by.settings.take(by.setting?.(name) ?? name));
  const [wait, flats, rounds, most, least, at] = [fact.wait, fact.flats, fact.rounds, fact.most, fact.least, time].map(take);
  const expected = fact.expects === undefined ? undefined : by.expected(fact.expects, ring);
  const clock = ring === undefined ? undefined : by.clock(ring);
  const shown: Record<string, Shown> = {};
  if (ring !== undefined) Object.assign(shown, { ring, rings: by.rings });
  if (clock !== undefined) shown.clock = clock;
  if (wait) {
    shown.wait = wait.shown;
    shown.hours = inUnit("time", wait.use as Time, "h");
  }
  if (flats) shown.flats = flats.shown;
  if (rounds) shown.rounds = rounds.high ?? rounds.use;
  if (at) shown.hours = inUnit("time", at.use as Time, "h");
  for (const bound of [most, least]) if (bound) shown.limit = bound.shown;
  return {
    id: ring !== undefined ? `${id}-${ring}` : at === undefined ? id : `${id}-${shown.hours}h`,
    group,
    kind,
    says: { id, with: shown },
    ...(ring === undefined ? {} : { ring }),
    ...(measures === undefined ? {} : { measures }),
    ...expected,
    ...(most ? { most: value(most) } : {}),
    ...(least ? { least: value(least) } : {}),
    ...(wait ? { wait: band(wait) } : {}),
    ...(flats ? { flats: band(flats) } : {}),
    ...(rounds ? { rounds: band(rounds) } : {}),
    ...(loop === undefined ? {} : { loop }),
    ...(until === undefined ? {} : { until }),
    ...(at ? { at: at.use } : {}),
    items,
    blanks,
    choices,
    cautions: by.open.guards.above(id, group),
    cannot: fact.also === undefined ? by.reasons : [...fact.also, ...by.reasons],
    bridge: fact.without === "bridge",
    citations: [...citations, ...[wait, flats, rounds, most, least, at].flatMap((setting) => setting?.citations ?? [])],
  };
}

function value({ kind, use }: Setting): StepValue {
  return { kind: kind === "flats" ? "count" : kind, value: use };
}

function band({ low, high }: Setting): OpenBand {
  return high === undefined ? { low } : { low, high };
}
