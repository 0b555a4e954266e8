export type { AnyAnswer } from "./answer.ts";
export type { Facts } from "./facts.ts";
export type { Json, JsonSchema } from "./field.ts";
export { answers } from "./register.ts";
export { ask, findAnswer, isMalformed, type Reply, replyOf, type Worked, work } from "./reply.ts";
export { replySchema } from "./schema.ts";
