import type { Answer } from "@ringwright/core/workings";
import type { Facts } from "./facts.ts";
import type { Field } from "./field.ts";
import type { Shape } from "./shape.ts";

/** One question that the core can answer: described once, used by command line, HTTP, app and docs. */
export interface AnswerDescription<Q, A> {
  /** kebab-case name. */
  readonly name: string;
  /** What it answers, in one sentence. */
  readonly about: string;
  readonly question: Field<Q>;
  readonly answer: Shape<A>;
  work(question: Q, facts: Facts): Answer<A>;
}

/** A description whose question and answer types are its own business. */
export type AnyAnswer = AnswerDescription<never, never>;

/** Declares an answer; the types of question and reply follow from its fields and shapes. */
export function answer<Q, A>(description: AnswerDescription<Q, A>): AnyAnswer {
  return description as unknown as AnyAnswer;
}
