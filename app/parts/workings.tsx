import type { Step } from "@ringwright/core/workings";
import type { StepInWords } from "@ringwright/words/workings";
import { useEffect, useState } from "preact/hooks";
import { loadRest } from "../facts/facts.ts";
import { useWorkshop } from "../frame/workshop.ts";
import { Dialog } from "./dialog.tsx";
import { useWords } from "./words.ts";

/** Opens the workings of a figure: formula, values, source. */
export function WorkingsButton({ part, steps, says }: { readonly part: string; readonly steps: readonly Step[]; readonly says?: string }) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" class="workings" onClick={() => setOpen(true)}>
        {says ?? words("plan-workings", { part })}
      </button>
      {open ? <Workings part={part} steps={steps} onClose={() => setOpen(false)} /> : null}
    </>
  );
}

/** Every step of a figure, each once. The list of sources comes when it is first asked for. */
export function Workings({
  part,
  steps,
  onClose,
}: {
  readonly part: string;
  readonly steps: readonly Step[];
  readonly onClose: () => void;
}) {
  const words = useWords();
  const { preferences } = useWorkshop();
  const [told, setTold] = useState<readonly StepInWords[]>([]);
  const system = preferences.units.value;
  useEffect(() => {
    void Promise.all([import("@ringwright/words/workings"), loadRest()]).then(([{ stepsInWords }]) => setTold(stepsInWords(steps, system)));
  }, [steps, system]);
  return (
    <Dialog title={words("plan-workings", { part })} onClose={onClose}>
      <ol class="steps-of-workings">
        {told.map((step) => (
          <li key={JSON.stringify(step)}>
            <h3>{step.name}</h3>
            <p class="worked">
              {step.formula} = <strong>{step.value}</strong>
            </p>
            {[step.inputs, step.assumed].filter(Boolean).map((line) => (
              <p key={line} class="quiet worked">
                {line}
              </p>
            ))}
            <p class="quiet">{step.source}</p>
          </li>
        ))}
      </ol>
    </Dialog>
  );
}
