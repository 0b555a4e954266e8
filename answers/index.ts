export type { AnyAnswer } from "./answer.ts";
export type { Facts } from "./facts.ts";
export { type Json, type JsonSchema, type Malformed, type Reader, unreadId } from "./field.ts";
export { type JsonRead, readJson } from "./read-json.ts";
export { answers } from "./register.ts";
export { ask, findAnswer, inWords, isMalformed, type Reply, refusedQuestion, replyOf, type Worked, work } from "./reply.ts";
export { replySchema } from "./schema.ts";
export { surveyField } from "./topics/survey-field.ts";
