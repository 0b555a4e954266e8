import type { Answer, Refusal, Says, Step, Warning } from "@ringwright/core/workings";
import { expect } from "vitest";
import { english } from "../words/en/index.ts";

/** The value of an answer that a test counts on; a refusal stops the test and shows itself. */
export function found<T>(answer: Answer<T>): T {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.refusal)}`);
  return answer.value;
}

/** Ids of what an answer warns of, each with its sentence and all that the sentence shows. */
export function warnings(answer: Answer<unknown>, kind?: Warning["kind"]): readonly string[] {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.refusal)}`);
  for (const warning of answer.warnings) expectSayable(warning.says);
  return answer.warnings.filter((warning) => kind === undefined || warning.kind === kind).map(({ says }) => says.id);
}

/** The refusal of an answer that must be refused, with its sentence and all that the sentence shows. */
export function refusalOf(answer: Answer<unknown>): Refusal {
  if (answer.ok) throw new Error(`answered: ${JSON.stringify(answer.value)}`);
  expectSayable(answer.refusal.says);
  return answer.refusal;
}

function expectSayable({ id, with: values = {} }: Says): void {
  const sentence = english.sentences[id];
  expect(sentence, `a sentence for ${id}`).toBeDefined();
  for (const [, name = ""] of sentence?.matchAll(/\{(\w+)\}/gu) ?? []) {
    const value = values[name];
    expect(value, `${id} shows {${name}}`).toBeDefined();
    if (typeof value === "object") expect(value).toMatchObject({ value: expect.any(Number), kind: expect.stringMatching(/^[a-z-]+$/u) });
  }
}

/** A formula written again from what a step prints: its inputs in order give its value. */
export type Again = (...inputs: readonly number[]) => number;

/**
 * Works out every step again from the inputs it prints, with formulas that the
 * test brings along, and counts which rules were seen.
 */
export function stepsHold(answer: Answer<unknown>, again: Readonly<Record<string, Again>>, seen: Set<string>): void {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.refusal)}`);
  for (const step of answer.workings) {
    const [rule, inputs, value] = step as Step;
    expect(inputs.length, `${rule.id} prints its inputs`).toBe(rule.inputs.length);
    const formula = again[rule.id];
    if (!formula) throw new Error(`no second formula for ${rule.id}`);
    const expected = formula(...inputs);
    expect(Math.abs(value - expected), `${rule.id}: ${value}, again ${expected}`).toBeLessThanOrEqual(1e-9 * Math.abs(expected));
    seen.add(rule.id);
  }
}
