import type { AnyAnswer } from "../answer.ts";

export const sectionAnswers: readonly AnyAnswer[] = [];
