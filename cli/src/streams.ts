import { readFileSync, writeFileSync } from "node:fs";

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
  out: (text) => writeFileSync(1, text),
  err: (text) => writeFileSync(2, text),
  read: (path) => readFileSync(path === "-" ? 0 : path, "utf8"),
  write: (path, content) => writeFileSync(path, content),
  now: () => new Date(),
};
