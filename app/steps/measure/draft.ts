import { type How, hows } from "@ringwright/core/uncertainty";
import type { FieldValue, Measured, Readings } from "@ringwright/logbook";
import { nothingTyped, type Typing } from "../../parts/quantity/typing.ts";
import type { Asks } from "./question.ts";

/**
 * What stands in the fields of one question and is not kept yet. Every
 * keystroke writes it down whole, so that a killed page finds all of it again.
 */
export interface Draft {
  /** Numbers with their units: readings, a single quantity, the four gaps. The last of several readings is the one being typed. */
  readonly typed: readonly Typing[];
  readonly how?: How;
  /** How often it was begun anew with what was there hidden. */
  readonly rounds?: number;
  /** So many readings are put aside and hidden while it is read again. */
  readonly aside?: number;
  /** A text, a count, a plain number, or the option chosen. */
  readonly text?: string;
  /** Options chosen, where several may be. */
  readonly chosen?: readonly string[];
  /** Numbers that looked mistyped and were meant so, as they stand. */
  readonly sure?: readonly string[];
  /** Don't know. */
  readonly unknown?: true;
}

export const emptyDraft: Draft = { typed: [] };

/** Where the draft of a field is kept. */
export function draftKey(box: string, field: string): string {
  return `box/${box}/measure/${field}`;
}

export function writeDraft(draft: Draft): string {
  return JSON.stringify(draft);
}

/** Reads a draft back; what an older page wrote otherwise counts as nothing typed. */
export function readDraft(text: string | undefined): Draft | undefined {
  if (text === undefined) return undefined;
  try {
    const draft = JSON.parse(text) as Draft;
    return Array.isArray(draft?.typed) ? draft : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** What was kept, as a draft to correct it in. */
export function draftOfValue(asks: Asks, value: FieldValue | undefined): Draft {
  if (value === undefined) return emptyDraft;
  if (value === null) return { typed: [], unknown: true };
  if (typeof value === "boolean") return { typed: [], text: value ? "yes" : "no" };
  if (typeof value === "string" || typeof value === "number") return { typed: [], text: String(value) };
  if (Array.isArray(value)) {
    const list = value as readonly (string | Measured)[];
    return typeof list[0] === "object"
      ? { typed: (list as readonly Measured[]).map(asTyped) }
      : { typed: [], chosen: list as readonly string[] };
  }
  if (!("readings" in (value as object))) return { typed: [asTyped(value as Measured)] };
  const { readings, how } = value as Readings;
  const known = hows.find((one) => one === how);
  return {
    typed: [...readings.map(asTyped), ...(asks.is === "dimension" ? [nothingTyped] : [])],
    ...(known === undefined ? {} : { how: known }),
  };
}

/** What is kept has its unit in the text. */
function asTyped({ typed }: Measured): Typing {
  return { text: typed, unit: "" };
}
