import type { AnyAnswer } from "../answer.ts";

export const glandAnswers: readonly AnyAnswer[] = [];
