import { say } from "@ringwright/words";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { escaped, page } from "../docs/html.ts";
import { sendProblem } from "../problems/handlers.ts";
import { nothingThere } from "../problems/problem.ts";
import { type AppFile, appFiles } from "./files.ts";

/**
 * The app's files. A path without a dot is a page of the app, and the app finds
 * out which; until there is a built app, a plain page says so.
 */
export function serveApp(app: FastifyInstance, folder: string | undefined): void {
  const files = folder === undefined ? new Map<string, AppFile>() : appFiles(folder);
  const index = files.get("/index.html");
  const send = (request: FastifyRequest, reply: FastifyReply) => {
    const path = pathOf(request.url);
    const file = files.get(path) ?? (isPage(path) ? index : undefined);
    if (file) return sendFile(request, reply, file);
    if (path === "/" && !index) return reply.type("text/html; charset=utf-8").send(noApp());
    return sendProblem(reply, nothingThere("path", path.slice(0, 200)));
  };
  app.get("/", send);
  app.get("/*", send);
}

function pathOf(url: string): string {
  try {
    return decodeURIComponent(url.replace(/[?#].*$/su, ""));
  } catch {
    return "";
  }
}

function isPage(path: string): boolean {
  return path.startsWith("/") && !path.includes(".") && !/^\/(?:api|docs|healthz)(?:\/|$)/u.test(path);
}

function sendFile(request: FastifyRequest, reply: FastifyReply, file: AppFile): FastifyReply {
  reply.headers({ etag: file.etag, "cache-control": file.lasting ? "public, max-age=31536000, immutable" : "no-cache" });
  if (request.headers["if-none-match"] === file.etag) return reply.status(304).send();
  return reply.type(file.type).send(file.content);
}

function noApp(): string {
  const said = (id: string) => escaped(say({ id }));
  return page(say({ id: "no-app-title" }), [
    `<h1>${said("no-app-title")}</h1>`,
    `<p>${said("no-app")}</p>`,
    "<ul>",
    `<li><a href="/docs">${said("docs-title")}</a></li>`,
    `<li><a href="/api/v1/sites">${said("no-app-sites")}</a></li>`,
    "</ul>",
  ]);
}
