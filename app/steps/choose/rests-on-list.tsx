import type { Plan } from "@ringwright/core/plan";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { capital } from "../../parts/capital.ts";
import { useWords } from "../../parts/words.ts";
import { restsOn } from "./rests-on.ts";

/** What the choice rests on: in blue what was said, a tap away from saying it otherwise; what was not said with what it would settle. */
export function RestsOnList({ box, plan }: { readonly box: Box; readonly plan: Plan | undefined }) {
  const words = useWords();
  const all = restsOn(box.state, plan, words);
  return (
    <section class="rests-on">
      <h2>{words("choose-rests")}</h2>
      <ul>
        {all.map(({ field, label, value, worked, without }) => (
          <li key={field} class={without === undefined ? undefined : "unsaid"}>
            <Link to={onBox(box.id, "measure", field)}>
              <span class="label">{capital(label)}</span>
              {value === undefined ? (
                <span class="say-it">{words("choose-say-it")}</span>
              ) : (
                <span class={worked ? "worked" : "measured"}>{value}</span>
              )}
              {without === undefined ? null : <span class="quiet beneath">{without}</span>}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
