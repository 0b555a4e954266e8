import { type FieldValue, surveyWith } from "@ringwright/logbook";
import { useId, useLayoutEffect, useRef } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { go, onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { Keypad } from "../../parts/quantity/keypad.tsx";
import { useWords } from "../../parts/words.ts";
import { AnswerField } from "./answer-field.tsx";
import { useAnswering } from "./answering.ts";
import { Cautions, cautionsAbove, cautionsRead } from "./cautions.tsx";
import { chapterWord } from "./chapter-word.ts";
import type { Draft } from "./draft.ts";
import { GuidedActions } from "./guided-actions.tsx";
import { useLive } from "./live.ts";
import { LiveDrawing } from "./live-drawing.tsx";
import { NotKept } from "./not-kept.tsx";
import { OnPaper, Outside } from "./outside.tsx";
import { chaptersOf, isAnswered, nextQuestion } from "./progress.ts";
import type { Question } from "./question.ts";
import { HowTaken } from "./readings.tsx";
import { SlipAsked } from "./slip-asked.tsx";

/** One question a screen: what is asked, a picture of where, the field, and one button to go on. */
export function Guided({ box, question }: { readonly box: Box; readonly question: Question }) {
  const words = useWords();
  const id = useId();
  const live = useLive(box);
  const answering = useAnswering(box, question);
  const cautions = cautionsAbove(question, live);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus({ preventScroll: true }), [question.field]);
  const keep = (draft?: Draft) => {
    const correcting = isAnswered(question, box.state);
    const kept = answering.keep(draft);
    if (kept === undefined) return;
    cautionsRead(cautions);
    goOn(box, question, kept.value, correcting);
  };
  const { draft, said } = answering;
  const numbers = ["dimension", "quantity", "clock-gaps", "count", "number"].includes(question.asks.is);
  const slip = said?.kind === "asked" ? said.slips[0] : undefined;
  const wrong = said?.kind === "refused" ? said : undefined;
  const [chapter] = chaptersOf(box.question, box.state).filter((one) => one.questions.includes(question));
  const instead = words(`instead-${question.id}`);
  return (
    <form
      class="guided"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
      onKeyDown={(event) => toField(event, id)}
    >
      <Outside box={box} />
      <NotKept box={box} />
      <p class="quiet where">
        <Link to={onBox(box.id, "measure")}>{words("measure-overview")}</Link>{" "}
        {words("measure-where", {
          number: (chapter?.questions.indexOf(question) ?? 0) + 1,
          count: chapter?.questions.length ?? 1,
          chapter: chapterWord(words, question.chapter, box.question),
        })}
      </p>
      <Cautions ids={cautions} />
      <div class="picture">
        <LiveDrawing live={live} title={box.name ?? words("app-unnamed")} asked={question} />
      </div>
      <div class="question">
        <h2 tabIndex={-1} ref={heading}>
          <label for={id}>{words(`ask-${question.id}`)}</label>
        </h2>
        <p id={`${id}-how`}>
          {words(`how-${question.id}`)} <span class="quiet">{words(`why-${question.id}`)}</span>
        </p>
        {wrong === undefined ? null : (
          <p class="attention" id={`${id}-wrong`} role="alert">
            {words.sentence(wrong.says)}
          </p>
        )}
        <AnswerField
          id={id}
          question={question}
          draft={draft}
          onDraft={answering.type}
          describedBy={`${id}-how${wrong === undefined ? "" : ` ${id}-wrong`}`}
          wrongAt={wrong?.at}
          onEnter={() => keep()}
          name={undefined}
          dense={false}
        />
        {slip ? (
          <SlipAsked
            slip={slip}
            onMeant={() => keep(answering.meant(slip))}
            onInstead={(typing) => keep(answering.instead(slip, typing))}
          />
        ) : null}
        {numbers ? <Keypad /> : null}
      </div>
      <div class="how-taken">
        <HowTaken question={question} draft={draft} onDraft={answering.type} />
      </div>
      <GuidedActions question={question} box={box} answering={answering} keep={keep} />
      <div class="rest">
        {instead === `instead-${question.id}` ? null : (
          <p>
            <strong>{words("measure-instead")}</strong> {instead}
          </p>
        )}
        <OnPaper box={box} />
      </div>
    </form>
  );
}

/**
 * To the next question without an answer, as the box stands with this one; after a correction back to the overview. At
 * once, while the entry is on its way to the disk: whoever types on is already in the next field.
 */
function goOn(box: Box, { field }: Question, value: FieldValue, correcting: boolean): void {
  const next = correcting ? undefined : nextQuestion(surveyWith(box.question, field, value), box.state, field);
  go(next ? onBox(box.id, "measure", next.field) : onBox(box.id, "measure"));
}

/** A digit typed before the field was touched goes into the field. */
function toField(event: KeyboardEvent, id: string): void {
  if (!/^[\d.,]$/u.test(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement) return;
  const field = document.getElementById(id);
  if (field instanceof HTMLInputElement && field.type === "text") field.focus();
}
