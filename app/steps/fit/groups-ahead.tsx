import type { Job } from "@ringwright/logbook";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import { useWords } from "../../parts/words.ts";
import type { StepsOfBox } from "./fitting.ts";
import { writtenFor } from "./job.ts";

/** The parts of the job in order, each with how much of it is written down. */
export function GroupsAhead({ box, steps, job }: { readonly box: string; readonly steps: StepsOfBox; readonly job: Job | undefined }) {
  const words = useWords();
  return (
    <section class="told groups-ahead">
      <h2>{words("fitting-ahead")}</h2>
      <ol class="step-list">
        {steps.groups.map(({ id, title, steps: ofGroup }) => {
          const written = ofGroup.filter((step) => writtenFor(job, step.id) !== undefined).length;
          const [first] = ofGroup.filter((step) => writtenFor(job, step.id) === undefined);
          return (
            <li key={id}>
              <Link to={onBox(box, "fit", (first ?? ofGroup[0])?.id ?? "steps")}>
                <span class="mark" aria-hidden="true">
                  {written === ofGroup.length ? "✓" : "○"}
                </span>
                <span class="number">{ofGroup[0]?.number}</span>
                <span class="group-row">
                  {title}
                  <span class="quiet">{words("fitting-of", { count: written, given: String(ofGroup.length) })}</span>
                </span>
              </Link>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
