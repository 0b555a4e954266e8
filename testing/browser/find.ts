import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, mkdirSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { delimiter, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { root } from "../root.ts";

/** A browser to test with, and how it was come by. */
export interface Found {
  readonly path: string;
  readonly how: string;
}

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];
const usual = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
];

/** The Chromium that is built into a package of the npm registry; Linux on x64. */
const packaged = { name: "@sparticuz/chromium", version: "153.0.0" } as const;

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function installed(): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return [...names.flatMap((name) => folders.map((folder) => join(folder, name))), ...usual].find(isProgram);
}

function run(program: string, words: readonly string[], folder?: string): boolean {
  const { status } = spawnSync(program, words, {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    ...(folder === undefined ? {} : { cwd: folder }),
  });
  return status === 0;
}

function byApt(): string | undefined {
  if (process.platform !== "linux" || process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return undefined;
  const install = () => run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"]);
  if (!install()) {
    run("apt-get", ["update", "-qq"]);
    install();
  }
  return installed();
}

async function byNpm(): Promise<string | undefined> {
  const folder = fileURLToPath(new URL(".ringwright/browser/", root));
  mkdirSync(folder, { recursive: true });
  if (!existsSync(join(folder, "package.json"))) writeFileSync(join(folder, "package.json"), '{ "private": true }\n');
  const require = createRequire(join(folder, "package.json"));
  try {
    require.resolve(packaged.name);
  } catch {
    if (!run("npm", ["install", "--no-audit", "--no-fund", "--save-exact", `${packaged.name}@${packaged.version}`], folder))
      return undefined;
  }
  const { default: chromium } = (await import(pathToFileURL(require.resolve(packaged.name)).href)) as {
    readonly default: { executablePath(): Promise<string> };
  };
  return chromium.executablePath();
}

/**
 * A Chromium or Chrome: CHROME_PATH, else one that is installed, else
 * Debian's by apt as root, else the one in the npm registry. Fails with what
 * was tried: browser tests are never left out silently.
 */
export async function findBrowser(): Promise<Found> {
  const given = process.env.CHROME_PATH;
  if (given) {
    if (!isProgram(given)) throw new Error(`CHROME_PATH says ${given}, and that is no program here`);
    return { path: given, how: "CHROME_PATH" };
  }
  const here = installed();
  if (here) return { path: here, how: "installed" };
  const apt = byApt();
  if (apt) return { path: apt, how: "installed by apt-get just now" };
  const npm = await byNpm();
  if (npm) return { path: npm, how: `${packaged.name} ${packaged.version} from the npm registry` };
  throw new Error("No browser: CHROME_PATH is not set, none is installed, apt-get and npm brought none");
}

/** How the browser is started: without the network that a browser keeps up for itself. */
export const browserWords: readonly string[] = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
