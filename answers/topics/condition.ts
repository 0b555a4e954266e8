import type { AnyAnswer } from "../answer.ts";

export const conditionAnswers: readonly AnyAnswer[] = [];
