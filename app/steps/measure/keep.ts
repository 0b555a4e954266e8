import type { PlanFacts } from "@ringwright/core/plan";
import type { Says } from "@ringwright/core/workings";
import { type FieldValue, standing } from "@ringwright/logbook";
import type { Workshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { readAnswer } from "./answer.ts";
import { type Draft, draftKey } from "./draft.ts";
import { entryKind, type Known, type Question } from "./question.ts";
import { type Compared, compared } from "./second.ts";
import { type Slip, slipsOf } from "./slips.ts";

/** What is to be said of a draft before it is kept. */
export type Said =
  /** `at`: which of the numbers. */
  | { readonly kind: "refused"; readonly says: Says; readonly at?: number }
  | { readonly kind: "asked"; readonly slips: readonly Slip[] }
  /** A second reading that the way of measuring does not explain. */
  | { readonly kind: "apart"; readonly compared: Compared };

/** Looks at a draft before it is kept; the entry's body when nothing is to be said of it. */
export function checked(
  question: Question,
  draft: Draft,
  known: Known,
  facts: PlanFacts,
): Said | { readonly kind: "fine"; readonly value: FieldValue } {
  const read = readAnswer(question, draft);
  if (read.kind === "empty") return { kind: "refused", says: { id: nothing(question) } };
  if (read.kind === "refused") return read;
  const slips = slipsOf(question, draft, read.value, known, facts);
  if (slips.length > 0) return { kind: "asked", slips };
  const both = question.asks.is === "dimension" && (draft.rounds ?? 0) === 1 ? compared(draft, facts.uncertainty.instruments) : undefined;
  if (both && !both.agree) return { kind: "apart", compared: both };
  return { kind: "fine", value: read.value };
}

function nothing({ asks }: Question): string {
  return asks.is === "choice" || asks.is === "yes-no" || asks.is === "list" || asks.is === "several"
    ? "measure-choose-one"
    : "measure-nothing";
}

/**
 * Keeps an answer: its entry goes to this device's disk, then its draft is
 * dropped, unless something was typed there since. What says nothing new is not
 * written again. Guided and sheet both come through here, so that the same
 * typing gives the same entry.
 */
export async function keepAnswer(
  { kept, drafts }: Pick<Workshop, "kept" | "drafts">,
  box: Box,
  { field }: Question,
  value: FieldValue,
): Promise<void> {
  const key = draftKey(box.id, field);
  const typed = drafts.text(key);
  const fact = box.state.fields.get(field);
  const nothingNew = typed === undefined && fact?.standing.length === 1;
  if (nothingNew) return;
  if (fact?.standing.length !== 1 || JSON.stringify(standing(fact)) !== JSON.stringify(value))
    await kept.write(entryKind(field), box.id, { field, value }, { happened: happenedAt(drafts.text(happenedKey(box.id))) });
  if (drafts.text(key) === typed) await drafts.drop(key);
}

/** Where the time stands at which readings were taken on paper. */
export function happenedKey(box: string): string {
  return `box/${box}/measure-on-paper`;
}

/** A local date and time, as its field writes it, in milliseconds since 1970. */
export function happenedAt(text: string | undefined): number | undefined {
  const ms = text === undefined || text === "" ? Number.NaN : new Date(text).getTime();
  return Number.isFinite(ms) ? ms : undefined;
}
