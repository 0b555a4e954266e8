import { useWords, type Words } from "../../parts/words.ts";
import type { FieldOf } from "./answer-field.tsx";
import type { Question } from "./question.ts";

/** What an option is called: by this question where it has its own word, else as everywhere. */
export function optionWord(words: Words, { id }: Question, option: string): string {
  const own = `choice-${id}-${option}`;
  const said = words(own);
  if (said !== own) return said;
  const general = words(`choice-${option}`);
  return general === `choice-${option}` ? words.called(option) : general;
}

/** The options of a question, in their order. */
export function optionsOf({ asks }: Question): readonly string[] {
  if (asks.is === "yes-no") return ["yes", "no"];
  return asks.is === "choice" || asks.is === "several" ? asks.options : [];
}

/** One of a few, or any of a few: each a large button to tap. Nothing is chosen beforehand. */
export function OptionsField({ id, question, draft, onDraft, describedBy, name, dense }: FieldOf) {
  const words = useWords();
  const several = question.asks.is === "several";
  const chosen = draft.chosen ?? [];
  const toggle = (option: string) =>
    onDraft({ ...draft, chosen: chosen.includes(option) ? chosen.filter((one) => one !== option) : [...chosen, option] });
  if (dense && !several)
    return (
      <select
        id={id}
        aria-label={name}
        aria-describedby={describedBy}
        value={draft.text ?? ""}
        onChange={({ currentTarget }) => onDraft({ ...draft, text: currentTarget.value })}
      >
        <option value="" disabled />
        {optionsOf(question).map((option) => (
          <option key={option} value={option}>
            {optionWord(words, question, option)}
          </option>
        ))}
      </select>
    );
  return (
    <fieldset class={dense ? "options dense" : "options"} aria-label={name ?? words(`ask-${question.id}`)} aria-describedby={describedBy}>
      {optionsOf(question).map((option, index) => (
        <label key={option} class="option">
          <input
            id={index === 0 ? id : undefined}
            type={several ? "checkbox" : "radio"}
            name={several ? undefined : id}
            checked={several ? chosen.includes(option) : draft.text === option}
            onChange={() => (several ? toggle(option) : onDraft({ ...draft, text: option }))}
          />
          <span>{optionWord(words, question, option)}</span>
        </label>
      ))}
    </fieldset>
  );
}
