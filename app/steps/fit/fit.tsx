import { facts, loadRest } from "../../facts/facts.ts";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { OfBox } from "../../frame/screen.ts";
import { useWords } from "../../parts/words.ts";
import { First } from "./first.tsx";
import { useFitting, useSteps } from "./fitting.ts";
import { StepList } from "./list.tsx";
import { StepScreen } from "./step-screen.tsx";

/** Fitting: a first screen, then one thing a screen, and a list to skip around by. */
export function Fit({ box, rest: [at] }: OfBox) {
  const words = useWords();
  const steps = useSteps(box);
  const fitting = useFitting(box);
  if (!facts.value.whole) {
    void loadRest();
    return <p role="status">{words("fitting-reading")}</p>;
  }
  if (!steps)
    return (
      <>
        <p>{words("fitting-no-plan")}</p>
        <Link to={onBox(box.id, "measure")} class="primary">
          {words("fitting-measure-first")}
        </Link>
      </>
    );
  if (at === "steps") return <StepList box={box} steps={steps} fitting={fitting} />;
  const step = steps.steps.find(({ id }) => id === at);
  const text = at === undefined ? undefined : steps.texts.get(at);
  // A step of a job that runs is not written into again by chance: a new job is begun on the first screen.
  if (step && text && !fitting.finished)
    return <StepScreen key={step.id} box={box} steps={steps} step={step} text={text} fitting={fitting} />;
  return <First box={box} steps={steps} fitting={fitting} />;
}
