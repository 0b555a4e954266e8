import { say } from "@ringwright/words";
import type { AnyOperation } from "../operations/operation.ts";
import { problemIds, problemStatus } from "../problems/problem.ts";
import { escaped, folded, page } from "./html.ts";
import { aboutOf, problemsOf } from "./openapi.ts";

const said = (id: string) => escaped(say({ id }));

/** Every operation with what it does, by topic; then every problem. */
export function overview(operations: readonly AnyOperation[]): string {
  const topics = [...new Set(operations.map(({ topic }) => topic))];
  return page(say({ id: "docs-title" }), [
    `<h1>${said("docs-title")}</h1>`,
    `<p>${said("docs-lead")}</p>`,
    `<p><a href="/api/v1/openapi.json">${said("docs-openapi")}</a></p>`,
    ...topics.flatMap((topic) => [
      `<h2>${said(`docs-topic-${topic}`)}</h2>`,
      "<table>",
      ...operations.filter((operation) => operation.topic === topic).map(line),
      "</table>",
    ]),
    `<h2>${said("docs-problems")}</h2>`,
    "<table>",
    ...problemIds.map((id) => `<tr id="problem-${id}"><td>${problemStatus[id]}</td><td>${said(`problem-${id}`)}</td></tr>`),
    "</table>",
  ]);
}

function line(operation: AnyOperation): string {
  const { id, method, path } = operation;
  return `<tr><td><a href="/docs/${id}"><code>${method} ${escaped(path)}</code></a></td><td>${escaped(aboutOf(operation))}</td></tr>`;
}

/** One operation: schemas, problems, and an example where there is one. */
export function operationPage(operation: AnyOperation): string {
  const { method, path, params, query, body, reply } = operation;
  const heading = `${method} ${path}`;
  return page(heading, [
    `<p><a href="/docs">${said("docs-title")}</a></p>`,
    `<h1><code>${escaped(heading)}</code></h1>`,
    `<p>${escaped(aboutOf(operation))}</p>`,
    ...(params ? [folded(say({ id: "docs-in-path" }), params.schema)] : []),
    ...(query ? [folded(say({ id: "docs-in-query" }), query.schema)] : []),
    ...(body
      ? [
          `<p>${escaped(say({ id: "docs-largest-body", with: { bytes: body.largest } }))}</p>`,
          folded(say({ id: "docs-body-schema" }), body.field.schema),
          ...(body.example ? [folded(say({ id: "docs-body-example" }), body.example())] : []),
        ]
      : []),
    `<p>200 <code>${escaped(reply.type)}</code></p>`,
    folded(say({ id: "docs-reply-schema" }), reply.schema),
    ...(reply.example ? [folded(say({ id: "docs-reply-example" }), reply.example())] : []),
    `<h2>${said("docs-problems")}</h2>`,
    "<ul>",
    ...problemsOf(operation).map((id) => `<li><a href="/docs#problem-${id}">${problemStatus[id]}: ${said(`problem-${id}`)}</a></li>`),
    "</ul>",
  ]);
}
