import { QuantityInput } from "../../parts/quantity/quantity-input.tsx";
import { nothingTyped } from "../../parts/quantity/typing.ts";
import { useWords } from "../../parts/words.ts";
import type { FieldOf } from "./answer-field.tsx";

/** In the order in which the survey keeps them. */
const hours = [12, 3, 6, 9] as const;

/** The gap from shaft to bore at the four clocks, set out as one faces the box. */
export function ClockGaps({ id, question, draft, onDraft, describedBy, wrongAt, onEnter, dense, name }: FieldOf) {
  const words = useWords();
  if (question.asks.is !== "clock-gaps") return null;
  return (
    <fieldset class={dense ? "clock dense" : "clock"} aria-label={name ?? words(`ask-${question.id}`)}>
      {hours.map((hour, at) => (
        <div key={hour} class={`at-${hour}`}>
          <label for={at === 0 ? id : `${id}-${hour}`}>{words("measure-clock", { hour })}</label>
          <QuantityInput
            id={at === 0 ? id : `${id}-${hour}`}
            typing={draft.typed[at] ?? nothingTyped}
            kind="length"
            describedBy={describedBy}
            wrong={wrongAt === at}
            first={at === 0 && !dense}
            onType={(typing) =>
              onDraft({ ...draft, typed: hours.map((_, place) => (place === at ? typing : (draft.typed[place] ?? nothingTyped))) })
            }
            onEnter={at < 3 ? () => document.getElementById(`${id}-${hours[at + 1]}`)?.focus() : onEnter}
          />
        </div>
      ))}
    </fieldset>
  );
}
