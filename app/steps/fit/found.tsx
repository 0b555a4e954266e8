import type { Step } from "@ringwright/core/fit";
import { useWords } from "../../parts/words.ts";
import { stepNumber } from "./step-number.ts";
import { verdictOn } from "./verdict.ts";

/** Expected, found and their difference side by side, live while the number is typed, and what that says. */
export function Found({
  step,
  found,
  expected = step.predicted?.value,
}: {
  readonly step: Step;
  readonly found: number | undefined;
  readonly expected?: number | undefined;
}) {
  const words = useWords();
  const verdict = found === undefined ? undefined : verdictOn(step, found, expected);
  return (
    <>
      {expected === undefined ? null : (
        <dl class="against">
          <div>
            <dt>{words("fitting-predicted")}</dt>
            <dd class="worked">{stepNumber(step, expected, words)}</dd>
          </div>
          <div>
            <dt>{words("fitting-found")}</dt>
            <dd class="measured">{found === undefined ? "–" : stepNumber(step, found, words)}</dd>
          </div>
          <div>
            <dt>{words("fitting-off")}</dt>
            <dd class="worked">
              {verdict?.off === undefined ? "–" : `${verdict.off > 0 ? "+" : ""}${stepNumber(step, verdict.off, words)}`}
            </dd>
          </div>
        </dl>
      )}
      <div role="status">
        {verdict?.says.map((says) => (
          <p key={says.id} class={verdict.tone === "fine" ? "fine" : "chalk"}>
            {words.sentence(says)}
          </p>
        ))}
      </div>
    </>
  );
}
