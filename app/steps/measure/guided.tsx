import { type BoxState, surveyOf } from "@ringwright/logbook";
import { useEffect, useId, useRef } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { go, onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
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
import { OnPaper, Outside } from "./outside.tsx";
import { chaptersOf, isAnswered, nextQuestion } from "./progress.ts";
import type { Question } from "./question.ts";
import { HowTaken } from "./readings.tsx";
import { SlipAsked } from "./slip-asked.tsx";

/** One question a screen: what is asked, a picture of where, the field, and one button to go on. */
export function Guided({ box, question }: { readonly box: Box; readonly question: Question }) {
  const words = useWords();
  const workshop = useWorkshop();
  const id = useId();
  const live = useLive(box);
  const answering = useAnswering(box, question);
  const cautions = cautionsAbove(question, live.planned);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), [question.field]);
  const keep = (draft?: Draft) => {
    const correcting = isAnswered(question, box.state);
    void answering.keep(draft).then((kept) => {
      if (!kept) return;
      cautionsRead(cautions);
      goOn(box.id, workshop.kept.state(box.id), question, correcting);
    });
  };
  const { draft, said, fault } = answering;
  const numbers = ["dimension", "quantity", "clock-gaps", "count", "number"].includes(question.asks.is);
  const wrong = said?.kind === "refused" ? said : undefined;
  const [chapter] = chaptersOf(box.question, box.state).filter((one) => one.questions.includes(question));
  const instead = words(`instead-${question.id}`);
  return (
    <div class="guided">
      <Outside box={box} />
      <p class="quiet where">
        <Link to={onBox(box.id, "measure")}>{words("measure-overview")}</Link>{" "}
        {words("measure-where", {
          number: (chapter?.questions.indexOf(question) ?? 0) + 1,
          count: chapter?.questions.length ?? 1,
          chapter: chapterWord(words, question.chapter, box.question),
        })}
      </p>
      <div class="picture">
        <LiveDrawing live={live} title={box.name ?? words("app-unnamed")} asked={question} />
      </div>
      <form
        class="question"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
        onKeyDown={(event) => toField(event, id)}
      >
        <Cautions ids={cautions} />
        <h2 tabIndex={-1} ref={heading}>
          <label for={id}>{words(`ask-${question.id}`)}</label>
        </h2>
        <p class="how" id={`${id}-how`}>
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
        {said?.kind === "asked" && said.slips[0] ? (
          <SlipAsked
            slip={said.slips[0]}
            onMeant={() => said.slips[0] && keep(answering.meant(said.slips[0]))}
            onInstead={(typing) => said.slips[0] && keep(answering.instead(said.slips[0], typing))}
          />
        ) : null}
        {fault === undefined ? null : (
          <p class="chalk" role="alert">
            {words("app-cannot-keep", { why: fault })}
          </p>
        )}
        {numbers ? <Keypad /> : null}
        <HowTaken question={question} draft={draft} onDraft={answering.type} />
        <GuidedActions question={question} box={box} answering={answering} keep={keep} />
        {instead === `instead-${question.id}` ? null : (
          <p class="instead">
            <strong>{words("measure-instead")}</strong> {instead}
          </p>
        )}
        <OnPaper box={box} />
      </form>
    </div>
  );
}

/** To the next question without an answer, as the box now stands; after a correction back to the overview. */
function goOn(box: string, state: BoxState, question: Question, correcting: boolean): void {
  const next = correcting ? undefined : nextQuestion(surveyOf(state), state, question.field);
  go(next ? onBox(box, "measure", next.field) : onBox(box, "measure"));
}

/** A digit typed before the field was touched goes into the field. */
function toField(event: KeyboardEvent, id: string): void {
  if (!/^[\d.,]$/u.test(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement) return;
  const field = document.getElementById(id);
  if (field instanceof HTMLInputElement && field.type === "text") field.focus();
}
