import type { AnyAnswer } from "../answer.ts";

export const ringsAnswers: readonly AnyAnswer[] = [];
