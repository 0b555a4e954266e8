import type { Citation } from "../sources/index.ts";
import { type Answer, begin, keptByName, keptFor, notWithin, type Refused, type Workings } from "../workings/index.ts";
import type { Case, CaseFacts } from "./case.ts";
import { holds, type Sides, type When } from "./condition.ts";
import { sidesOf } from "./sides.ts";

export const severities = ["danger", "warning", "note", "always"] as const;
/** Danger: someone can be killed or maimed; warning: hurt; note: harm to machine, water or paper trail; always: the closing line. */
export type Severity = (typeof severities)[number];

/** One caution as it stands in data/: when it fits, and what it stands above. */
export interface CautionFact {
  readonly id: string;
  readonly severity: Severity;
  readonly when?: readonly When[];
  /** Names of question fields, groups of steps, and single steps. */
  readonly guards: { readonly inputs?: readonly string[]; readonly groups?: readonly string[]; readonly steps?: readonly string[] };
  readonly citations: readonly Citation[];
}

export interface CautionFacts extends CaseFacts {
  /** In the order in which they are to be read. */
  readonly cautions: readonly CautionFact[];
}

export interface Caution {
  readonly id: string;
  /** From 1, in reading order. */
  readonly order: number;
  readonly severity: Severity;
  readonly guards: { readonly inputs: readonly string[]; readonly groups: readonly string[]; readonly steps: readonly string[] };
  readonly citations: readonly Citation[];
}

export interface CautionsFound {
  readonly cautions: readonly Caution[];
  /** Each side of the case as it was taken; what nobody said is `unknown`. */
  readonly taken: readonly { readonly side: string; readonly value: string }[];
  /** Sides that nobody has said anything about. */
  readonly unknown: readonly string[];
}

const none: readonly string[] = [];

/**
 * The cautions that fit a case, in the order to be read: how the thing moves
 * first, the closing line last. What is not known counts as what would hurt.
 *
 * Units: temperature K (absolute), pressure Pa (gauge).
 * Range: temperature 0 to 3000 K, pressure -102 kPa to 1 GPa; refused outside. Unknown fluids and packings are named in the warnings.
 * Source: data/cautions, each caution with its own.
 * @example cautions({ motion: "turning", release: "allowed", zone: "ordinary" }, facts)
 */
export function cautions(given: Case, facts: CautionFacts): Answer<CautionsFound> {
  const refused = refuseCase(given);
  if (refused) return refused;
  const work = begin();
  return work.found(openCase(given, facts, work).found);
}

const temperatures = { min: 0, max: 3000 };
const pressures = { min: -102000, max: 1e9 };

/**
 * Refuses temperatures and pressures that no box has.
 *
 * Units: temperature K, pressure Pa (gauge).
 * Range: temperature 0 to 3000 K, pressure -102 kPa to 1 GPa; what is left out is not looked at.
 * Source: own-proposal, far beyond any packed box.
 * @example refuseCase({ motion: "turning", temperature: quantity("temperature", 80, "degC") }) // undefined
 */
export function refuseCase({ temperature, pressure }: Case): Refused | undefined {
  const cold = temperature === undefined ? undefined : notWithin("temperature", temperature, temperatures, "K");
  return cold ?? (pressure === undefined ? undefined : notWithin("pressure", pressure, pressures, "Pa"));
}

/** The cautions whose conditions hold, numbered. */
function cautionsFor(sides: Sides, facts: CautionFacts): readonly Caution[] {
  const found: Caution[] = [];
  for (const fact of facts.cautions) {
    if (!holds(fact.when, sides)) continue;
    const { inputs = none, groups = none, steps = none } = fact.guards;
    found.push({
      id: fact.id,
      order: found.length + 1,
      severity: fact.severity,
      guards: { inputs, groups, steps },
      citations: fact.citations,
    });
  }
  return found;
}

/** What stands above each step and each group of steps, in reading order. */
export interface Guards {
  above(step: string, group: string): readonly string[];
}

/** Looks up, for one case, which cautions stand above which step. */
function guardsOf(found: readonly Caution[]): Guards {
  const orders = new Map<string, number>();
  const byGroup = new Map<string, string[]>();
  const byStep = new Map<string, string[]>();
  for (const { id, order, guards } of found) {
    orders.set(id, order);
    for (const group of guards.groups) add(byGroup, group, id);
    for (const step of guards.steps) add(byStep, step, id);
  }
  return {
    above(step, group) {
      const ofGroup = byGroup.get(group) ?? none;
      const ofStep = byStep.get(step);
      if (ofStep === undefined) return ofGroup;
      if (ofGroup.length === 0) return ofStep;
      return inOrder(ofGroup, ofStep, orders);
    },
  };
}

/** Two lists that are each in reading order, as one, every caution once. */
function inOrder(one: readonly string[], other: readonly string[], orders: ReadonlyMap<string, number>): readonly string[] {
  const both: string[] = [];
  for (let i = 0, j = 0; i < one.length || j < other.length; ) {
    const [left, right] = [one[i], other[j]];
    const order = (id: string | undefined) => (id === undefined ? Number.POSITIVE_INFINITY : (orders.get(id) ?? 0));
    const [before, after] = [order(left), order(right)];
    both.push((before <= after ? left : right) ?? "");
    if (before <= after) i++;
    if (after <= before) j++;
  }
  return both;
}

function add(map: Map<string, string[]>, key: string, id: string): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [id]);
  else list.push(id);
}

export interface OpenCase {
  readonly sides: Sides;
  readonly guards: Guards;
  readonly found: CautionsFound;
}

/** Cases by their sides: what cautions and steps make of a case that does not hang on a number is worked out once. */
const casesOf = keptFor((facts: CautionFacts) =>
  keptByName((sides: Sides): OpenCase => {
    const names = Object.keys(sides);
    const fitting = cautionsFor(sides, facts);
    return {
      sides,
      guards: guardsOf(fitting),
      found: {
        cautions: fitting,
        taken: names.map((side) => ({ side, value: sides[side] ?? "unknown" })),
        unknown: names.filter((side) => sides[side] === "unknown"),
      },
    };
  }),
);

/**
 * Opens a case for the steps of the work: its sides, the cautions that fit it, and what stands above each step.
 *
 * Units: none.
 * Range: any case that `refuseCase` lets through. Unknown fluids and packings are named in the warnings.
 * Source: data/cautions, each caution with its own.
 * @example openCase({ motion: "turning" }, facts, begin()).guards.above("step-start", "start")
 */
export function openCase(given: Case, facts: CautionFacts, work: Workings): OpenCase {
  const sides = sidesOf(given, facts, work);
  let name = "";
  for (const side in sides) name += `${sides[side]} `;
  return casesOf(facts)(name, sides);
}
