import type { AnyAnswer } from "../answer.ts";

export const lanternAnswers: readonly AnyAnswer[] = [];
