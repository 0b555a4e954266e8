export * from "./answer.ts";
export * from "./rule.ts";
export { band, begin, outside, uncertain, type Workings, within } from "./workings.ts";
