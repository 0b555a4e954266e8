import type { AnyAnswer } from "../answer.ts";

export const unitsAnswers: readonly AnyAnswer[] = [];
