import { standing } from "@ringwright/logbook";
import { useState } from "preact/hooks";
import { facts } from "../../facts/facts.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { nothingTyped, type Typing } from "../../parts/quantity/typing.ts";
import { type Draft, draftKey, draftOfValue, readDraft, writeDraft } from "./draft.ts";
import { keepAnswer, type Outcome } from "./keep.ts";
import type { Question } from "./question.ts";
import type { Slip } from "./slips.ts";

/** One question being answered: what stands in its fields, and what is said of it. */
export interface Answering {
  readonly draft: Draft;
  /** Whether something was typed that is not kept. */
  readonly changed: boolean;
  readonly said: Exclude<Outcome, { readonly kind: "kept" }> | undefined;
  /** Why this device could not keep it. */
  readonly fault: string | undefined;
  readonly type: (draft: Draft) => void;
  /** Keeps it; true when it is on this device's disk. */
  readonly keep: (draft?: Draft) => Promise<boolean>;
  readonly meant: (slip: Slip) => Draft;
  readonly instead: (slip: Slip, typing: Typing) => Draft;
  readonly addReading: () => void;
  readonly readAgain: () => void;
  readonly showFirst: () => void;
}

/** What both screens of Measure do with a question. */
export function useAnswering(box: Box, question: Question): Answering {
  const workshop = useWorkshop();
  const { drafts } = workshop;
  const [said, setSaid] = useState<Answering["said"]>();
  const [fault, setFault] = useState<string>();
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
    fault,
    type,
    async keep(now = draft) {
      if (now !== draft) type(now);
      try {
        const outcome = await keepAnswer(workshop, box, question, now, facts.peek().all);
        setSaid(outcome.kind === "kept" ? undefined : outcome);
        setFault(undefined);
        return outcome.kind === "kept";
      } catch (error) {
        setFault(error instanceof Error ? error.message : String(error));
        return false;
      }
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
