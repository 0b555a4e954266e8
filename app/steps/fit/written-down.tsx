import type { Step } from "@ringwright/core/fit";
import type { Bodies, Job } from "@ringwright/logbook";
import type { Box } from "../../kept/box.ts";
import { foundValue } from "../../parts/field-value.ts";
import { timeText } from "../../parts/time-text.ts";
import { useWords } from "../../parts/words.ts";
import { Found } from "./found.tsx";
import { numberOf, standingOf } from "./job.ts";
import { stepNumber } from "./step-number.ts";

/** What was written down for a step: with what was expected then, whatever the plan says now. */
export function WrittenDown({
  box,
  step,
  written,
  job,
}: {
  readonly box: Box;
  readonly step: Step;
  readonly written: Bodies["fit-step"];
  readonly job: Job | undefined;
}) {
  const words = useWords();
  const bridge = box.state.bridges.findLast(({ value }) => value.job === job?.id && value.step === step.id)?.value;
  const fact = job?.steps.get(step.id)?.standing[0];
  const number = numberOf(written.found);
  const expected = numberOf(written.expected);
  const stands = standingOf(step, written);
  const now = step.predicted?.value;
  return (
    <div class="written">
      <p class="quiet">
        {words("fitting-written")} {fact === undefined ? "" : timeText(fact.at)}
      </p>
      {written.found === null ? null : number === undefined || expected === undefined ? (
        <p class="measured large">{foundValue(written.found, words)}</p>
      ) : (
        <Found step={step} found={number} expected={expected} />
      )}
      {expected !== undefined && now !== undefined && Math.abs(expected - now) > 1e-6 ? (
        <p class="quiet">{words("fitting-plan-changed", { typed: stepNumber(step, now, words) })}</p>
      ) : null}
      {Object.entries(written.blanks ?? {}).map(([blank, text]) => (
        <p key={blank}>
          <span class="quiet">{words.called(blank)} </span>
          <span class="measured">{text}</span>
        </p>
      ))}
      {written.cannot === undefined ? null : (
        <p class={stands === "stopped" ? "chalk" : "attention"}>
          {words("fitting-not-done", { typed: words.called(written.cannot) })}
          {step.bridge ? null : ` · ■ ${words("fit-no-way-past")}`}
        </p>
      )}
      {bridge === undefined ? null : <p>{words("fitting-bridge-said", { typed: bridge.owner, until: bridge.until })}</p>}
    </div>
  );
}
