import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { root } from "../../testing/root.ts";
import { middle } from "./device.ts";

const project = fileURLToPath(root);
const patience = 600_000;

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  if (address === null || typeof address === "string") throw new Error("no port");
  return address.port;
}

/** Seconds from `npm start` in a folder until a path answers; it is stopped then. */
async function untilAnswered(folder: string, data: string, path: string): Promise<number> {
  const port = await freePort();
  const begun = performance.now();
  const { DATABASE_URL: _, ...env } = process.env;
  const started = spawn("npm", ["start"], {
    cwd: folder,
    stdio: "ignore",
    // A group of its own: npm, and what it started, are stopped together.
    detached: true,
    env: { ...env, PORT: String(port), RINGWRIGHT_DATA: data, CI: "true" },
  });
  try {
    await answers(started, `http://127.0.0.1:${port}${path}`);
    return (performance.now() - begun) / 1000;
  } finally {
    await stop(started);
  }
}

async function answers(started: ChildProcess, address: string): Promise<void> {
  const until = performance.now() + patience;
  while (performance.now() < until) {
    if (started.exitCode !== null) throw new Error(`npm start ended with ${started.exitCode}`);
    const reply = await fetch(address).catch((error: unknown) => {
      // Nobody listens yet.
      if (error instanceof TypeError) return undefined;
      throw error;
    });
    if (reply?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`${address} did not answer`);
}

async function stop(started: ChildProcess): Promise<void> {
  if (started.pid === undefined || started.exitCode !== null) return;
  const ended = once(started, "exit");
  process.kill(-started.pid, "SIGTERM");
  await ended;
}

/** Seconds of `npm start` where all is built and the data folder is there, the middle of some; and of `node` doing nothing. */
export async function secondStart(times = 5): Promise<{ readonly start: number; readonly node: number }> {
  const data = mkdtempSync(join(tmpdir(), "ringwright-bench-data-"));
  try {
    await untilAnswered(project, data, "/healthz");
    const starts: number[] = [];
    for (let i = 0; i < times; i++) starts.push(await untilAnswered(project, data, "/healthz"));
    const bare = Array.from({ length: times }, () => seconds(process.execPath, ["-e", "0"], project));
    return { start: middle(starts), node: middle(bare) };
  } finally {
    rmSync(data, { recursive: true, force: true });
  }
}

/** Seconds from a bare clone to the page, and of `npm ci` alone in another clone. */
export async function fromClone(): Promise<{ readonly page: number; readonly install: number }> {
  const folder = mkdtempSync(join(tmpdir(), "ringwright-bench-clone-"));
  try {
    const [first, second] = [join(folder, "first"), join(folder, "second")];
    const cloned = seconds("git", ["clone", "--quiet", project, first], folder);
    const page = cloned + (await untilAnswered(first, join(folder, "data"), "/"));
    seconds("git", ["clone", "--quiet", project, second], folder);
    return { page, install: seconds("npm", ["ci", "--no-audit", "--no-fund"], second) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function seconds(program: string, words: readonly string[], folder: string): number {
  const begun = performance.now();
  const { status } = spawnSync(program, words, { cwd: folder, stdio: "ignore" });
  if (status !== 0) throw new Error(`${program} ${words.join(" ")} ended with ${status}`);
  return (performance.now() - begun) / 1000;
}
