import type { Streams } from "./streams.ts";

export function planCommand(_words: readonly string[], streams: Streams): number {
  streams.err("not built yet\n");
  return 2;
}
