import type { Step } from "@ringwright/core/fit";
import type { Job } from "@ringwright/logbook";
import type { StepText } from "@ringwright/words/plan";
import { useWorkshop } from "../../frame/workshop.ts";
import { Choice } from "../../parts/choice.tsx";
import { Counter } from "../../parts/counter.tsx";
import { Keypad } from "../../parts/quantity/keypad.tsx";
import { QuantityField } from "../../parts/quantity/quantity-field.tsx";
import { useWords } from "../../parts/words.ts";
import { type Answer, leftIn, quantityOf } from "./answer.ts";
import { Blank } from "./blank.tsx";
import { Found } from "./found.tsx";
import { numberOf } from "./job.ts";

/** What a step asks for: a number, a count, a choice, and its blanks. A tick asks for nothing but the button below. */
export function AskFor({
  step,
  text,
  prefix,
  job,
  asked,
  answer,
  onEnter,
}: {
  readonly step: Step;
  readonly text: StepText;
  readonly prefix: string;
  readonly job: Job | undefined;
  /** Whether it was already tried to keep: then what is missing is said. */
  readonly asked: boolean;
  readonly answer: Answer;
  readonly onEnter: () => void;
}) {
  const words = useWords();
  const { drafts, preferences } = useWorkshop();
  const kind = quantityOf(step);
  const drafted = drafts.under(prefix);
  const number = answer.kind === "ready" ? numberOf(answer.found) : undefined;
  const missing = asked && answer.kind === "missing" ? words.sentence(answer.says) : undefined;
  const hints = step.predicted === undefined ? text.hints : text.hints.slice(1);
  return (
    <div class={step.kind === "number" && kind !== undefined && preferences.keys.value === "own" ? "asks with-keys" : "asks"}>
      {hints.length === 0 ? null : <p class="quiet">{hints.join(" · ")}</p>}
      {step.kind === "number" ? <Found step={step} found={number} /> : null}
      {step.kind === "number" && kind !== undefined ? (
        <>
          <QuantityField
            draft={`${prefix}value`}
            kind={kind}
            label={words("fitting-value")}
            wrong={answer.kind === "refused" ? words.sentence(answer.says) : missing}
            first
            onEnter={onEnter}
          />
          {preferences.keys.value === "own" ? <Keypad /> : null}
        </>
      ) : null}
      {step.kind === "number" && kind === undefined ? (
        <Counter
          legend={words("fitting-count")}
          count={drafted.has("count") ? Number(drafted.get("count")) : undefined}
          missing={missing}
          onCount={(count) => void drafts.put(`${prefix}count`, String(count))}
        />
      ) : null}
      {step.kind === "choice" ? (
        <Choice
          legend={words("fitting-value")}
          options={step.choices.map((value) => ({ value, says: words.called(value) }))}
          chosen={step.choices.find((one) => one === drafted.get("choice"))}
          onChoose={(value) => void drafts.put(`${prefix}choice`, value)}
          missing={missing}
        />
      ) : null}
      {step.blanks.map((blank) =>
        blank === leftIn ? (
          <Counter
            key={blank}
            legend={words("fitting-left-in")}
            count={Number(drafted.get(`blank/${blank}`) ?? "0")}
            onCount={(count) => void drafts.put(`${prefix}blank/${blank}`, String(count))}
          />
        ) : (
          <Blank
            key={blank}
            blank={blank}
            draft={`${prefix}blank/${blank}`}
            job={job}
            missing={asked && answer.kind === "ready" && answer.empty.includes(blank)}
          />
        ),
      )}
      {Number(drafted.get(`blank/${leftIn}`) ?? "0") > 0 ? (
        <p class="chalk">{words("fit-rings-left", { rings: Number(drafted.get(`blank/${leftIn}`)) })}</p>
      ) : null}
    </div>
  );
}
