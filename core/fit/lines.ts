import { type Guards, holds, type Sides } from "../cautions/index.ts";
import { inUnit, type Time } from "../units/index.ts";
import { ready } from "./ready.ts";
import type { KnownSettings, Setting } from "./settings.ts";
import type { Step, StepFact, StepGroup } from "./step.ts";

/** All that decides steps and is no number of one box. */
export interface SameForCase {
  /** The case's sides with those of the box added. */
  readonly sides: Sides;
  readonly guards: Guards;
  readonly settings: KnownSettings;
  /** Reasons that every step offers. */
  readonly reasons: readonly string[];
  /** Which setting a step means where it depends on the case; the name itself otherwise. */
  readonly alias?: (name: string) => string;
}

/** One step as it is for every box of a case: whole, but for what is foretold and for the ring it is done on. */
export interface Line {
  readonly step: Step;
  /** What its number is foretold by. */
  readonly expects: string | undefined;
  /** Settings that it shows, for the workings. */
  readonly uses: readonly Setting[];
}

/** Lines done one after the other: once, or for each ring on one side of the lantern ring. */
export interface Block {
  readonly each: StepFact["each"];
  readonly lines: readonly Line[];
}

const none: readonly string[] = [];

/**
 * The steps of one group that fit a case, made as far as they can be without the numbers of a box.
 *
 * Units: as each step says; times s.
 * Range: a step whose setting is not there comes without it.
 * Source: data/steps and data/run-in, each step with its own.
 * @example linesOf("close", facts.groups.close ?? [], by)
 */
export function linesOf(group: StepGroup, facts: readonly StepFact[], by: SameForCase): readonly Block[] {
  const blocks: { each: StepFact["each"]; lines: Line[] }[] = [];
  for (const fact of facts) {
    if (!holds(fact.when, by.sides)) continue;
    const last = blocks.at(-1);
    const block = last?.each === fact.each ? last : undefined;
    const lines = block?.lines ?? [];
    if (block === undefined || last === undefined) blocks.push({ each: fact.each, lines });
    // Only a step that is not done ring by ring is done again at set times.
    if (fact.each !== undefined || fact.at === undefined) lines.push(line(group, fact, by, undefined));
    else for (const time of fact.at) lines.push(line(group, fact, by, by.settings.get(time)));
  }
  return blocks;
}

function line(group: StepGroup, fact: StepFact, by: SameForCase, at: Setting | undefined): Line {
  const { id } = fact;
  const same = ready(fact, by.settings, by.reasons, by.alias);
  const hours = at === undefined ? undefined : inUnit("time", at.use as Time, "h");
  return {
    step: {
      id: hours === undefined ? id : `${id}-${hours}h`,
      group,
      kind: fact.kind,
      says: hours === undefined ? same.says : { id, with: { hours } },
      ring: undefined,
      measures: fact.measures,
      predicted: undefined,
      tolerance: undefined,
      least: same.least,
      most: same.most,
      wait: same.wait,
      flats: same.flats,
      rounds: same.rounds,
      loop: fact.loop,
      until: fact.until,
      at: at?.use,
      items: fact.items ?? none,
      blanks: fact.blanks ?? none,
      choices: fact.choices ?? none,
      cautions: by.guards.above(id, group),
      cannot: same.cannot,
      bridge: fact.without === "bridge",
      citations: at === undefined ? same.citations : [...same.citations, ...at.citations],
    },
    expects: fact.expects,
    uses: at === undefined ? same.uses : [...same.uses, at],
  };
}
