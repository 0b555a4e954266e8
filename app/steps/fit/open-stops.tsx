import type { Step } from "@ringwright/core/fit";
import type { StepText } from "@ringwright/words/plan";
import { useState } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";
import { firstWords } from "../logbook/step-name.ts";

/** How many are named; the list has them all. */
const named = 6;

/** Before the start: steps without a way past that were not written down. The way leads back to the first of them. */
export function OpenStops({
  box,
  stops,
  texts,
  onAnyway,
}: {
  readonly box: Box;
  readonly stops: readonly Step[];
  readonly texts: ReadonlyMap<string, StepText>;
  readonly onAnyway: (why: string) => void;
}) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const [asked, setAsked] = useState(false);
  const draft = `box/${box.id}/fit/anyway`;
  const why = drafts.text(draft)?.trim() ?? "";
  const [first] = stops;
  return (
    <section>
      <div class="chalk">
        <p>{words("fitting-open-stops")}</p>
        <ul>
          {stops.slice(0, named).map(({ id }) => {
            const text = texts.get(id);
            return (
              <li key={id}>
                <Link to={onBox(box.id, "fit", id)}>{`■ ${text?.number ?? ""} ${firstWords(text?.text ?? words(id))}`}</Link>
              </li>
            );
          })}
        </ul>
        {stops.length > named ? <p>{words("fitting-more-stops", { count: stops.length - named })}</p> : null}
      </div>
      {first === undefined ? null : (
        <Link to={onBox(box.id, "fit", first.id)} class="primary onward">
          {words("fitting-go-there", { number: texts.get(first.id)?.number ?? 1 })}
        </Link>
      )}
      <details>
        <summary>{words("fitting-runs-anyway")}</summary>
        <TextField
          draft={draft}
          label={words("fitting-runs-why")}
          missing={asked && why === "" ? words("fitting-runs-why-missing") : undefined}
        />
        <button
          type="button"
          class="second"
          onClick={() => {
            if (why === "") return setAsked(true);
            return void drafts.drop(draft).then(() => onAnyway(why));
          }}
        >
          {words("fitting-runs-anyway")}
        </button>
      </details>
    </section>
  );
}
