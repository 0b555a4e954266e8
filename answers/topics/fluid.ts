import type { AnyAnswer } from "../answer.ts";

export const fluidAnswers: readonly AnyAnswer[] = [];
