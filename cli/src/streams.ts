import { readFileSync, readSync, writeFileSync, writeSync } from "node:fs";

/** Where a command reads and writes, so that tests can stand in for the terminal. */
export interface Streams {
  out(text: string): void;
  err(text: string): void;
  /** A file's text, or standard input for `-`. */
  read(path: string): string;
  write(path: string, content: string | Uint8Array): void;
  /** The moment that stands on what is issued. */
  now(): Date;
}

export const terminal: Streams = {
  out: (text) => writeAll(1, text),
  err: (text) => writeAll(2, text),
  read: (path) => (path === "-" ? readAll(0) : readFileSync(path, "utf8")),
  write: (path, content) => writeFileSync(path, content),
  now: () => new Date(),
};

function codeOf(error: unknown): unknown {
  return error instanceof Error && "code" in error ? error.code : undefined;
}

/** Waits a little: the other end of a pipe has nothing yet, or cannot take more yet. */
function waitForPipe(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
}

/** Writes all of it, however small the bites; a reader that has gone away is no error. */
function writeAll(to: number, text: string): void {
  let bytes = Buffer.from(text);
  while (bytes.length > 0) {
    try {
      bytes = bytes.subarray(writeSync(to, bytes));
    } catch (error) {
      if (codeOf(error) === "EPIPE") return;
      if (codeOf(error) !== "EAGAIN") throw error;
      waitForPipe();
    }
  }
}

function readAll(from: number): string {
  const read: Buffer[] = [];
  const bite = Buffer.alloc(65536);
  for (;;) {
    try {
      const length = readSync(from, bite);
      if (length === 0) break;
      read.push(Buffer.from(bite.subarray(0, length)));
    } catch (error) {
      if (codeOf(error) === "EOF") break;
      if (codeOf(error) !== "EAGAIN") throw error;
      waitForPipe();
    }
  }
  return Buffer.concat(read).toString("utf8");
}
