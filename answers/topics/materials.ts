import type { AnyAnswer } from "../answer.ts";

export const materialsAnswers: readonly AnyAnswer[] = [];
