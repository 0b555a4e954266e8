import { standing } from "@ringwright/logbook";
import type { RefObject } from "preact";
import { useId, useRef } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { Keypad } from "../../parts/quantity/keypad.tsx";
import { useWords } from "../../parts/words.ts";
import { AnswerField } from "./answer-field.tsx";
import { useAnswering } from "./answering.ts";
import { Cautions, cautionsAbove } from "./cautions.tsx";
import { chapterWord } from "./chapter-word.ts";
import { emptyDraft } from "./draft.ts";
import { type Live, useLive } from "./live.ts";
import { LiveDrawing } from "./live-drawing.tsx";
import { OnPaper, Outside } from "./outside.tsx";
import { chaptersOf } from "./progress.ts";
import type { Question } from "./question.ts";
import { SlipAsked } from "./slip-asked.tsx";

/** Every question of the box on one sheet: the same fields as one by one, kept as Enter leaves them. */
export function Sheet({ box }: { readonly box: Box }) {
  const words = useWords();
  const live = useLive(box);
  const { preferences } = useWorkshop();
  const sheet = useRef<HTMLDivElement>(null);
  const said = new Set<string>();
  return (
    <div class="sheet-of-fields">
      <Outside box={box} />
      <div class="drawn">
        <LiveDrawing live={live} title={box.name ?? words("app-unnamed")} />
      </div>
      <div
        class="fields"
        ref={sheet}
        onKeyDown={(event) => {
          if (event.key !== "Enter" || !(event.target instanceof HTMLSelectElement)) return;
          event.preventDefault();
          nextField(sheet.current);
        }}
      >
        <p class="quiet">{words("measure-sheet-hint")}</p>
        <Link to={onBox(box.id, "measure")} class="primary">
          {words("measure-overview")}
        </Link>
        <OnPaper box={box} />
        {chaptersOf(box.question, box.state).map(({ chapter, questions }) => (
          <section key={chapter} aria-label={chapterWord(words, chapter, box.question)}>
            <h2>{chapterWord(words, chapter, box.question)}</h2>
            {questions.map((question) => {
              const cautions = cautionsAbove(question, live).filter((id) => !said.has(id));
              for (const id of cautions) said.add(id);
              return <Line key={question.field} box={box} question={question} cautions={cautions} live={live} sheet={sheet} />;
            })}
          </section>
        ))}
      </div>
      {preferences.keys.value === "own" ? (
        <div class="docked">
          <Keypad />
        </div>
      ) : null}
    </div>
  );
}

function Line({
  box,
  question,
  cautions,
  sheet,
}: {
  readonly box: Box;
  readonly question: Question;
  readonly cautions: readonly string[];
  readonly live: Live;
  readonly sheet: RefObject<HTMLDivElement | null>;
}) {
  const words = useWords();
  const id = useId();
  const answering = useAnswering(box, question);
  const { draft, said, changed, fault } = answering;
  const wrong = said?.kind === "refused" ? words.sentence(said.says) : undefined;
  const slip = said?.kind === "asked" ? said.slips[0] : undefined;
  const name = words(`ask-${question.id}`);
  const value = standing(box.state.fields.get(question.field));
  const keep = (now = draft) => {
    answering.keep(now);
  };
  // Enter keeps what was typed and goes on; an empty field is left for later.
  const enter = () => {
    if (changed) keep();
    nextField(sheet.current);
  };
  return (
    <div class="line">
      <Cautions ids={cautions} />
      <div class="asked-for">
        <label for={id} title={words(`how-${question.id}`)}>
          {name}
        </label>
        {value === null ? <span class="quiet">{words("measure-dont-know")}</span> : null}
      </div>
      <div class="given">
        {wrong === undefined ? null : (
          <span class="attention" id={`${id}-wrong`} role="alert">
            {wrong}
          </span>
        )}
        <AnswerField
          id={id}
          question={question}
          draft={draft}
          onDraft={answering.type}
          describedBy={wrong === undefined ? undefined : `${id}-wrong`}
          wrongAt={said?.kind === "refused" ? said.at : undefined}
          onEnter={enter}
          name={name}
          dense={true}
        />
        {slip ? (
          <SlipAsked
            slip={slip}
            onMeant={() => keep(answering.meant(slip))}
            onInstead={(typing) => keep(answering.instead(slip, typing))}
          />
        ) : null}
        {said?.kind === "apart" ? (
          <p class="chalk" role="alert">
            {words("measure-apart", {
              first: { value: said.compared.first, kind: "length", decimals: 2 },
              second: { value: said.compared.second, kind: "length", decimals: 2 },
            })}
          </p>
        ) : null}
        {fault === undefined ? null : (
          <p class="chalk" role="alert">
            {words("app-cannot-keep", { why: fault })}
          </p>
        )}
        <div class="line-actions">
          {changed ? (
            <button type="button" class="second" onClick={() => keep()}>
              {words("measure-keep-this")}
            </button>
          ) : null}
          {question.asks.is === "dimension" && changed ? (
            <button type="button" class="second" onClick={answering.addReading}>
              {words("measure-add")}
            </button>
          ) : null}
          {value === undefined && !changed ? (
            <button type="button" class="second faint" onClick={() => keep({ ...emptyDraft, unknown: true })}>
              {words("measure-dont-know")}
            </button>
          ) : null}
        </div>
      </div>
    </div>
  );
}

/** Puts the focus into the next field of the sheet. */
function nextField(sheet: HTMLElement | null): void {
  const fields = [...(sheet?.querySelectorAll<HTMLElement>("input:not([type=datetime-local]), select") ?? [])];
  fields[fields.indexOf(document.activeElement as HTMLElement) + 1]?.focus();
}
