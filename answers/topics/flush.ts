import type { AnyAnswer } from "../answer.ts";

export const flushAnswers: readonly AnyAnswer[] = [];
