import { homedir } from "node:os";
import { join, resolve } from "node:path";

type Environment = Readonly<Record<string, string | undefined>>;

/** Where entries are kept: the folder that was named, or one of our own where this system keeps the data of programs. */
export function dataFolder(env: Environment, platform: NodeJS.Platform = process.platform, home: string = homedir()): string {
  if (env.RINGWRIGHT_DATA) return resolve(env.RINGWRIGHT_DATA);
  if (platform === "win32") return join(env.LOCALAPPDATA || join(home, "AppData", "Local"), "Ringwright");
  if (platform === "darwin") return join(home, "Library", "Application Support", "Ringwright");
  // An XDG path that is not absolute is to be passed over (XDG Base Directory Specification).
  const base = env.XDG_DATA_HOME?.startsWith("/") ? env.XDG_DATA_HOME : join(home, ".local", "share");
  return join(base, "ringwright");
}
