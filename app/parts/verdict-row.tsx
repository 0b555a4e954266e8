import type { Verdict } from "@ringwright/core/condition";
import { drawLimitRuler } from "@ringwright/drawings";
import { standing } from "@ringwright/logbook";
import { useMemo } from "preact/hooks";
import { facts } from "../facts/facts.ts";
import { Link } from "../frame/link.tsx";
import { onBox } from "../frame/route.ts";
import type { Box } from "../kept/box.ts";
import { Drawing } from "./drawing.tsx";
import { Opinions } from "./opinions.tsx";
import { fieldOf, mayHaveLimit, rulerOf } from "./ruler-of.ts";
import { SetLimit } from "./set-limit.tsx";
import { useFigure } from "./verdict-figure.ts";
import { useWords } from "./words.ts";

/** One judged point: name, what was found in blue, the verdict in words, and its ruler. */
export function VerdictRow({ box, verdict }: { readonly box: Box; readonly verdict: Verdict }) {
  const words = useWords();
  const figure = useFigure(verdict);
  const ruler = useMemo(() => {
    const drawn = rulerOf(verdict);
    return drawn && drawLimitRuler(drawn);
  }, [verdict]);
  const { id, advice, measured, seen } = verdict;
  const field = fieldOf(id, facts.value.all);
  const unit = mayHaveLimit(id, facts.value.all);
  const found = measured
    ? (typedIn(box, field) ?? figure(measured.value, true))
    : seen === undefined
      ? ""
      : seen === "yes" || seen === "no"
        ? words("verdict-looked-at")
        : words.called(seen);
  const grave = verdict.verdict === "attend" || verdict.verdict === "renew";
  return (
    <article class="verdict">
      <div class="verdict-head">
        <h3>{words.called(id)}</h3>
        <p>
          {found === "" ? null : field === undefined ? (
            <span class="measured">{found}</span>
          ) : (
            <Link to={onBox(box.id, "measure", field)} class="measured">
              {found}
            </Link>
          )}
          <strong class={grave ? "attention" : undefined}>{words(`plan-verdict-${verdict.verdict}`)}</strong>
        </p>
        {verdict.verdict === "good" ? null : advice.map((one) => <p key={one}>{words(one)}</p>)}
      </div>
      {ruler ? <Drawing of={ruler} idPrefix={`ruler-${id}`} widest={620} /> : null}
      {unit === undefined ? null : (
        <div class="verdict-more">
          {verdict.limits.length === 0 ? null : <Opinions verdict={verdict} />}
          <SetLimit box={box.id} verdict={verdict} unit={unit} />
        </div>
      )}
    </article>
  );
}

/** A single reading as it was typed. */
function typedIn({ state }: Box, field: string | undefined): string | undefined {
  const value = field === undefined ? undefined : standing(state.fields.get(field));
  return typeof value === "object" && value !== null && "typed" in value ? value.typed : undefined;
}
