import { signal } from "@preact/signals";
import { type FieldValue, standing } from "@ringwright/logbook";
import { useState } from "preact/hooks";
import { facts } from "../../facts/facts.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { nothingTyped, type Typing } from "../../parts/quantity/typing.ts";
import { type Draft, draftKey, draftOfValue, readDraft, writeDraft } from "./draft.ts";
import { checked, keepAnswer, type Said } from "./keep.ts";
import type { Question } from "./question.ts";
import type { Slip } from "./slips.ts";

/** One question being answered: what stands in its fields, and what is said of it. */
export interface Answering {
  readonly draft: Draft;
  /** Whether something was typed that is not kept. */
  readonly changed: boolean;
  readonly said: Said | undefined;
  /** Why this device could not keep it. */
  readonly fault: string | undefined;
  readonly type: (draft: Draft) => void;
  /**
   * Keeps it; gives the value that is on its way to this device's disk, or nothing where something has to be said
   * first. The draft stays until it is there, and comes back with the reason should it not get there.
   */
  readonly keep: (draft?: Draft) => { readonly value: FieldValue } | undefined;
  readonly meant: (slip: Slip) => Draft;
  readonly instead: (slip: Slip, typing: Typing) => Draft;
  readonly addReading: () => void;
  readonly readAgain: () => void;
  readonly showFirst: () => void;
}

/** What this device could not keep, and why, by the draft that still has it. */
export const faults = signal<ReadonlyMap<string, string>>(new Map());

/** What both screens of Measure do with a question. */
export function useAnswering(box: Box, question: Question): Answering {
  const workshop = useWorkshop();
  const { drafts } = workshop;
  const [said, setSaid] = useState<Answering["said"]>();
  const key = draftKey(box.id, question.field);
  const stored = readDraft(drafts.text(key));
  const draft = stored ?? draftOfValue(question.asks, standing(box.state.fields.get(question.field)));
  const type = (now: Draft) => {
    setSaid(undefined);
    void drafts.put(key, writeDraft(now));
  };
  const filled = draft.typed.filter(({ text }) => text.trim() !== "");
  return {
    draft,
    changed: stored !== undefined,
    said,
    fault: faults.value.get(key),
    type,
    keep(now = draft) {
      if (now !== draft) type(now);
      const looked = checked(question, now, box.question, facts.peek().all);
      if (looked.kind !== "fine") {
        setSaid(looked);
        return undefined;
      }
      setSaid(undefined);
      const without = new Map(faults.peek());
      without.delete(key);
      faults.value = without;
      keepAnswer(workshop, box, question, looked.value).catch((error: unknown) => {
        faults.value = new Map(faults.peek()).set(key, error instanceof Error ? error.message : String(error));
      });
      return { value: looked.value };
    },
    meant: (slip) => ({ ...draft, sure: [...(draft.sure ?? []), slip.given] }),
    instead: (slip, typing) => ({ ...draft, typed: draft.typed.map((one, at) => (at === slip.at ? typing : one)) }),
    addReading: () => type({ ...draft, typed: [...filled, nothingTyped] }),
    readAgain: () => type({ ...draft, typed: [...filled, nothingTyped], aside: filled.length, rounds: (draft.rounds ?? 0) + 1 }),
    showFirst() {
      const { aside: _, rounds: __, ...rest } = draft;
      type(rest);
    },
  };
}
