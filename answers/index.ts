export type { AnyAnswer } from "./answer.ts";
export type { Facts } from "./facts.ts";
export {
  choiceField,
  countField,
  type Field,
  groupField,
  type Json,
  type JsonSchema,
  listField,
  type Malformed,
  optional,
  quantityField,
  type Reader,
  textField,
  unreadId,
} from "./field.ts";
export { type JsonRead, readJson } from "./read-json.ts";
export { answers } from "./register.ts";
export { ask, findAnswer, inWords, isMalformed, type Reply, refusedQuestion, replyOf, type Worked, work } from "./reply.ts";
export { foundSchema, listAnswers, refusalSchema, replySchema } from "./schema.ts";
export { countShape, groupShape, listShape, maybe, type Shape, textShape } from "./shape.ts";
export { withSlips } from "./slips-typed.ts";
export { surveyField } from "./topics/survey-field.ts";
