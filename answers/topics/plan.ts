import type { AnyAnswer } from "../answer.ts";

export const planAnswers: readonly AnyAnswer[] = [];
