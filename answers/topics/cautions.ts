import type { AnyAnswer } from "../answer.ts";

export const cautionsAnswers: readonly AnyAnswer[] = [];
