import type { Verdict } from "@ringwright/core/condition";
import { answerOf } from "@ringwright/core/plan";
import { facts } from "../facts/facts.ts";
import { Link } from "../frame/link.tsx";
import { onBox } from "../frame/route.ts";
import { type Box, planOf } from "../kept/box.ts";
import { fieldOf } from "./ruler-of.ts";
import { VerdictRow } from "./verdict-row.tsx";
import { useWords } from "./words.ts";
import { WorkingsButton } from "./workings.tsx";

/** Whether a box is fit to be packed, point by point: what was found, what is said of it, and the limits on a ruler. What was not looked at stands last. */
export function Verdicts({ box }: { readonly box: Box }) {
  const words = useWords();
  const plan = planOf(box);
  const found = plan && answerOf(plan.box.condition);
  if (!plan || !found) return null;
  const judged = found.verdicts.filter(({ verdict }) => verdict !== "not-measured");
  const open = found.verdicts.filter(({ verdict }) => verdict === "not-measured");
  const part = words("plan-heading-condition");
  return (
    <section class="verdicts">
      <h2>{part}</h2>
      {judged.map((verdict) => (
        <VerdictRow key={verdict.id} box={box} verdict={verdict} />
      ))}
      {open.length === 0 ? null : <NotLooked box={box.id} verdicts={open} />}
      {plan.box.condition.ok ? <WorkingsButton part={part} steps={plan.box.condition.workings} /> : null}
    </section>
  );
}

function NotLooked({ box, verdicts }: { readonly box: string; readonly verdicts: readonly Verdict[] }) {
  const words = useWords();
  return (
    <>
      <h3>{words("verdict-not-looked")}</h3>
      <ul class="not-looked">
        {verdicts.map(({ id, required, advice }) => {
          const field = fieldOf(id, facts.value.all);
          const name = words.called(id);
          return (
            <li key={id}>
              {field === undefined ? name : <Link to={onBox(box, "measure", field)}>{name}</Link>}
              {required ? <span class="attention"> {advice.map((one) => words(one)).join(" ")}</span> : null}
            </li>
          );
        })}
      </ul>
    </>
  );
}
