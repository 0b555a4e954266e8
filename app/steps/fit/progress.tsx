import type { Step } from "@ringwright/core/fit";
import type { Job } from "@ringwright/logbook";
import { useWords } from "../../parts/words.ts";
import type { StepsOfBox } from "./fitting.ts";
import { standingOf, writtenFor } from "./job.ts";

/** Where in the job: the group by name, and a stroke for every step, full where it was written down. */
export function Progress({ steps, step, job }: { readonly steps: StepsOfBox; readonly step: Step; readonly job: Job | undefined }) {
  const words = useWords();
  const group = steps.groups.find(({ id }) => id === step.group);
  const number = steps.texts.get(step.id)?.number ?? 1;
  const inGroup = (group?.steps.findIndex(({ id }) => id === step.id) ?? 0) + 1;
  return (
    <div class="progress">
      <p>
        <strong>{words("fitting-group", { typed: group?.title ?? "", number: inGroup, given: String(group?.steps.length ?? 1) })}</strong>
        <span class="quiet">{words("fitting-number", { number, given: String(steps.steps.length) })}</span>
      </p>
      <div class="strokes" aria-hidden="true">
        {steps.groups.map(({ id, steps: ofGroup }) => (
          <span key={id} class="strokes-of-group" style={{ flexGrow: ofGroup.length }}>
            {ofGroup.map((one) => {
              const core = steps.steps.find((other) => other.id === one.id);
              const stands = core ? standingOf(core, writtenFor(job, one.id)) : "open";
              return <i key={one.id} class={`${stands}${one.id === step.id ? " here" : ""}`} />;
            })}
          </span>
        ))}
      </div>
    </div>
  );
}
