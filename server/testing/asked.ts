import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { JsonSchema } from "@ringwright/answers";
import { readAllFacts } from "@ringwright/data";
import { open, type Store } from "@ringwright/store";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import type { FastifyInstance, InjectOptions } from "fastify";
import { expect } from "vitest";
import { buildServer, operationsOf } from "../app.ts";
import { openapi } from "../docs/openapi.ts";

/** A server over a new, empty SQLite store, and how to ask it. */
export interface Served {
  readonly app: FastifyInstance;
  readonly store: Store;
  readonly document: JsonSchema;
  /** Asks; the reply has been held against the OpenAPI document. */
  ask(method: "GET" | "POST" | "PUT", url: string, body?: unknown, headers?: Readonly<Record<string, string>>): Promise<Answered>;
  close(): Promise<void>;
}

export interface Answered {
  readonly status: number;
  readonly type: string;
  readonly text: string;
  /** The body as JSON, where it is. */
  readonly json: unknown;
  readonly headers: Readonly<Record<string, unknown>>;
}

export const facts = readAllFacts();
/** What the clock says in these tests. */
export const now = () => Date.UTC(2031, 4, 5, 9, 30);

export async function served(appFolder?: string): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), "ringwright-"));
  const store = await open(folder);
  const parts = { store, facts, now, ...(appFolder === undefined ? {} : { appFolder }) };
  const app = buildServer(parts);
  const document = openapi(operationsOf(parts));
  const fits = replyCheck(document);
  return {
    app,
    store,
    document,
    async ask(method, url, body, headers = {}) {
      const payload =
        body === undefined ? {} : { payload: typeof body === "string" || Buffer.isBuffer(body) ? body : JSON.stringify(body) };
      const sent = body === undefined ? headers : { "content-type": "application/json", ...headers };
      const answered = await injected(app, { method, url, ...payload, headers: sent });
      fits(method, url, answered);
      return answered;
    },
    async close() {
      await app.close();
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
}

export async function injected(app: FastifyInstance, options: InjectOptions): Promise<Answered> {
  const { statusCode, headers, body } = await app.inject(options);
  const type = String(headers["content-type"] ?? "");
  return { status: statusCode, type, text: body, json: /\bjson\b/u.test(type) ? JSON.parse(body) : undefined, headers };
}

type Documented = { readonly content: { readonly [type: string]: { readonly schema: object } } };

/** Holds replies against the document: every status, type and body must stand there. */
function replyCheck(document: JsonSchema): (method: string, url: string, reply: Answered) => void {
  const ajv = new Ajv2020({ strict: false, allErrors: false, formats: { "uri-reference": true, "date-time": true } });
  ajv.addSchema(document as object, "document");
  const paths = Object.entries(
    document.paths as Readonly<Record<string, Readonly<Record<string, { responses: Record<string, Documented> }>>>>,
  )
    .map(([path, methods]) => ({
      path,
      methods,
      pattern: new RegExp(`^${path.replaceAll(/[.]/gu, "[.]").replaceAll(/\{\w+\}/gu, "[^/]+?")}$`, "u"),
    }))
    // A path of its own goes before one with a name to fill in.
    .sort((one, other) => Number(one.path.includes("{")) - Number(other.path.includes("{")));
  const compiled = new Map<string, ValidateFunction>();
  const isProblem = ajv.compile({ $ref: "document#/components/schemas/problem" });
  return (method, url, { status, type, text, json }) => {
    const found = paths.find(({ pattern, methods }) => pattern.test(url.replace(/\?.*$/su, "")) && methods[method.toLowerCase()]);
    if (!found) {
      // Where no operation stands there is a problem all the same, or a page.
      if (status >= 400) expectProblem(isProblem, { status, type, json });
      return;
    }
    const response = found.methods[method.toLowerCase()]?.responses[String(status)];
    expect(response, `${method} ${found.path} documents ${status}: ${text.slice(0, 300)}`).toBeDefined();
    const bare = type.replace(/;.*$/u, "");
    expect(Object.keys(response?.content ?? {})).toEqual([bare]);
    const key = [found.path, method.toLowerCase(), "responses", String(status), "content", bare, "schema"];
    const pointer = `document#/paths/${key.map((part) => encodeURIComponent(part.replaceAll("~", "~0").replaceAll("/", "~1"))).join("/")}`;
    const fits = compiled.get(pointer) ?? ajv.compile({ $ref: pointer });
    compiled.set(pointer, fits);
    expect(fits(json ?? text), `${method} ${url}: ${JSON.stringify(fits.errors?.slice(0, 3))} in ${text.slice(0, 300)}`).toBe(true);
  };
}

function expectProblem(isProblem: ValidateFunction, { status, type, json }: Pick<Answered, "status" | "type" | "json">): void {
  expect(type).toBe("application/problem+json; charset=utf-8");
  expect(isProblem(json), JSON.stringify(isProblem.errors?.slice(0, 3))).toBe(true);
  expect(json).toMatchObject({ status });
}
