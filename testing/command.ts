import { run } from "../cli/src/run.ts";
import type { Streams } from "../cli/src/streams.ts";

/** What a command did: its exit code, both outputs, and the files it wrote. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, string>;
}

/** Runs a command of the program with a text on standard input, in this process. */
export async function ran(words: readonly string[], input = ""): Promise<Ran> {
  const seen = { out: "", err: "" };
  const files = new Map<string, string>();
  const streams: Streams = {
    out: (text) => {
      seen.out += text;
    },
    err: (text) => {
      seen.err += text;
    },
    read: () => input,
    write: (path, text) => {
      files.set(path, text);
    },
  };
  return { code: await run(words, streams), ...seen, files };
}
