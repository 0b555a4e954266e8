import type { Json, JsonSchema } from "@ringwright/answers";
import { say } from "@ringwright/words";
import type { AnyOperation } from "../operations/operation.ts";
import { anyRequest, type ProblemId, problemSchema, problemStatus } from "../problems/problem.ts";

/** The program's version, as packages carry it. */
const version = "0.1.0";

/** What an operation does, in a sentence. */
export function aboutOf({ id, about }: AnyOperation): string {
  return about ?? say({ id: `operation-${id}` });
}

/** Problems that an operation can come back with, lowest status first. */
export function problemsOf({ refuses }: AnyOperation): readonly ProblemId[] {
  return [...new Set([...anyRequest, ...refuses])].sort((one, other) => problemStatus[one] - problemStatus[other]);
}

/** The OpenAPI 3.1 document of these operations: their own fields and shapes, nothing described again. */
export function openapi(operations: readonly AnyOperation[]): JsonSchema {
  const paths: { [path: string]: { [method: string]: Json } } = {};
  for (const operation of operations) {
    const path = paths[operation.path] ?? {};
    paths[operation.path] = path;
    path[operation.method.toLowerCase()] = described(operation);
  }
  return {
    openapi: "3.1.0",
    info: {
      title: say({ id: "docs-title" }),
      version,
      description: say({ id: "docs-lead" }),
      license: { name: "Apache-2.0", identifier: "Apache-2.0" },
    },
    servers: [{ url: "/" }],
    tags: [...new Set(operations.map(({ topic }) => topic))].map((name) => ({ name, description: say({ id: `docs-topic-${name}` }) })),
    paths,
    components: { schemas: { problem: problemSchema } },
  };
}

function described(operation: AnyOperation): Json {
  const { id, topic, params, query, body, reply } = operation;
  const parameters = [...parametersOf("path", params?.schema), ...parametersOf("query", query?.schema)];
  return {
    operationId: id,
    tags: [topic],
    summary: aboutOf(operation),
    ...(parameters.length === 0 ? {} : { parameters }),
    ...(body === undefined
      ? {}
      : {
          requestBody: {
            required: true,
            description: say({ id: "docs-largest-body", with: { bytes: body.largest } }),
            content: { "application/json": { schema: body.field.schema } },
          },
        }),
    responses: {
      "200": { description: say({ id: "docs-found" }), content: { [bare(reply.type)]: { schema: reply.schema } } },
      ...Object.fromEntries(
        problemsOf(operation).map((problem) => [
          String(problemStatus[problem]),
          {
            description: say({ id: `problem-${problem}` }),
            content: { "application/problem+json": { schema: { $ref: "#/components/schemas/problem" } } },
          },
        ]),
      ),
    },
  };
}

const bare = (type: string) => type.replace(/;.*$/u, "");

function parametersOf(place: "path" | "query", schema: JsonSchema | undefined): readonly Json[] {
  if (schema === undefined) return [];
  const required = schema.required as readonly string[];
  return Object.entries(schema.properties as { readonly [name: string]: JsonSchema }).map(([name, { description, ...field }]) => ({
    name,
    in: place,
    required: place === "path" || required.includes(name),
    ...(description === undefined ? {} : { description }),
    schema: field,
  }));
}
