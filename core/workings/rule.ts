import type { Citation } from "../sources/index.ts";

/** A range that something must lie in; an end left out is open. In SI units. */
export interface Range {
  readonly min?: number;
  readonly max?: number;
}

/** One symbol on the right-hand side of a rule. */
export interface Input {
  /** As printed in the expression. */
  readonly symbol: string;
  /** What it is: an id that words/ turns into a name. */
  readonly name: string;
  /** SI unit, `1` for a plain number. */
  readonly unit: string;
  /** Where the rule holds. Outside it the result is flagged in the warnings. */
  readonly valid?: Range;
}

/**
 * A formula, a limit or a rule of the trade, stated once. A step of the
 * workings points at it and carries only numbers.
 */
export interface Rule {
  readonly id: string;
  /** The result's symbol. */
  readonly symbol: string;
  /** What the result is: an id that words/ turns into a name. Defaults to `id`. */
  readonly name?: string | undefined;
  /** The right-hand side as printed in the source, in these symbols. */
  readonly expression: string;
  /** SI unit of the result, `1` for a plain number. */
  readonly unit: string;
  readonly inputs: readonly Input[];
  readonly citation: Citation;
  /** A setting taken for lack of a measurement, with the spread to show beside it. */
  readonly assumed?: Range | undefined;
  /** The inputs that have a range to be looked at; `rule` picks them out, for the sake of speed. */
  readonly guards: readonly Guard[];
}

/** Where one input of a rule has to lie for the rule to hold. */
export interface Guard {
  /** Which of the rule's inputs. */
  readonly at: number;
  readonly input: string;
  readonly min: number;
  readonly max: number;
}

/** Declares a rule. The order of `inputs` is the order of the numbers in each step. */
export function rule(declared: Omit<Rule, "guards">): Rule {
  const { id, symbol, name, expression, unit, inputs, citation, assumed } = declared;
  // Each rule has the same members in the same order: that keeps noting a step quick.
  return { id, symbol, name, expression, unit, inputs, citation, assumed, guards: guardsOf(inputs) };
}

function guardsOf(inputs: readonly Input[]): readonly Guard[] {
  const guards: Guard[] = [];
  for (let at = 0; at < inputs.length; at++) {
    const { name, valid } = inputs[at] as Input;
    if (valid) guards.push({ at, input: name, min: valid.min ?? Number.NEGATIVE_INFINITY, max: valid.max ?? Number.POSITIVE_INFINITY });
  }
  return guards;
}
