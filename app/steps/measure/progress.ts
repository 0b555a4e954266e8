import { type BoxState, standing } from "@ringwright/logbook";
import { type Chapter, chapters, type Known, type Question } from "./question.ts";
import { questionsFor } from "./questions.ts";

/** A chapter with its questions, as far as this box is asked them. */
export interface ChapterOf {
  readonly chapter: Chapter;
  readonly questions: readonly Question[];
  readonly answered: number;
}

/** Whether a question has an answer; "don't know" is one. */
export function isAnswered({ field }: Question, { fields }: BoxState): boolean {
  return standing(fields.get(field)) !== undefined;
}

/** The chapters of a box, those without a question for it left out. */
export function chaptersOf(known: Known, state: BoxState): readonly ChapterOf[] {
  const asked = questionsFor(known);
  return chapters.flatMap((chapter) => {
    const questions = asked.filter((question) => question.chapter === chapter);
    const answered = questions.filter((question) => isAnswered(question, state)).length;
    return questions.length === 0 ? [] : [{ chapter, questions, answered }];
  });
}

/** The next question without an answer, from a field on and then from the start; none when all are answered. */
export function nextQuestion(known: Known, state: BoxState, after?: string): Question | undefined {
  const asked = questionsFor(known);
  const at = asked.findIndex(({ field }) => field === after) + 1;
  return [...asked.slice(at), ...asked.slice(0, at)].find((question) => question.field !== after && !isAnswered(question, state));
}

/** The question before another, answered or not. */
export function questionBefore(known: Known, field: string): Question | undefined {
  const asked = questionsFor(known);
  return asked[asked.findIndex((question) => question.field === field) - 1];
}

/** The question of a field, as this box is asked it. */
export function questionOf(known: Known, field: string): Question | undefined {
  return questionsFor(known).find((question) => question.field === field);
}
