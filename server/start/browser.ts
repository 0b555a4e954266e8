import { spawn } from "node:child_process";

type Environment = Readonly<Record<string, string | undefined>>;

/** The program that opens a page, where somebody sits in front of a display. */
export function browserCommand(env: Environment, platform: NodeJS.Platform = process.platform): readonly string[] | undefined {
  if (env.CI || env.SSH_CONNECTION) return undefined;
  if (platform === "win32") return ["cmd", "/c", "start", ""];
  if (platform === "darwin") return ["open"];
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ["xdg-open"] : undefined;
}

/** Opens a page; whoever has no browser has read the address. */
export function openBrowser(address: string, env: Environment): void {
  const [command, ...words] = browserCommand(env) ?? [];
  if (command === undefined) return;
  const opened = spawn(command, [...words, address], { detached: true, stdio: "ignore" });
  opened.on("error", () => undefined);
  opened.unref();
}
