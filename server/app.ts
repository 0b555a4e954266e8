import type { Facts } from "@ringwright/answers";
import type { Store } from "@ringwright/store";
import Fastify, { type FastifyInstance } from "fastify";
import { answerOperations } from "./answers/operations.ts";
import { serveApp } from "./app-files/serve-app.ts";
import { boxOperations } from "./boxes/operations.ts";
import { docsOperations } from "./docs/serve-docs.ts";
import { drawingOperations } from "./drawings/operations.ts";
import { entryOperations } from "./entries/operations.ts";
import { keepClose } from "./guards/headers.ts";
import { strangerIn } from "./guards/same-place.ts";
import { healthOperations } from "./health/operations.ts";
import type { AnyOperation } from "./operations/operation.ts";
import { route } from "./operations/route.ts";
import { peopleOperations } from "./people/operations.ts";
import { answerNoise, frameworkProblem, handleProblems, sendProblem } from "./problems/handlers.ts";

/** What the server works with. */
export interface Parts {
  readonly store: Store;
  readonly facts: Facts;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Folder of the built app, where there is one. */
  readonly appFolder?: string;
}

/** Everything that can be asked, in the order of the docs page. */
export function operationsOf(parts: Parts): readonly AnyOperation[] {
  const { store, facts } = parts;
  return [
    ...answerOperations(facts),
    ...entryOperations(store),
    ...boxOperations(parts),
    ...drawingOperations(store, facts),
    ...peopleOperations(store),
    ...healthOperations(store),
  ];
}

/** The server, not yet listening. Waits of 30 s for a request and 5 s between two; a log of faults only. */
export function buildServer(parts: Parts): FastifyInstance {
  const app = Fastify({
    logger: { level: "error" },
    requestTimeout: 30_000,
    keepAliveTimeout: 5_000,
    forceCloseConnections: "idle",
    // A request without a host is refused by us, as a problem.
    http: { requireHostHeader: false },
    clientErrorHandler: answerNoise,
    frameworkErrors: (error, _request, reply) => frameworkProblem(error, reply),
  });
  app.addHook("onRequest", async (request, reply) => {
    const stranger = strangerIn(request.method, request.headers);
    if (stranger) await sendProblem(reply, stranger);
  });
  app.addHook("onSend", async (_request, reply) => keepClose(reply));
  // Whatever a client expects beyond an answer, it gets the answer (RFC 9110, 10.1.1).
  app.server.on("checkExpectation", (request, response) => app.server.emit("request", request, response));
  handleProblems(app);
  const operations = operationsOf(parts);
  route(app, [...operations, ...docsOperations(operations)]);
  serveApp(app, parts.appFolder);
  return app;
}
