import type { IncomingHttpHeaders } from "node:http";
import { type Problem, problemSaying } from "../problems/problem.ts";

/** Names that this machine has for itself. Another name that leads here is a page that was pointed at us. */
const ourNames: ReadonlySet<string> = new Set(["localhost", "127.0.0.1", "[::1]"]);

/** The name in `localhost:4617`, without its port. */
function nameIn(host: string): string {
  return /^(\[[\da-f:]+\]|[^:]*)(?::\d{1,5})?$/iu.exec(host)?.[1]?.toLowerCase() ?? "";
}

/**
 * Refuses what came under another name, and what another page sends: this
 * server answers people at this machine, not pages that they happen to look at.
 */
export function strangerIn(method: string, headers: IncomingHttpHeaders): Problem | undefined {
  const { host = "", origin } = headers;
  if (!ourNames.has(nameIn(host)))
    return problemSaying("wrong-host", { kind: "malformed", input: "host", given: host.slice(0, 200), id: "wrong-host" });
  if (method === "GET" || method === "HEAD") return undefined;
  const site = headers["sec-fetch-site"];
  const fromElsewhere = origin === undefined ? site === "cross-site" : origin.toLowerCase() !== `http://${host.toLowerCase()}`;
  if (!fromElsewhere) return undefined;
  return problemSaying("foreign-page", { kind: "malformed", input: "origin", given: (origin ?? "").slice(0, 200), id: "foreign-page" });
}
