import { answerOf } from "@ringwright/core/plan";
import { Link } from "../../frame/link.tsx";
import { go, onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { type Box, planOf } from "../../kept/box.ts";
import { CardButton } from "../../parts/card-button.tsx";
import { timeText } from "../../parts/time-text.ts";
import { useWords } from "../../parts/words.ts";
import { RunInList, StopRules } from "./after-start.tsx";
import type { Fitting, StepsOfBox } from "./fitting.ts";
import { GroupsAhead } from "./groups-ahead.tsx";
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
  const { finished } = fitting;
  // Where devices stay outside the card comes first, and the screen is for entering what it says.
  const cardFirst = devicesStayOut && box.state.cards.length === 0;
  const card = <CardButton box={box} primary={cardFirst} />;
  return (
    <>
      <h2 class="visually-hidden">{words("fitting-first")}</h2>
      {mind.map(({ id }) => (
        <p key={id} class="chalk">
          {words(id)}
        </p>
      ))}
      {devicesStayOut ? card : null}
      {finished?.started ? (
        <>
          <p>{words("fitting-started", { typed: timeText(finished.started.at) })}</p>
          <StopRules rules={steps.stopRules} />
          <RunInList groups={steps.runIn} said={mind.map(({ id }) => words(id))} />
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
        {where === undefined ? null : finished ? (
          <button type="button" class="second" onClick={() => void fitting.beginAnew().then(() => go(onBox(box.id, "fit", where)))}>
            {words("fitting-fit-again")}
          </button>
        ) : (
          <Link to={onBox(box.id, "fit", where)} class={cardFirst ? "second" : "primary"}>
            {job === undefined
              ? words(devicesStayOut ? "fitting-from-card" : "fitting-start")
              : words(devicesStayOut ? "fitting-from-card-on" : "fitting-go-on", { number: place?.number ?? 1 })}
          </Link>
        )}
        <Link to={onBox(box.id, "fit", "steps")} class="second">
          {words("fitting-all-steps")}
        </Link>
        {devicesStayOut ? null : card}
      </div>
      {finished ? null : <GroupsAhead box={box.id} steps={steps} job={job} />}
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
