import { disagreements, standing } from "@ringwright/logbook";
import { useEffect } from "preact/hooks";
import { loadRest } from "../../facts/facts.ts";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { chapterWord } from "./chapter-word.ts";
import { Verdicts } from "./coming.tsx";
import { useLive } from "./live.ts";
import { LiveDrawing } from "./live-drawing.tsx";
import { NotKept } from "./not-kept.tsx";
import { OnPaper, Outside } from "./outside.tsx";
import { type ChapterOf, chaptersOf, isAnswered, nextQuestion } from "./progress.ts";
import type { Question } from "./question.ts";
import { valueWords } from "./value-words.ts";

/** What is known of a box and what is not: the drawing, every answer by chapter, and one button to the next question. */
export function Overview({ box }: { readonly box: Box }) {
  const words = useWords();
  const live = useLive(box);
  const chapters = chaptersOf(box.question, box.state);
  const next = nextQuestion(box.question, box.state);
  const listed = chapters.some((one) => one.questions.some((question) => question.asks.is === "list" && isAnswered(question, box.state)));
  // Fluids and materials are called by words of the rest.
  useEffect(() => void (listed && loadRest()), [listed]);
  return (
    <div class="overview">
      <Outside box={box} />
      <NotKept box={box} />
      <LiveDrawing live={live} title={box.name ?? words("app-unnamed")} widest={900} />
      <div class="next">
        {next === undefined ? (
          <p>{words("measure-all")}</p>
        ) : (
          <Link to={onBox(box.id, "measure", next.field)} class="primary">
            {words("measure-next", { ask: words(`ask-${next.id}`) })}
          </Link>
        )}
        <Link to={onBox(box.id, "measure", "sheet")} class="second">
          {words("measure-sheet")}
        </Link>
        <OnPaper box={box} />
      </div>
      <div class="verdicts-here">
        <Verdicts box={box} />
      </div>
      <div class="chapters">
        {chapters.map((one) => (
          <ChapterKnown key={one.chapter} of={one} box={box} />
        ))}
      </div>
    </div>
  );
}

function ChapterKnown({ of: { chapter, questions, answered }, box }: { readonly of: ChapterOf; readonly box: Box }) {
  const words = useWords();
  const open = questions.filter((question) => !isAnswered(question, box.state));
  const differing = disagreements(box.state);
  return (
    <section class="chapter">
      <h2>
        {chapterWord(words, chapter, box.question)}{" "}
        <small class="quiet">
          {answered === questions.length
            ? words("measure-all-known")
            : words("measure-known", { known: answered, count: questions.length })}
        </small>
      </h2>
      <ul class="answers">
        {questions
          .filter((question) => !open.includes(question))
          .map((question) => (
            <Answered key={question.field} question={question} box={box} differs={differing.includes(question.field)} />
          ))}
      </ul>
      {open.length === 0 ? null : (
        <details open={answered === 0 && questions.length < 4}>
          <summary>{words("measure-open", { count: open.length })}</summary>
          <ul class="answers">
            {open.map(({ id, field }) => (
              <li key={field}>
                <Link to={onBox(box.id, "measure", field)} class="answer">
                  {words(`ask-${id}`)}
                </Link>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function Answered({ question, box, differs }: { readonly question: Question; readonly box: Box; readonly differs: boolean }) {
  const words = useWords();
  const value = standing(box.state.fields.get(question.field));
  if (value === undefined) return null;
  const said = valueWords(words, question, value);
  return (
    <li>
      <Link to={onBox(box.id, "measure", question.field)} class="answer">
        <span>{words(`ask-${question.id}`)}</span> <span class={/^[\d.,/\s-]*\d/u.test(said) ? "measured" : "measured words"}>{said}</span>
      </Link>
      {differs ? <p class="attention">{words("measure-disagree")}</p> : null}
    </li>
  );
}
