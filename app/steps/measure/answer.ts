import { surveyField } from "@ringwright/answers";
import type { Says } from "@ringwright/core/workings";
import type { FieldValue, Measured } from "@ringwright/logbook";
import { surveyWith } from "@ringwright/logbook";
import { readTyping } from "../../parts/quantity/typing.ts";
import type { Draft } from "./draft.ts";
import type { Question } from "./question.ts";

/** What a draft comes to: nothing yet, a value for the entry, or why it is none. */
export type Read =
  | { readonly kind: "empty" }
  | { readonly kind: "value"; readonly value: FieldValue }
  /** `at`: which of the numbers. */
  | { readonly kind: "refused"; readonly says: Says; readonly at?: number };

const empty: Read = { kind: "empty" };

/** Reads a draft the one way there is, whichever screen it was typed on. */
export function readAnswer(question: Question, draft: Draft): Read {
  if (draft.unknown) return { kind: "value", value: question.asks.is === "choice" ? question.asks.unknown : null };
  const read = plain(question, draft);
  return read.kind === "value" ? allowed(question, read) : read;
}

function plain({ asks, field }: Question, draft: Draft): Read {
  const text = draft.text?.trim() ?? "";
  switch (asks.is) {
    case "dimension": {
      const list = measuredAll(draft, "length", field);
      if (!Array.isArray(list)) return list as Read;
      if (list.length === 0) return empty;
      return { kind: "value", value: { readings: list, ...(draft.how === undefined ? {} : { how: draft.how }) } };
    }
    case "quantity": {
      const list = measuredAll(draft, asks.kind, field);
      if (!Array.isArray(list)) return list as Read;
      return list[0] === undefined ? empty : { kind: "value", value: list[0] };
    }
    case "clock-gaps": {
      const list = measuredAll(draft, "length", field);
      if (!Array.isArray(list)) return list as Read;
      if (list.length === 0) return empty;
      return list.length === 4 ? { kind: "value", value: list } : { kind: "refused", says: { id: "measure-four-gaps" } };
    }
    case "count":
    case "number": {
      if (text === "") return empty;
      const value = plainNumber(text);
      return value === undefined
        ? { kind: "refused", says: { id: "measure-not-number", with: { given: text } } }
        : { kind: "value", value };
    }
    case "yes-no":
      return text === "yes" || text === "no" ? { kind: "value", value: text === "yes" } : empty;
    case "choice":
    case "text":
      return text === "" ? empty : { kind: "value", value: text };
    case "list":
      if (asks.most === 1) return text === "" ? empty : { kind: "value", value: text };
      return (draft.chosen?.length ?? 0) === 0 ? empty : { kind: "value", value: draft.chosen ?? [] };
    case "several":
      return draft.chosen === undefined ? empty : { kind: "value", value: draft.chosen };
  }
}

function measuredAll(draft: Draft, kind: "length" | Parameters<typeof readTyping>[1], field: string): readonly Measured[] | Read {
  const found: Measured[] = [];
  for (const [at, typing] of draft.typed.entries()) {
    const read = readTyping(typing, kind, field);
    if (read.kind === "refused") return { kind: "refused", says: read.says, at };
    if (read.kind === "read") found.push(read.measured);
  }
  return found;
}

/** A number without a unit: `7,5`, `300`. */
function plainNumber(text: string): number | undefined {
  return /^[-−]?\d{1,9}(?:[.,]\d{1,9})?$/u.test(text) ? Number(text.replace(",", ".").replace("−", "-")) : undefined;
}

/** What the survey itself would refuse is refused here already, in its words. */
function allowed({ field }: Question, read: Read & { readonly kind: "value" }): Read {
  const checked = surveyField.read(surveyWith({ motion: "turning" }, field, read.value), "", { typed: new Map() });
  if (checked.ok) return read;
  const { id, input, given, allowed: bounds, with: shown = {} } = checked.malformed;
  return {
    kind: "refused",
    says: { id, with: { input, given: spelt(given), allowed: spelt(bounds), ...shown } },
  };
}

function spelt(json: unknown): string {
  if (Array.isArray(json)) return json.join(", ");
  if (typeof json !== "object" || json === null) return String(json ?? "");
  return Object.values(json).join(" to ");
}
