import type { AnyAnswer } from "../answer.ts";

export const measuredAnswers: readonly AnyAnswer[] = [];
