import { run } from "../cli/src/run.ts";
import type { Streams } from "../cli/src/streams.ts";

/** What a command did: its exit code, both outputs, and the files it wrote. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

/** Runs a command of the program with a text on standard input, in this process. */
export async function ran(words: readonly string[], input = ""): Promise<Ran> {
  const seen = { out: "", err: "" };
  const files = new Map<string, string | Uint8Array>();
  const streams: Streams = {
    out: (text) => {
      seen.out += text;
    },
    err: (text) => {
      seen.err += text;
    },
    read: () => input,
    write: (path, content) => {
      files.set(path, content);
    },
    now: () => new Date("2026-03-01T14:05:00Z"),
  };
  return { code: await run(words, streams), ...seen, files };
}
