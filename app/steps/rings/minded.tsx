import { type Plan, surveyField } from "@ringwright/core/plan";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { needsHand, warningsOf } from "./warnings.ts";

/** What the set wants minded: limits that are passed, notes, and what was not known, with the way to the question that settles it. */
export function Minded({ box, plan }: { readonly box: Box; readonly plan: Plan }) {
  const words = useWords();
  const warnings = warningsOf(plan);
  if (warnings.length === 0) return null;
  return (
    <section class="told">
      <h2>{words("rings-step-minded")}</h2>
      {warnings.map((warning, i) => (
        <p key={i} class={needsHand(warning) ? "chalk" : undefined}>
          {words.sentence(warning.says)}
          {warning.kind === "gap" && warning.input !== undefined ? (
            <>
              {" "}
              <Link to={onBox(box.id, "measure", surveyField(warning.input))}>{words("rings-step-go-measure")}</Link>
            </>
          ) : null}
        </p>
      ))}
    </section>
  );
}
