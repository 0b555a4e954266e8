import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";

const root = join(import.meta.dirname, "..");

/** Builds what the children run. */
export function buildForChildren(): void {
  const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
  execFileSync(process.execPath, [tsc, "-b", "store"], { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
}

/** A program of its own around a store. */
export interface Child {
  readonly process: ChildProcess;
  /** Lines that it has said so far. */
  readonly said: readonly string[];
  /** Settles when it has said this many lines, or is no more. */
  lines(count: number): Promise<void>;
  /** Kills it without a word, and waits until it is gone. */
  kill(): Promise<void>;
}

/** Starts one, under another account when one is given. */
export function startChild(words: readonly string[], account: { readonly uid?: number; readonly gid?: number } = {}): Child {
  const child = spawn(process.execPath, [join(root, "testing", "child.mjs"), ...words], {
    stdio: ["ignore", "pipe", "inherit"],
    ...account,
  });
  const said: string[] = [];
  const waiting = new Set<() => void>();
  const look = () => {
    for (const one of [...waiting]) one();
  };
  let gone = false;
  const ended = new Promise<void>((resolve) =>
    child.once("close", () => {
      gone = true;
      look();
      resolve();
    }),
  );
  createInterface({ input: child.stdout }).on("line", (line) => {
    said.push(line);
    look();
  });
  return {
    process: child,
    said,
    lines: (count) =>
      new Promise((resolve) => {
        const check = () => {
          if (said.length < count && !gone) return;
          waiting.delete(check);
          resolve();
        };
        waiting.add(check);
        check();
      }),
    async kill() {
      child.kill("SIGKILL");
      await ended;
    },
  };
}
