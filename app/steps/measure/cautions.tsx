import type { Caution } from "@ringwright/core/cautions";
import { answerOf } from "@ringwright/core/plan";
import { planned } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import type { Live } from "./live.ts";
import type { Question } from "./question.ts";

/** Said once for the whole step, above everything. */
const saidAbove = "caution-devices-outside";

/** The cautions that stand above a question's input, by id, in reading order. */
export function cautionsAbove({ field }: Question, live: Live): readonly string[] {
  const [first, last] = [field.split(".")[0], field.split(".").at(-1)];
  return cautionsOf(live)
    .filter(({ id, guards }) => id !== saidAbove && guards.inputs.some((input) => input === first || input === last))
    .map(({ id }) => id);
}

/** Every caution of a box. Measurements that make no box take none of them away. */
function cautionsOf({ planned: whole, question }: Live): readonly Caution[] {
  const { shaft: _, bore: __, depth: ___, ...rest } = question;
  for (const attempt of [() => whole, () => planned(rest), () => planned({ motion: question.motion ?? null })]) {
    const tried = attempt();
    if (tried.kind === "planned" && tried.answer.ok) return answerOf(tried.answer.value.steps.cautions)?.cautions ?? [];
  }
  return [];
}

/** Read once on this page already, with an answer kept beneath: from then on its first words stand, and the rest a tap away. */
const read = new Set<string>();

/** Notes that someone has kept an answer under these cautions. */
export function cautionsRead(ids: readonly string[]): void {
  for (const id of ids) read.add(id);
}

/** Cautions above the input they guard. */
export function Cautions({ ids }: { readonly ids: readonly string[] }) {
  const words = useWords();
  if (ids.length === 0) return null;
  return (
    <ul class="cautions">
      {ids.map((id) => {
        const said = words(id);
        const end = said.indexOf(". ") + 1 || said.length;
        return (
          <li key={id} class="chalk">
            {read.has(id) && end < said.length ? (
              <details>
                <summary>{said.slice(0, end)}</summary>
                {said.slice(end)}
              </details>
            ) : (
              <>
                {said.slice(0, end)}
                <span class="more">{said.slice(end)}</span>
              </>
            )}
          </li>
        );
      })}
    </ul>
  );
}
