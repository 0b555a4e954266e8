import type { AnyAnswer } from "../answer.ts";

export const fitAnswers: readonly AnyAnswer[] = [];
