import { execFileSync, spawn } from "node:child_process";
import { chownSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { serverPrograms } from "./binaries.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Address of a PostgreSQL server where tests may make databases. */
    readonly postgres: string;
  }
}

/** Starts the server, says so, and stops it when its input ends: by the tests, or because they were killed. */
const supervisor = `
"$1/pg_ctl" -D "$2/data" -l "$2/log" -w -o "-k $2 -c listen_addresses='' -c max_connections=60" start >"$2/start" 2>&1 || exit 1
echo started
cat >/dev/null
"$1/pg_ctl" -D "$2/data" -m fast -w stop >"$2/stop" 2>&1
rm -rf "$2/data"
`;

/** Orders words as people do, so that a test notices where we lean on the order of a database. */
const collation = ["-E", "UTF8", "--locale=C", "--locale-provider=icu", "--icu-locale=en-US"];

/**
 * Gives the tests a PostgreSQL: that of DATABASE_URL, or one of their own in a
 * temporary folder, reached through a socket there and nowhere else. Says
 * which; throws when there is none.
 */
export default async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  const given = process.env.DATABASE_URL;
  if (given) {
    process.stdout.write("PostgreSQL for the tests: the one of DATABASE_URL, in databases of their own.\n");
    project.provide("postgres", given);
    return undefined;
  }
  const folder = mkdtempSync(join(tmpdir(), "ringwright-"));
  const { bin, said } = serverPrograms(folder);
  const account = process.getuid?.() === 0 ? accountFor(folder) : {};
  const initdb = ["-D", join(folder, "data"), "-U", "ringwright", "-A", "trust", "--no-sync", ...collation];
  execFileSync(join(bin, "initdb"), initdb, { ...account, cwd: folder, stdio: ["ignore", "ignore", "inherit"] });
  // In a group of its own: whatever ends the tests at once must leave the supervisor time to stop the server.
  const server = spawn("sh", ["-c", supervisor, "sh", bin, folder], {
    ...account,
    cwd: folder,
    stdio: ["pipe", "pipe", "inherit"],
    detached: true,
  });
  const ended = new Promise<void>((resolve) => server.once("close", () => resolve()));
  const started = new Promise<boolean>((resolve) => {
    server.stdout.once("data", () => resolve(true));
    server.once("close", () => resolve(false));
  });
  const stop = async () => {
    server.stdin.end();
    await ended;
    rmSync(folder, { recursive: true, force: true });
  };
  if (!(await started)) throw new Error(`PostgreSQL (${said}) did not start:\n${readFileSync(join(folder, "start"), "utf8")}`);
  process.stdout.write(`PostgreSQL for the tests: ${said} (${bin}), in ${folder}.\n`);
  project.provide("postgres", `postgres://ringwright@/postgres?host=${encodeURIComponent(folder)}`);
  return stop;
}

/** The account that the server runs under: as root it refuses to. */
function accountFor(folder: string): { readonly uid: number; readonly gid: number } {
  const id = (flag: string) =>
    Number(execFileSync("sh", ["-c", `id ${flag} postgres 2>/dev/null || id ${flag} nobody`], { encoding: "utf8" }));
  const account = { uid: id("-u"), gid: id("-g") };
  chownSync(folder, account.uid, account.gid);
  return account;
}
