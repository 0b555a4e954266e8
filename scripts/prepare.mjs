// Installs and builds when sources or lockfile changed. Imports nothing from node_modules.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const packages = ["core", "data", "words", "answers", "drawings", "logbook", "store", "card", "demo", "server", "cli"];

/** Runs a command in the project and leaves with its exit code when it fails. */
export function must(command, args, options = {}) {
  const done = attempt(command, args, options);
  if (done !== 0) process.exit(done);
}

/** Runs a command in the project; gives its exit code. */
export function attempt(command, args, options = {}) {
  const done = spawnSync(command, args, { cwd: root, stdio: "inherit", shell: process.platform === "win32", ...options });
  if (done.error) console.error(`${command}: ${done.error.message}`);
  return done.status ?? 1;
}

/** Runs a tool that is installed in the project. */
export function tool(name, args, options = {}) {
  return attempt(join(root, "node_modules", ".bin", name), args, options);
}

function nodeIsOldEnough() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  return major > 20 || (major === 20 && minor >= 19);
}

function* sources(folder, wanted = /\.(ts|json)$/u) {
  for (const entry of readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (entry.name === "node_modules" || entry.name === "dist") continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path, wanted);
    else if (wanted.test(entry.name) && !entry.name.endsWith(".test.ts")) yield path;
  }
}

function hashOf(paths) {
  const hash = createHash("sha256").update(process.versions.node);
  for (const path of paths) hash.update(relative(root, path)).update("\0").update(readFileSync(path)).update("\0");
  return hash.digest("hex");
}

const stampOf = (path) => (existsSync(path) ? readFileSync(path, "utf8") : "");

/** Brings node_modules and dist up to date, and the built app where it is asked for; quick when they are. */
export function prepare({ quiet = false, app = false } = {}) {
  if (!nodeIsOldEnough()) {
    console.error(`Node ${process.versions.node} is too old: 20.19 or newer is needed.`);
    process.exit(1);
  }
  const say = (text) => quiet || console.error(text);
  const lock = hashOf([join(root, "package-lock.json")]);
  const installed = join(root, "node_modules", ".ringwright-installed");
  if (stampOf(installed) !== lock) {
    say("Installing …");
    must("npm", ["ci", "--no-audit", "--no-fund"], { stdio: ["ignore", quiet ? "ignore" : 2, 2] });
    writeFileSync(installed, lock);
  }
  const ground = hashOf([
    join(root, "package-lock.json"),
    join(root, "tsconfig.base.json"),
    ...packages.flatMap((name) => [...sources(join(root, name))]),
  ]);
  upToDate("built", ground, join(root, "cli", "dist"), () => {
    say("Building …");
    return tool("tsc", ["-b"], { stdio: ["ignore", 2, 2] });
  });
  if (!app) return;
  const pages = hashOf([...sources(join(root, "app"), /./u)]);
  upToDate("built-app", `${ground} ${pages}`, join(root, "app", "dist"), () => {
    say("Building the app …");
    return attempt("npm", ["run", "--silent", "build:app", "--", "--logLevel", "warn"], { stdio: ["ignore", quiet ? "ignore" : 2, 2] });
  });
}

/** Builds when the sources are not those of the stamp, or the result is gone. */
function upToDate(name, hash, result, build) {
  const stamp = join(root, ".ringwright", name);
  if (stampOf(stamp) === hash && existsSync(result)) return;
  const done = build();
  if (done !== 0) process.exit(done);
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, hash);
}
