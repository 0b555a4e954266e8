import type { Candidate, Materials, Rejected } from "@ringwright/core/materials";
import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Says, Warning } from "@ringwright/core/workings";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { capital } from "../../parts/capital.ts";
import { useWords } from "../../parts/words.ts";
import { WorkingsButton } from "../../parts/workings.tsx";
import { Reasons } from "./reasons.tsx";

/** How many stand in full before the rest. */
const inFull = 5;

/** Packings in rank, each with the reason that binds; the rest closed up; those that do not pass, each with what stops it. */
export function Shortlist({ box, plan, found }: { readonly box: Box; readonly plan: Plan; readonly found: Materials }) {
  const words = useWords();
  const { ranked, rejected, sensitive } = found;
  const taken = plan.chosen.asked ? answerOf(plan.chosen.style)?.style : undefined;
  const { materials } = plan.chosen;
  const marks: readonly Says[] = materials.ok ? materials.warnings.filter(isMark).map(({ says }) => says) : [];
  const list = (styles: readonly string[]) => styles.map((id) => words.called(id)).join(", ");
  return (
    <section class="shortlist">
      <h2>{words("choose-ranked")}</h2>
      {marks.map((says) => (
        <p key={says.id} class="chalk">
          {words.sentence(says)}
        </p>
      ))}
      {ranked.length === 0 && !marks.some(({ id }) => id === "no-material-fits") ? <p class="chalk">{words("choose-none")}</p> : null}
      <ol class="packings">
        {ranked.slice(0, inFull).map((one, index) => (
          <Row key={one.style} box={box} of={one} number={index + 1} standing={one.standing} taken={taken === one.style} />
        ))}
      </ol>
      {ranked.length <= inFull ? null : (
        <details>
          <summary>{words("choose-rest", { count: ranked.length - inFull })}</summary>
          <ol class="packings" start={inFull + 1}>
            {ranked.slice(inFull).map((one, index) => (
              <Row key={one.style} box={box} of={one} number={inFull + index + 1} standing={one.standing} taken={taken === one.style} />
            ))}
          </ol>
        </details>
      )}
      {sensitive.map(({ input, lost, gained }) => (
        <p key={input} class="quiet">
          {lost.length === 0 ? "" : `${words("choose-sensitive-lost", { input, list: list(lost) })} `}
          {gained.length === 0 ? "" : words("choose-sensitive-gained", { input, list: list(gained) })}
        </p>
      ))}
      {rejected.length === 0 ? null : (
        <details open={rejected.some(({ style }) => style === taken)}>
          <summary>{words("choose-rejected", { count: rejected.length })}</summary>
          <ul class="packings">
            {rejected.map((one) => (
              <Row key={one.style} box={box} of={one} taken={taken === one.style} />
            ))}
          </ul>
        </details>
      )}
      {materials.ok ? <WorkingsButton part={words("plan-heading-packing")} steps={materials.workings} /> : null}
    </section>
  );
}

/** What is said of the service as a whole and needs a hand; what was not said stands with what the choice rests on. */
function isMark({ kind }: Warning): boolean {
  return kind === "limit" || kind === "caution";
}

function Row({
  box,
  of: one,
  number,
  standing,
  taken,
}: {
  readonly box: Box;
  readonly of: Candidate | Rejected;
  readonly number?: number;
  readonly standing?: Candidate["standing"];
  readonly taken: boolean;
}) {
  const words = useWords();
  return (
    <li class={taken ? "taken" : undefined}>
      <Link to={onBox(box.id, "choose", one.style)} class="packing">
        <span class="number" aria-hidden="true">
          {number === undefined ? "×" : `${number}`}
        </span>
        <span>
          <strong>{capital(words.called(one.style))}</strong>
          <span class="standing">{taken ? words("choose-taken") : standing === undefined ? "" : words(`plan-packing-${standing}`)}</span>
        </span>
      </Link>
      <Reasons box={box} of={one} short />
    </li>
  );
}
