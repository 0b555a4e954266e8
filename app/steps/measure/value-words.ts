import type { FieldValue, Measured, Readings } from "@ringwright/logbook";
import type { Words } from "../../parts/words.ts";
import { optionWord } from "./options-field.tsx";
import type { Question } from "./question.ts";

/** An answer as it was given: numbers as they were typed, choices by their words. */
export function valueWords(words: Words, question: Question, value: FieldValue): string {
  const { asks } = question;
  if (value === null || (asks.is === "choice" && asks.unknown !== null && value === asks.unknown)) return words("measure-dont-know");
  if (typeof value === "boolean") return words(value ? "measure-yes" : "measure-no");
  if (typeof value === "number") return String(value);
  if (typeof value === "string") {
    if (asks.is === "choice") return optionWord(words, question, value);
    return asks.is === "list" ? words.called(value) : value;
  }
  if (Array.isArray(value)) {
    const list = value as readonly (string | Measured)[];
    if (list.length === 0) return words("choice-none");
    return list
      .map((one) => (typeof one === "object" ? one.typed : asks.is === "several" ? optionWord(words, question, one) : words.called(one)))
      .join(" · ");
  }
  if (!("readings" in value)) return (value as Measured).typed;
  const { readings, how } = value as Readings;
  return `${readings.map(({ typed }) => typed).join(" · ")}${how === undefined ? "" : `, ${words.called(how)}`}`;
}
