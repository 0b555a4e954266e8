import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import type { Says } from "@ringwright/core/workings";
import { readAllFacts } from "@ringwright/data";
import { say } from "@ringwright/words";
import { exits } from "./exits.ts";
import type { Streams } from "./streams.ts";

/** The built app, seen from dist/src or src. */
function appFolder(): string {
  return fileURLToPath(new URL(import.meta.url.includes("/dist/") ? "../../../app/dist" : "../../app/dist", import.meta.url));
}

/** `ringwright serve`: the app and the same answers over HTTP, until it is stopped. The server is loaded only here. */
export async function serveCommand(words: readonly string[], streams: Streams): Promise<number> {
  let browser: boolean;
  try {
    browser = parseArgs({ args: [...words], options: { open: { type: "boolean" } }, strict: true }).values.open ?? false;
  } catch (error) {
    streams.err(`${error instanceof Error ? error.message : String(error)}\n\n${say({ id: "command-usage" })}\n`);
    return exits.malformed;
  }
  const { start } = await import("@ringwright/server");
  const line = (write: (text: string) => void) => (says: Says) => write(`${say(says)}\n`);
  const started = await start({
    env: process.env,
    facts: readAllFacts(),
    appFolder: appFolder(),
    browser,
    now: Date.now,
    say: line(streams.out),
    complain: line(streams.err),
  });
  if ("exit" in started) return started.exit;
  await stopped();
  await started.stop();
  return exits.ok;
}

/** Waits for Ctrl-C, or for whoever ends programs; a second one does not wait for what is still being answered. */
function stopped(): Promise<void> {
  return new Promise((stop) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => stop());
  });
}
