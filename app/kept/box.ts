import { type Malformed, type Reader, surveyField } from "@ringwright/answers";
import { type Plan, plan, type Survey } from "@ringwright/core/plan";
import type { Answer } from "@ringwright/core/workings";
import { type BoxState, type Json, standing, surveyOf } from "@ringwright/logbook";
import { facts } from "../facts/facts.ts";

/** A box as everything on screen sees it: its entries added up, the question they make, and the plan that answers it. */
export interface Box {
  readonly id: string;
  readonly state: BoxState;
  readonly name: string | undefined;
  readonly place: string | undefined;
  /** As `ringwright plan` would be asked. */
  readonly question: { readonly [name: string]: Json };
  readonly planned: Planned;
}

export type Planned =
  | { readonly kind: "planned"; readonly answer: Answer<Plan>; readonly survey: Survey; readonly typed: Reader["typed"] }
  /** The motion is not said yet: nothing can be planned. */
  | { readonly kind: "no-motion" }
  | { readonly kind: "malformed"; readonly malformed: Malformed };

const known = new WeakMap<BoxState, { readonly all: object; readonly box: Box }>();

/** The box of a state; worked out again only when its entries or the facts have changed. */
export function boxOf(id: string, state: BoxState): Box {
  const { all } = facts.value;
  const before = known.get(state);
  if (before?.all === all) return before.box;
  const question = surveyOf(state);
  let worked: Planned | undefined;
  const box: Box = {
    id,
    state,
    name: text(state, "name"),
    place: text(state, "place"),
    question,
    // Worked out for who asks: a list of boxes does not wait for the plans of all.
    get planned() {
      worked ??= planned(question);
      return worked;
    },
  };
  known.set(state, { all, box });
  return box;
}

/** Plans what a question asks. */
export function planned(question: { readonly [name: string]: Json }): Planned {
  if (question.motion === undefined || question.motion === null) return { kind: "no-motion" };
  const reader: Reader = { typed: new Map() };
  const read = surveyField.read(question, "", reader);
  if (!read.ok) return { kind: "malformed", malformed: read.malformed };
  return { kind: "planned", answer: plan(read.value as Survey, facts.value.all), survey: read.value as Survey, typed: reader.typed };
}

/** The plan, where there is one. */
export function planOf({ planned }: Box): Plan | undefined {
  return planned.kind === "planned" && planned.answer.ok ? planned.answer.value : undefined;
}

function text({ fields }: BoxState, field: string): string | undefined {
  const value = standing(fields.get(field));
  return typeof value === "string" && value !== "" ? value : undefined;
}
