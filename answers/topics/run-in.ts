import type { AnyAnswer } from "../answer.ts";

export const runInAnswers: readonly AnyAnswer[] = [];
