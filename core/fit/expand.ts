import { holds, type OpenCase, type Sides } from "../cautions/index.ts";
import { inUnit, type Time } from "../units/index.ts";
import type { Says } from "../workings/index.ts";
import { ready } from "./ready.ts";
import type { Settings } from "./settings.ts";
import type { Step, StepFact, StepGroup, StepValue } from "./step.ts";

/** What is foretold of one step's number. */
export interface Expected {
  readonly predicted?: StepValue | undefined;
  readonly tolerance?: StepValue | undefined;
  readonly most?: StepValue | undefined;
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
  /** Which setting a step means where it depends on the box; the name itself otherwise. */
  readonly alias?: (name: string) => string;
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
    const together = fitting.slice(at, end);
    for (let ring = first; ring <= last; ring++) {
      for (const one of together) steps.push(step(group, one, by, ring, undefined));
    }
    at = end;
  }
  return steps;
}

function step(group: StepGroup, fact: StepFact, by: Expansion, ring: number | undefined, time: string | undefined): Step {
  const { id } = fact;
  const same = ready(fact, by.settings, by.reasons, by.alias);
  for (const name of same.uses) by.settings.take(name);
  const expected = fact.expects === undefined ? undefined : by.expected(fact.expects, ring);
  const at = time === undefined ? undefined : by.settings.take(time);
  const hours = at === undefined ? undefined : inUnit("time", at.use as Time, "h");
  // Every step has the same members in the same order: that keeps making a hundred of them quick.
  return {
    id: ring !== undefined ? `${id}-${ring}` : hours === undefined ? id : `${id}-${hours}h`,
    group,
    kind: fact.kind,
    says: ring !== undefined ? ringSays(id, by, ring) : hours === undefined ? same.says : { id, with: { hours } },
    ring,
    measures: fact.measures,
    predicted: expected?.predicted,
    tolerance: expected?.tolerance,
    least: same.least,
    most: same.most ?? expected?.most,
    wait: same.wait,
    flats: same.flats,
    rounds: same.rounds,
    loop: fact.loop,
    until: fact.until,
    at: at?.use,
    items: fact.items ?? none,
    blanks: fact.blanks ?? none,
    choices: fact.choices ?? none,
    cautions: by.open.guards.above(id, group),
    cannot: same.cannot,
    bridge: fact.without === "bridge",
    citations: at === undefined ? same.citations : [...same.citations, ...at.citations],
  };
}

function ringSays(id: string, by: Expansion, ring: number): Says {
  const clock = by.clock(ring);
  return { id, with: clock === undefined ? { ring, rings: by.rings } : { ring, rings: by.rings, clock } };
}
