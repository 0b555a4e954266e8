import { type Field, groupField, type Malformed, refusedQuestion } from "@ringwright/answers";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { isJson, readBy, readBytes, readQuery } from "../body/read-body.ts";
import { sendProblem } from "../problems/handlers.ts";
import { type Problem, problemOfRefusal, problemSaying } from "../problems/problem.ts";
import type { AnyOperation, Handled } from "./operation.ts";

const methods = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"] as const;

/** Puts the operations on their paths, and says of every other method that it is none. */
export function route(app: FastifyInstance, operations: readonly AnyOperation[]): void {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser("*", { parseAs: "buffer" }, (request, body, done) => {
    if (isJson(request.headers["content-type"])) done(null, body);
    else done(Object.assign(new Error("not JSON"), { statusCode: 415 }));
  });
  const paths = new Map<string, string[]>();
  for (const operation of operations) {
    const url = operation.path.replaceAll(/\{(\w+)\}/gu, ":$1");
    const there = paths.get(url) ?? [];
    paths.set(url, [...there, operation.method, ...(operation.method === "GET" ? ["HEAD"] : [])]);
    app.route({
      method: operation.method,
      url,
      ...(operation.body ? { bodyLimit: operation.body.largest } : {}),
      handler: async (request, reply) => send(reply, operation, await handled(operation, request)),
    });
  }
  for (const [url, there] of paths) {
    const refuse = async (request: FastifyRequest, reply: FastifyReply) => {
      reply.header("allow", there.join(", "));
      return sendProblem(reply, wrongMethod(request.method, there));
    };
    // Refused before its body is looked at.
    app.route({ method: methods.filter((name) => !there.includes(name)), url, onRequest: refuse, handler: refuse });
  }
}

/** For operations that nothing stands behind the question mark of. */
const noQuery: Field<unknown> = groupField({});

function wrongMethod(given: string, allowed: readonly string[]): Problem {
  return problemSaying("wrong-method", { kind: "malformed", input: "method", given, allowed, id: "wrong-method" });
}

function send(reply: FastifyReply, { reply: { type } }: AnyOperation, outcome: Handled): FastifyReply {
  return "problem" in outcome ? sendProblem(reply, outcome.problem) : reply.type(type).send(outcome.content);
}

function refused(malformed: Malformed): Handled {
  const reply = refusedQuestion(malformed);
  if (reply.ok) throw new Error("a refusal was answered");
  return { problem: problemOfRefusal(reply.refusal) };
}

async function handled(operation: AnyOperation, request: FastifyRequest): Promise<Handled> {
  const params = readBy(operation.params, request.params as { readonly [name: string]: string });
  if (!params.ok) return refused(params.malformed);
  const [, search = ""] = /^[^?]*\?(.*)$/su.exec(request.url) ?? [];
  const named = readQuery(search);
  if (!named.ok) return refused(named.malformed);
  const query = readBy(operation.query ?? noQuery, named.value);
  if (!query.ok) return refused(query.malformed);
  if (!operation.body) return operation.handle({ params: params.value, query: query.value, body: undefined } as never);
  const json = readBytes(request.body as Uint8Array | undefined);
  if (!json.ok) return refused(json.malformed);
  const body = readBy(operation.body.field, json.value);
  if (!body.ok) return refused(body.malformed);
  return operation.handle({ params: params.value, query: query.value, body: body.value } as never);
}
