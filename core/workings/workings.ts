import { siUnits } from "../units/index.ts";
import {
  type Answer,
  type Band,
  type Found,
  type Refused,
  refuse,
  type Says,
  type Shown,
  type Step,
  type Uncertain,
  type Warning,
} from "./answer.ts";
import type { Guard, Range, Rule } from "./rule.ts";

/** Whether a number lies in a range; NaN never does. */
export function within(range: Range, value: number): boolean {
  return value >= (range.min ?? -Infinity) && value <= (range.max ?? Infinity);
}

const none: readonly Warning[] = [];

/** Writes down the steps of one answer as it is worked out. Made by `begin`, closed by `found`. */
export class Workings {
  readonly #steps: Step[] = [];
  /** Made with the first warning: most answers have none. */
  #warnings: Warning[] | undefined;
  #overflow: Rule | undefined;

  /** Notes a step and hands back its value. Inputs outside the rule's validity are flagged. */
  step<Q extends number>(rule: Rule, inputs: readonly number[], value: Q, uncertainty?: number): Q {
    this.#steps.push(uncertainty === undefined ? [rule, inputs, value] : [rule, inputs, value, uncertainty]);
    if (!Number.isFinite(value)) this.#overflow ??= rule;
    if (rule.guards.length > 0) this.#look(rule, inputs);
    return value;
  }

  #look(rule: Rule, inputs: readonly number[]): void {
    for (let i = 0; i < rule.guards.length; i++) {
      const guard = rule.guards[i] as Guard;
      const given = inputs[guard.at];
      if (given !== undefined && !(given >= guard.min && given <= guard.max)) this.#flag(rule, guard, given);
    }
  }

  /** Notes a value taken for lack of a measurement; its rule carries the spread. */
  assume<Q extends number>(rule: Rule, value: Q): Q {
    return this.step(rule, [], value);
  }

  warn(warning: Warning): void {
    if (this.#warnings === undefined) this.#warnings = [warning];
    else this.#warnings.push(warning);
  }

  /** Takes over the workings (`only` those that count here) and warnings of an answer this one rests on, and hands back its value. */
  take<T>(answer: Found<T>, only?: (step: Step) => boolean): T {
    const { workings, warnings } = answer;
    for (let i = 0; i < workings.length; i++) {
      const step = workings[i] as Step;
      if (only === undefined || only(step)) this.#steps.push(step);
    }
    for (let i = 0; i < warnings.length; i++) this.warn(warnings[i] as Warning);
    return answer.value;
  }

  /** Closes the answer. Numbers too large to work with are refused here, in one place. */
  found<T>(value: T): Answer<T> {
    if (this.#overflow) return tooLarge(this.#overflow);
    return { ok: true, value, workings: this.#steps, warnings: this.#warnings ?? none };
  }

  #flag(rule: Rule, { at, input }: Guard, given: number): void {
    this.warn({
      kind: "outside-validity",
      input,
      given,
      says: { id: "outside-validity", with: { rule: rule.id, input, given, ...rule.inputs[at]?.valid } },
      citation: rule.citation,
    });
  }
}

function tooLarge(rule: Rule): Refused {
  return refuse({
    kind: "outside-range",
    input: rule.inputs[0]?.name ?? rule.id,
    says: { id: "no-finite-result", with: { rule: rule.id } },
    citation: rule.citation,
  });
}

/** Opens the workings of an answer. */
export function begin(): Workings {
  return new Workings();
}

/**
 * Refuses the first input that lies outside what the rule allows, or is not a
 * number. `undefined` when all is well.
 */
export function outside(checks: readonly (readonly [input: string, value: number, range: Range, unit: string])[]): Refused | undefined {
  for (let i = 0; i < checks.length; i++) {
    const check = checks[i];
    const refused = check && notWithin(check[0], check[1], check[2], check[3]);
    if (refused) return refused;
  }
  return undefined;
}

/** The same for one input, where many are looked at in the hot path: nothing is made unless it is refused. */
export function notWithin(input: string, value: number, range: Range, unit: string): Refused | undefined {
  return within(range, value) ? undefined : refuseOutside(input, value, range, unit);
}

/** Apart from the look, which so stays short enough to be compiled into whatever looks. */
function refuseOutside(input: string, value: number, range: Range, unit: string): Refused {
  return refuse({
    kind: "outside-range",
    input,
    given: Number.isFinite(value) ? value : String(value),
    allowed: { ...range, unit },
    says: saysOutside(input, value, range, unit),
  });
}

/** The kinds of quantity by their SI unit; of those that share one, the first. */
const kindOf: ReadonlyMap<string, string> = new Map(
  Object.entries(siUnits)
    .map(([kind, unit]) => [unit, kind] as const)
    .reverse(),
);

function saysOutside(input: string, value: number, { min, max }: Range, unit: string): Says {
  const kind = /stress/iu.test(input) ? "stress" : /rise|difference/iu.test(input) ? "temperature-difference" : kindOf.get(unit);
  const shown = (number: number): Shown => (Number.isFinite(number) ? (kind ? { value: number, kind } : number) : String(number));
  const [low, high] = [min === Number.MIN_VALUE ? 0 : min, max];
  const open = `${min === undefined ? "" : min === Number.MIN_VALUE ? "-above" : "-from"}${max === undefined ? "" : "-to"}`;
  return {
    id: `outside-range${open}`,
    with: {
      input,
      given: shown(value),
      ...(low === undefined ? {} : { low: shown(low) }),
      ...(high === undefined ? {} : { high: shown(high) }),
    },
  };
}

export function uncertain<Q extends number>(mean: Q, u: Q | 0 = 0): Uncertain<Q> {
  return { mean, u: u as Q };
}

export function band<Q extends number>(one: Q, other: Q): Band<Q> {
  return one <= other ? { low: one, high: other } : { low: other, high: one };
}
