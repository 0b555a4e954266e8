import type { AnyAnswer } from "../answer.ts";

export const stemsAnswers: readonly AnyAnswer[] = [];
