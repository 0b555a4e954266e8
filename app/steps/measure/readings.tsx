import type { How } from "@ringwright/core/uncertainty";
import { unitText } from "@ringwright/core/units";
import { Choice } from "../../parts/choice.tsx";
import { QuantityInput } from "../../parts/quantity/quantity-input.tsx";
import { nothingTyped, type Typing } from "../../parts/quantity/typing.ts";
import { useWords } from "../../parts/words.ts";
import type { FieldOf } from "./answer-field.tsx";

/** Readings of one dimension, each as it was typed, and how they were taken. Those put aside stay hidden. */
export function Readings({ id, question, draft, onDraft, describedBy, wrongAt, onEnter, name, dense }: FieldOf) {
  const words = useWords();
  if (question.asks.is !== "dimension") return null;
  const { typed, aside = 0, how } = draft;
  const last = typed.length - 1;
  const now = typed[last] ?? nothingTyped;
  const before = typed.slice(0, Math.max(0, last));
  const change = (list: readonly Typing[]) => onDraft({ ...draft, typed: list });
  return (
    <div class="readings">
      {aside > 0 ? <p role="status">{words("measure-aside", { count: aside })}</p> : null}
      {before.length > aside ? (
        <ul class="taken" aria-label={words("measure-readings")}>
          {before.map((typing, at) =>
            at < aside ? null : (
              <li key={at}>
                <button
                  type="button"
                  class="taken-one measured"
                  aria-label={words("measure-take-out", { number: at + 1, typed: shown(typing) })}
                  onClick={() => {
                    change(typed.filter((_, index) => index !== at));
                    document.getElementById(id)?.focus();
                  }}
                >
                  {shown(typing)} <span aria-hidden="true">×</span>
                </button>
              </li>
            ),
          )}
        </ul>
      ) : null}
      <QuantityInput
        id={id}
        typing={now}
        kind="length"
        name={name}
        describedBy={describedBy}
        wrong={wrongAt !== undefined}
        first={!dense}
        onType={(typing) => change([...before, typing])}
        onEnter={onEnter}
      />
      {dense ? <HowSelect hows={question.asks.hows} how={how} name={name} onHow={(chosen) => onDraft({ ...draft, how: chosen })} /> : null}
    </div>
  );
}

/** How the readings were taken, one tap each. */
export function HowTaken({ question, draft, onDraft }: Pick<FieldOf, "question" | "draft" | "onDraft">) {
  const words = useWords();
  if (question.asks.is !== "dimension") return null;
  return (
    <Choice
      legend={words("measure-how-taken")}
      options={question.asks.hows.map((value) => ({ value, says: words.called(value) }))}
      chosen={draft.how}
      onChoose={(how) => onDraft({ ...draft, how })}
    />
  );
}

function HowSelect({
  hows,
  how,
  name,
  onHow,
}: {
  readonly hows: readonly How[];
  readonly how: How | undefined;
  readonly name: string | undefined;
  readonly onHow: (how: How) => void;
}) {
  const words = useWords();
  return (
    <select
      aria-label={`${name ?? ""} ${words("measure-how-taken")}`}
      value={how ?? ""}
      onChange={({ currentTarget }) => {
        const chosen = hows.find((one) => one === currentTarget.value);
        if (chosen) onHow(chosen);
      }}
    >
      <option value="" disabled>
        {words("measure-how-short")}
      </option>
      {hows.map((one) => (
        <option key={one} value={one}>
          {words.called(one)}
        </option>
      ))}
    </select>
  );
}

/** A reading as typed, with the unit that stood beside it. */
export function shown({ text, unit }: Typing): string {
  return unit === "" || /[^\d\s.,/+-]/u.test(text) ? text : `${text} ${unitText(unit)}`;
}
