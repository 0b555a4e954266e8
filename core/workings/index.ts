export * from "./answer.ts";
export { keptByName, keptFor } from "./kept.ts";
export * from "./rule.ts";
export { band, begin, notWithin, outside, uncertain, type Workings, within } from "./workings.ts";
