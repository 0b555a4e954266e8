import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { foundValue } from "../../parts/field-value.ts";
import { useWords } from "../../parts/words.ts";
import { firstSentence } from "../logbook/step-name.ts";
import type { Fitting, StepsOfBox } from "./fitting.ts";
import { standingOf, whereToGoOn, writtenFor } from "./job.ts";

const marks = { open: "○", done: "✓", off: "!", bridged: "⌒", stopped: "■" } as const;

/** Every step, group by group, with how it stands; a tap goes there. */
export function StepList({ box, steps, fitting }: { readonly box: Box; readonly steps: StepsOfBox; readonly fitting: Fitting }) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const { prefix, finished } = fitting;
  const job = fitting.job ?? finished;
  const where = whereToGoOn(steps.steps, job, drafts.text(`${prefix}left`));
  return (
    <>
      <div class="bar">
        {where === undefined || finished ? null : (
          <Link to={onBox(box.id, "fit", where)} class="primary">
            {words("fitting-go-on", { number: steps.texts.get(where)?.number ?? 1 })}
          </Link>
        )}
      </div>
      {steps.groups.map((group) => (
        <section key={group.id} class="told">
          <h2>{group.title}</h2>
          <ol class="step-list">
            {group.steps.map(({ id, number, text, bridge }) => {
              const step = steps.steps.find((one) => one.id === id);
              const written = writtenFor(job, id);
              const stands = step ? standingOf(step, written) : "open";
              return (
                <li key={id} class={stands}>
                  <Link to={finished ? onBox(box.id, "fit") : onBox(box.id, "fit", id)} current={!finished && id === where}>
                    <span class="mark" aria-hidden="true">
                      {marks[stands]}
                    </span>
                    <span class="visually-hidden">{words(`fitting-state-${stands}`)}</span>
                    <span class="number">{number}</span>
                    <span>
                      {firstSentence(text)}
                      {bridge ? null : <span class="quiet"> ■</span>}
                      {written === undefined ? null : (
                        <span class="beneath measured">
                          {written.cannot === undefined
                            ? foundValue(written.found, words)
                            : words("fitting-not-done", { typed: words.called(written.cannot) })}
                        </span>
                      )}
                    </span>
                  </Link>
                </li>
              );
            })}
          </ol>
        </section>
      ))}
      <p class="quiet">■ {words("fit-no-way-past")}</p>
    </>
  );
}
