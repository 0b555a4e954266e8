import type { Step } from "@ringwright/core/fit";
import { useWords } from "../../parts/words.ts";
import { firstWords } from "../logbook/step-name.ts";

/** The cautions that guard a step: those that are new here in full, those said above an earlier step of its group by their first words. */
export function Cautions({ step, fresh }: { readonly step: Step; readonly fresh: readonly string[] }) {
  const words = useWords();
  const all = step.cautions.map((id) => words(id));
  const said = all.filter((text) => !fresh.includes(text));
  if (all.length === 0) return null;
  return (
    <div class="cautions">
      {fresh.map((text) => (
        <p key={text} class="chalk">
          {text}
        </p>
      ))}
      {said.length === 0 ? null : (
        <details class="chalk also">
          <summary>
            {words("fitting-also-holds")}: {said.map((text) => firstWords(text)).join(". ")}.
          </summary>
          {said.map((text) => (
            <p key={text}>{text}</p>
          ))}
        </details>
      )}
    </div>
  );
}
