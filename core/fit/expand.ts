import type { Says } from "../workings/index.ts";
import type { Block, Line } from "./lines.ts";
import type { Settings } from "./settings.ts";
import type { Step, StepValue } from "./step.ts";

/** What is foretold of one step's number. */
export interface Expected {
  readonly predicted?: StepValue | undefined;
  readonly tolerance?: StepValue | undefined;
  readonly most?: StepValue | undefined;
}

/** The numbers of one box that go into its steps. */
export interface Expansion {
  readonly settings: Settings;
  /** Packing rings in the box, and how many lie between throat and lantern ring. */
  readonly rings: number;
  readonly throatSide: number;
  /** Clock hour of a ring's joint. */
  clock(ring: number): number | undefined;
  expected(what: string, ring: number | undefined): Expected | undefined;
}

/**
 * Adds the steps of one box to a list, from the lines of its case: one for each ring where a line is done ring by ring.
 *
 * Units: as each step says; times s.
 * Range: a step whose prediction is not there comes without it.
 * Source: data/steps and data/run-in, each step with its own.
 * @example expand(steps, lines, by)
 */
export function expand(steps: Step[], blocks: readonly Block[], by: Expansion): void {
  for (const { each, lines } of blocks) {
    if (each === undefined) {
      for (const line of lines) steps.push(stepOf(line, by, undefined));
      continue;
    }
    const last = each === "throat-side" ? by.throatSide : by.rings;
    for (let ring = each === "throat-side" ? 1 : by.throatSide + 1; ring <= last; ring++) {
      for (const line of lines) steps.push(stepOf(line, by, ring));
    }
  }
}

function stepOf(line: Line, by: Expansion, ring: number | undefined): Step {
  const { step, uses, expects } = line;
  for (const setting of uses) by.settings.use(setting);
  const expected = expects === undefined ? undefined : by.expected(expects, ring);
  if (ring === undefined && expected === undefined) return step;
  // Every member by name: copying by spread takes several times as long.
  return {
    id: ring === undefined ? step.id : `${step.id}-${ring}`,
    group: step.group,
    kind: step.kind,
    says: ring === undefined ? step.says : ringSays(step.id, by, ring),
    ring,
    measures: step.measures,
    predicted: expected?.predicted,
    tolerance: expected?.tolerance,
    least: step.least,
    most: step.most ?? expected?.most,
    wait: step.wait,
    flats: step.flats,
    rounds: step.rounds,
    loop: step.loop,
    until: step.until,
    at: step.at,
    items: step.items,
    blanks: step.blanks,
    choices: step.choices,
    cautions: step.cautions,
    cannot: step.cannot,
    bridge: step.bridge,
    citations: step.citations,
  };
}

function ringSays(id: string, by: Expansion, ring: number): Says {
  const clock = by.clock(ring);
  return { id, with: clock === undefined ? { ring, rings: by.rings } : { ring, rings: by.rings, clock } };
}
