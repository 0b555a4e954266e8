import { go, onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import type { Answering } from "./answering.ts";
import { type Draft, emptyDraft } from "./draft.ts";
import { nextQuestion, questionBefore } from "./progress.ts";
import type { Question } from "./question.ts";

/** What can be done with an answer: keep it first of all; add a reading, read it again with the first hidden; not know; go back or leave it for later. */
export function GuidedActions({
  question,
  box,
  answering,
  keep,
}: {
  readonly question: Question;
  readonly box: Box;
  readonly answering: Answering;
  readonly keep: (draft?: Draft) => void;
}) {
  const words = useWords();
  const { draft, said } = answering;
  const dimension = question.asks.is === "dimension";
  const typed = draft.typed.filter(({ text }) => text.trim() !== "").length;
  const aside = draft.aside ?? 0;
  const before = questionBefore(box.question, question.field);
  const later = nextQuestion(box.question, box.state, question.field);
  const length = (value: number) => ({ value, kind: "length", decimals: 2 });
  // The two sets of buttons never share one: a button that turned into the submitting one under a tap would submit.
  if (said?.kind === "apart") {
    const { first, second } = said.compared;
    return (
      <div key="apart" class="actions apart">
        <p class="chalk" role="alert">
          {words("measure-apart", { first: length(first), second: length(second) })}
        </p>
        <button type="button" class="primary" onClick={answering.readAgain}>
          {words("measure-third")}
        </button>
        <button type="button" class="second" onClick={() => keep({ ...draft, rounds: 2 })}>
          {words("measure-keep-all")}
        </button>
      </div>
    );
  }
  return (
    <div key="usual" class="actions">
      {dimension && typed > 0 ? (
        <div class="more">
          <button type="button" class="second" onClick={answering.addReading}>
            {words("measure-add")}
          </button>
          {aside > 0 ? (
            <button type="button" class="second" onClick={answering.showFirst}>
              {words("measure-show-first")}
            </button>
          ) : (
            <button type="button" class="second" title={words("measure-again-why")} onClick={answering.readAgain}>
              {words("measure-again")}
            </button>
          )}
        </div>
      ) : null}
      <button type="submit" class="primary">
        {words("measure-keep")}
      </button>
      <div class="aside">
        <button type="button" class="second" aria-pressed={draft.unknown === true} onClick={() => keep({ ...emptyDraft, unknown: true })}>
          {words("measure-dont-know")}
        </button>
        {later === undefined ? null : (
          <button type="button" class="second" onClick={() => go(onBox(box.id, "measure", later.field))}>
            {words("measure-skip")}
          </button>
        )}
        <button type="button" class="second" onClick={() => go(before ? onBox(box.id, "measure", before.field) : onBox(box.id, "measure"))}>
          {words("measure-back")}
        </button>
      </div>
    </div>
  );
}
