import { uuidv7 } from "@ringwright/logbook";
import { randomBytes } from "../device/chance.ts";
import { now } from "../device/clock.ts";
import type { Storage } from "../device/storage.ts";

/** The site that this device works on: the one it knows, else the server's, else a new one of its own. */
export async function siteHere(storage: Storage): Promise<string> {
  const known = (await storage.get("settings", "site")) as string | undefined;
  if (known !== undefined) return known;
  const site = (await serversSite()) ?? uuidv7(now(), randomBytes(10));
  await storage.put("settings", site, "site");
  return site;
}

async function serversSite(): Promise<string | undefined> {
  try {
    const reply = await fetch("/api/v1/sites", { signal: AbortSignal.timeout(5000) });
    if (!reply.ok) return undefined;
    const { opens } = (await reply.json()) as { readonly opens?: string | null };
    return opens ?? undefined;
  } catch (error) {
    // No server to ask is no fault: the device works by itself.
    if (error instanceof TypeError || error instanceof DOMException || error instanceof SyntaxError) return undefined;
    throw error;
  }
}
