import { answerOf } from "@ringwright/core/plan";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { type Box, planOf } from "../../kept/box.ts";
import { CardButton } from "../../parts/card-button.tsx";
import { timeText } from "../../parts/time-text.ts";
import { useWords } from "../../parts/words.ts";
import { RunInList, StopRules } from "./after-start.tsx";
import type { Fitting, StepsOfBox } from "./fitting.ts";
import { whereToGoOn, writtenFor } from "./job.ts";
import { PaperTime } from "./paper-time.tsx";

/** Before the first step, and wherever a job is come back to: what to mind, the card, and where to go on. */
export function First({ box, steps, fitting }: { readonly box: Box; readonly steps: StepsOfBox; readonly fitting: Fitting }) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const { job, prefix } = fitting;
  const plan = planOf(box);
  const mind = (answerOf(plan?.steps.cautions)?.cautions ?? []).filter(
    ({ order, guards }) => order === 1 || guards.inputs.includes("zone"),
  );
  const devicesStayOut = mind.some(({ guards }) => guards.inputs.includes("zone"));
  const where = whereToGoOn(steps.steps, job, drafts.text(`${prefix}left`));
  const place = where === undefined ? undefined : steps.texts.get(where);
  const written = steps.steps.filter(({ id }) => writtenFor(job, id) !== undefined).length;
  const before = box.state.jobs.at(-1);
  const runs = job === undefined && before?.started !== undefined;
  const card = <CardButton box={box} />;
  return (
    <>
      <h2 class="visually-hidden">{words("fitting-first")}</h2>
      {mind.map(({ id }) => (
        <p key={id} class="chalk">
          {words(id)}
        </p>
      ))}
      {devicesStayOut ? card : null}
      {runs && before?.started ? (
        <>
          <p>{words("fitting-started", { typed: timeText(before.started.at) })}</p>
          <StopRules rules={steps.stopRules} />
          <RunInList groups={steps.runIn} />
        </>
      ) : null}
      {job === undefined ? null : (
        <p class="quiet">
          {words("fitting-job-begun", { typed: timeText(job.begun) })}
          {" · "}
          {words("fitting-done-of", { count: written, given: steps.steps.length })}
        </p>
      )}
      <PaperTime prefix={prefix} openFirst={devicesStayOut} />
      <div class="bar">
        {where === undefined ? null : (
          <Link to={onBox(box.id, "fit", where)} class={runs ? "second" : "primary"}>
            {job === undefined && written === 0
              ? words(runs ? "fitting-fit-again" : "fitting-start")
              : words("fitting-go-on", { number: place?.number ?? 1 })}
          </Link>
        )}
        <Link to={onBox(box.id, "fit", "steps")} class="second">
          {words("fitting-all-steps")}
        </Link>
        {devicesStayOut ? null : card}
      </div>
      {job === undefined ? null : (
        <details>
          <summary>{words("fitting-new-job")}</summary>
          <p>{words("fitting-new-job-why")}</p>
          <button type="button" class="second" onClick={() => void fitting.beginAnew()}>
            {words("fitting-new-job")}
          </button>
        </details>
      )}
    </>
  );
}
