import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";

const root = join(import.meta.dirname, "..");

/** Builds what the children run. */
export function buildForChildren(what: "store" | "cli" = "store"): void {
  const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
  execFileSync(process.execPath, [tsc, "-b", what], { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
}

/** A program of its own around a store. */
export interface Child {
  readonly process: ChildProcess;
  /** Lines that it has said so far. */
  readonly said: readonly string[];
  /** What it has complained of so far, where that is listened to. */
  complaints(): string;
  /** Settles with its exit code when it has ended by itself or by a signal. */
  readonly ended: Promise<number | null>;
  /** Settles when it has said this many lines, or is no more. */
  lines(count: number): Promise<void>;
  /** Kills it without a word, and waits until it is gone. */
  kill(): Promise<void>;
}

/** Starts one, under another account when one is given. */
export function startChild(words: readonly string[], account: { readonly uid?: number; readonly gid?: number } = {}): Child {
  return heard(
    spawn(process.execPath, [join(root, "testing", "child.mjs"), ...words], { stdio: ["ignore", "pipe", "inherit"], ...account }),
  );
}

/** Starts the program itself, as the command line does, in an environment with these names and no others of ours. */
export function startProgram(words: readonly string[], env: Readonly<Record<string, string>>): Child {
  const { PORT: _, RINGWRIGHT_DATA: __, DATABASE_URL: ___, ...rest } = process.env;
  const program = join(root, "cli", "bin", "ringwright.js");
  return heard(spawn(process.execPath, [program, ...words], { stdio: ["ignore", "pipe", "pipe"], env: { ...rest, ...env } }));
}

function heard(child: ChildProcess): Child {
  const said: string[] = [];
  const waiting = new Set<() => void>();
  const look = () => {
    for (const one of [...waiting]) one();
  };
  let gone = false;
  let complaints = "";
  child.stderr?.setEncoding("utf8").on("data", (text: string) => {
    complaints += text;
  });
  const ended = new Promise<number | null>((resolve) =>
    child.once("close", (code) => {
      gone = true;
      look();
      resolve(code);
    }),
  );
  if (!child.stdout) throw new Error("a child that nobody hears");
  createInterface({ input: child.stdout }).on("line", (line) => {
    said.push(line);
    look();
  });
  return {
    process: child,
    said,
    complaints: () => complaints,
    ended,
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
