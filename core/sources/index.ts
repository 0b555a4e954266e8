export { type Citation, cite } from "./cite.ts";
export { type SourceId, sources } from "./registry.ts";
export type { Seen, Source } from "./source.ts";
