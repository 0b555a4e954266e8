import type { Bridge, Step } from "@ringwright/core/fit";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import { Choice } from "../../parts/choice.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";
import { bridgeFor, today } from "./fitting.ts";

const spans = [
  ["fitting-week", 7],
  ["fitting-month", 30],
  ["fitting-quarter", 91],
] as const;

/** Why a step can't be done; then who owns the make-do and until when, or that there is no way past. */
export function Cannot({
  step,
  prefix,
  ringsLeftIn,
  onBack,
  onKeep,
}: {
  readonly step: Step;
  readonly prefix: string;
  readonly ringsLeftIn: number;
  readonly onBack: () => void;
  readonly onKeep: (reason: string, made: Bridge | undefined) => void;
}) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const id = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  const [asked, setAsked] = useState(false);
  useEffect(() => heading.current?.focus(), []);
  const reason = drafts.text(`${prefix}reason`);
  const owner = drafts.text(`${prefix}owner`) ?? "";
  const until = drafts.text(`${prefix}until`) ?? "";
  const made = bridgeFor(step, { reason: reason ?? "", owner, until, ringsLeftIn });
  const wrong = asked && !made.ok ? made.refusal : undefined;
  const about = (input: string) => (wrong?.input === input ? words.sentence(wrong.says) : undefined);
  const keep = () => {
    if (reason !== undefined && !step.bridge) return onKeep(reason, undefined);
    if (reason !== undefined && made.ok) return onKeep(reason, made.value);
    return setAsked(true);
  };
  return (
    <section class="cannot" aria-labelledby={`${id}-head`}>
      <h3 id={`${id}-head`} ref={heading} tabIndex={-1}>
        {words("fitting-cannot")}
      </h3>
      {ringsLeftIn > 0 ? <p class="chalk">{words("fit-rings-left", { rings: ringsLeftIn })}</p> : null}
      {step.bridge ? null : <p class="chalk">■ {words("fit-no-way-past")}</p>}
      <Choice
        legend={words("fitting-cannot-why")}
        options={step.cannot.map((value) => ({ value, says: words.called(value) }))}
        chosen={step.cannot.find((one) => one === reason)}
        onChoose={(value) => void drafts.put(`${prefix}reason`, value)}
        missing={asked && reason === undefined ? words("fitting-cannot-missing") : undefined}
      />
      {step.bridge ? (
        <>
          <p>
            <strong>{words("fitting-bridge")}.</strong> {words("fitting-bridge-hint")}
          </p>
          <TextField draft={`${prefix}owner`} label={words("fitting-owner")} missing={about("owner")} />
          <div class="field">
            <label for={`${id}-until`}>{words("fitting-until")}</label>
            {about("until") === undefined ? null : (
              <span class="attention" role="alert">
                {about("until")}
              </span>
            )}
            <div class="taps">
              {spans.map(([says, days]) => (
                <button
                  key={says}
                  type="button"
                  class="second"
                  aria-pressed={until === today(days)}
                  onClick={() => void drafts.put(`${prefix}until`, today(days))}
                >
                  {words(says)}
                </button>
              ))}
            </div>
            <input
              id={`${id}-until`}
              type="date"
              value={until}
              min={today(1)}
              onInput={({ currentTarget }) => void drafts.put(`${prefix}until`, currentTarget.value)}
            />
          </div>
        </>
      ) : null}
      <div class="bar">
        <button type="button" class="primary" onClick={keep}>
          {words(step.bridge ? "fitting-keep-bridge" : "fitting-stops-here")}
        </button>
        <button type="button" class="second" onClick={onBack}>
          {words("fitting-back")}
        </button>
      </div>
    </section>
  );
}
