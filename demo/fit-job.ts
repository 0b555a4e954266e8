import { ask, type Facts } from "@ringwright/answers";
import { fold, type Json, type Measured, noHead, surveyOf, writeEntry } from "@ringwright/logbook";
import { Diary } from "./act.ts";
import { demoDevice, demoSite, idFrom, people, randomFrom } from "./ids.ts";
import { type Known, mm, typed } from "./said.ts";

/** A step of a plan, as far as somebody answers it. */
interface Step {
  readonly id: string;
  readonly group: string;
  readonly kind: "tick" | "number" | "text" | "choice" | "wait";
  readonly measures?: string;
  readonly predicted?: { readonly value: number; readonly unit: string };
  readonly blanks: readonly string[];
  readonly choices: readonly string[];
}

/** What somebody reads off where the plan foretells nothing. */
const usual: Readonly<Record<string, Measured | number>> = {
  "step-gap-as-found": mm(7.5),
  "step-lantern-depth": mm(51),
  "step-groove": mm(0.1),
  "step-throat-gap": mm(0.4),
  "step-follower-gap": mm(0.4),
  "step-shaft-lift": mm(0.05),
  "step-runout": mm(0.04),
  "step-rod-true": mm(0.02),
  "step-stem-straight": mm(0.05),
  "step-follower-square": mm(0.2),
  "step-entry": mm(6),
  "step-gland-gap": mm(16),
  "step-flush-on": typed("pressure", "2.4 bar"),
  "step-old-rings-all": 5,
};

/** The steps of the plan for what is known of a box. */
function stepsOf(known: Known, facts: Facts): readonly Step[] {
  const box = idFrom("box: nowhere");
  const { acts } = new Diary(box).fields(known);
  const entries = acts.map(({ kind, body }, index) => {
    const at = { device: "2026-01-01T00:00:00Z", serverOffsetMs: null };
    const doing = { site: demoSite, box, kind, body, by: people.fitter, device: demoDevice, at, after: [] };
    return writeEntry(doing, noHead, Date.UTC(2026, 0, 1), randomFrom(`${index}`)).entry;
  });
  const reply = ask("plan", surveyOf(fold(box, entries)), facts);
  if (!reply.ok) throw new Error(`no plan: ${reply.refusal.why}`);
  const { parts } = reply.answer as unknown as { readonly parts: { readonly "fit-steps"?: { readonly steps: readonly Step[] } } };
  return parts["fit-steps"]?.steps ?? [];
}

function found(step: Step, known: Known): Json | Measured {
  if (step.kind === "tick" || step.kind === "wait") return true;
  if (step.kind === "text") return "invented";
  if (step.kind === "choice") return step.choices[0] ?? "";
  const { measures, predicted } = step;
  if (measures === "count" || measures === "rate") return predicted?.value ?? (usual[step.id] as number | undefined) ?? 0;
  // A ring's depth is read to half a millimetre.
  if (measures === "length" && predicted) return mm(Math.round(predicted.value * 2000) / 2);
  if (predicted) return { ...predicted, typed: `${predicted.value} ${predicted.unit}` };
  const said = step.id === "step-bore-size" ? known.bore : step.id === "step-shaft-size" ? known.shaft : undefined;
  if (typeof said === "object" && said !== null && "readings" in said && said.readings[0]) return said.readings[0];
  const read = usual[step.id];
  if (read === undefined) throw new Error(`nothing is said of ${step.id}`);
  return read as Json | Measured;
}

/** Writes the steps of a fitting job up to and with the one named. */
export function fitJob(diary: Diary, job: string, known: Known, facts: Facts, { last }: { readonly last: string }): Diary {
  const steps = stepsOf(known, facts);
  const end = steps.findIndex(({ id }) => id === last);
  if (end < 0) throw new Error(`the plan has no step ${last}`);
  for (const step of steps.slice(0, end + 1)) {
    const blanks = Object.fromEntries(step.blanks.map((blank) => [blank, "invented"]));
    diary.write("fit-step", {
      job,
      step: step.id,
      found: found(step, known) as Measured,
      ...(step.blanks.length > 0 ? { blanks } : {}),
    });
  }
  return diary;
}
