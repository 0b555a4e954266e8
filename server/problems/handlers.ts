import type { Socket } from "node:net";
import { StoreFault } from "@ringwright/store";
import type { FastifyError, FastifyInstance, FastifyReply } from "fastify";
import { keepClose } from "../guards/headers.ts";
import { nothingThere, type Problem, type ProblemId, problemSaying, problemType } from "./problem.ts";

/** Sends a problem. */
export function sendProblem(reply: FastifyReply, problem: Problem): FastifyReply {
  return reply.status(problem.status).type(problemType).send(JSON.stringify(problem));
}

/** Every reply that is not an answer is a problem, whoever noticed. What went wrong inside goes to the log, not to the reply. */
export function handleProblems(app: FastifyInstance): void {
  app.setNotFoundHandler((request, reply) => sendProblem(reply, nothingThere("path", request.url.slice(0, 200))));
  app.setErrorHandler((error: FastifyError, request, reply) => {
    const found = problemOf(error);
    if (found.status >= 500) request.log.error(error);
    return sendProblem(reply, found);
  });
}

/** What the framework itself refuses, before any of our handlers. */
export function frameworkProblem(error: Error, reply: FastifyReply): void {
  keepClose(reply);
  sendProblem(reply, problemOf(error));
}

function problemOf(error: Error & { readonly statusCode?: number }): Problem {
  if (error instanceof StoreFault)
    return problemSaying("store-fault", { kind: "not-known", input: "store", id: error.id, with: error.shown });
  const { statusCode = 500 } = error;
  if (statusCode === 413) return problemSaying("too-large", { kind: "malformed", input: "body", id: "body-too-large" });
  if (statusCode === 415) return problemSaying("media-type", { kind: "malformed", input: "content-type", id: "body-not-json" });
  if (statusCode >= 400 && statusCode < 500)
    return problemSaying("malformed-question", { kind: "malformed", input: "request", id: "request-unreadable" });
  return problemSaying("fault", { kind: "not-known", input: "server", id: "server-fault" });
}

const socketFaults: Readonly<Record<string, readonly [ProblemId, string]>> = {
  HPE_HEADER_OVERFLOW: ["head-too-large", "Request Header Fields Too Large"],
  ERR_HTTP_REQUEST_TIMEOUT: ["too-slow", "Request Timeout"],
};

/** What is no HTTP at all is answered on the bare connection. */
export function answerNoise(error: Error & { readonly code?: string }, socket: Socket): void {
  if (!socket.writable || error.code === "ECONNRESET") {
    socket.destroy();
    return;
  }
  const [id, phrase] = socketFaults[error.code ?? ""] ?? ["malformed-question", "Bad Request"];
  const found = problemSaying(id, { kind: "malformed", input: "request", id: "request-unreadable" });
  const body = JSON.stringify(found);
  socket.end(
    [
      `HTTP/1.1 ${found.status} ${phrase}`,
      `Content-Type: ${problemType}`,
      `Content-Length: ${Buffer.byteLength(body)}`,
      "X-Content-Type-Options: nosniff",
      "Connection: close",
      "",
      body,
    ].join("\r\n"),
  );
}
