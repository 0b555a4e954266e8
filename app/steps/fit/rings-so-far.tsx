import type { Step } from "@ringwright/core/fit";
import type { Job } from "@ringwright/logbook";
import { useWords } from "../../parts/words.ts";
import { numberOf, writtenFor } from "./job.ts";
import { stepNumber } from "./step-number.ts";
import { verdictOn } from "./verdict.ts";

/** The depth after each ring, expected against found, while the set grows. */
export function RingsSoFar({ steps, step, job }: { readonly steps: readonly Step[]; readonly step: Step; readonly job: Job | undefined }) {
  const words = useWords();
  if (step.ring === undefined || step.measures !== "length") return null;
  const rings = steps.filter(({ ring, measures }) => ring !== undefined && measures === "length");
  return (
    <div class="wide">
      <table class="rings-so-far">
        <caption>{words("fitting-rings-so-far")}</caption>
        <thead>
          <tr>
            <th scope="col">{words("fitting-ring")}</th>
            <th scope="col">{words("fitting-predicted")}</th>
            <th scope="col">{words("fitting-found")}</th>
            <th scope="col">{words("fitting-off")}</th>
          </tr>
        </thead>
        <tbody>
          {rings.map((one) => {
            const written = writtenFor(job, one.id);
            const found = numberOf(written?.found);
            const expected = numberOf(written?.expected) ?? one.predicted?.value;
            const verdict = found === undefined ? undefined : verdictOn(one, found, expected);
            return (
              <tr key={one.id} aria-current={one.id === step.id ? "step" : undefined}>
                <th scope="row">{one.ring}</th>
                <td class="worked">{expected === undefined ? "–" : stepNumber(one, expected, words)}</td>
                <td class="measured">{found === undefined ? "" : stepNumber(one, found, words)}</td>
                <td class={verdict?.tone === "stop" ? "attention" : "worked"}>
                  {verdict?.off === undefined
                    ? ""
                    : `${verdict.tone === "stop" ? "■ " : ""}${verdict.off > 0 ? "+" : ""}${stepNumber(one, verdict.off, words)}`}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
