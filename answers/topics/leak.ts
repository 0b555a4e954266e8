import type { AnyAnswer } from "../answer.ts";

export const leakAnswers: readonly AnyAnswer[] = [];
