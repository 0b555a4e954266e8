import type { StepGroupText } from "@ringwright/words/plan";
import { useState } from "preact/hooks";
import { Dialog } from "../../parts/dialog.tsx";
import { useWords } from "../../parts/words.ts";

/** What is done after the start, in order, each caution once above the first step that it guards. */
export function RunInList({ groups, said }: { readonly groups: readonly StepGroupText[]; readonly said: readonly string[] }) {
  const shown = new Set(said);
  const fresh = (cautions: readonly string[]) =>
    cautions.filter((caution) => {
      const isNew = !shown.has(caution);
      shown.add(caution);
      return isNew;
    });
  return (
    <>
      {groups.map((group) => (
        <section key={group.id} class="told">
          <h2>{group.title}</h2>
          <ol class="plain-steps" start={group.steps[0]?.number ?? 1}>
            {group.steps.map((step) => (
              <li key={step.id} value={step.number}>
                {fresh(step.cautions).map((caution) => (
                  <p key={caution} class="chalk">
                    {caution}
                  </p>
                ))}
                {step.text}
                {step.hints.length === 0 ? null : <span class="quiet"> {step.hints.join(" · ")}</span>}
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

/** When to hold, slacken or stop: one tap away while the machine runs in. */
export function StopRules({ rules }: { readonly rules: readonly string[] }) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  if (rules.length === 0) return null;
  return (
    <>
      <button type="button" class="second stop-rules" onClick={() => setOpen(true)}>
        ■ {words("fitting-stop-rules")}
      </button>
      {open ? (
        <Dialog title={words("fitting-stop-rules")} onClose={() => setOpen(false)}>
          {rules.map((rule) => (
            <p key={rule} class="chalk">
              {rule}
            </p>
          ))}
        </Dialog>
      ) : null}
    </>
  );
}
