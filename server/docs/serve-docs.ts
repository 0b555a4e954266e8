import { groupField, textField } from "@ringwright/answers";
import { type AnyOperation, json, operation } from "../operations/operation.ts";
import { nothingThere } from "../problems/problem.ts";
import { style } from "./html.ts";
import { openapi } from "./openapi.ts";
import { operationPage, overview } from "./pages.ts";

const html = "text/html; charset=utf-8";

/** The OpenAPI document and the pages made from the same operations. */
export function docsOperations(described: readonly AnyOperation[]): readonly AnyOperation[] {
  let document: string | undefined;
  const text = (type: string) => ({ type, schema: { type: "string" } });
  return [
    operation({
      id: "openapi",
      topic: "health",
      method: "GET",
      path: "/api/v1/openapi.json",
      reply: { type: json, schema: { type: "object" } },
      refuses: [],
      handle: () => {
        document ??= JSON.stringify(openapi(described));
        return { content: document };
      },
    }),
    operation({
      id: "docs",
      topic: "health",
      method: "GET",
      path: "/docs",
      reply: text(html),
      refuses: [],
      handle: () => ({ content: overview(described) }),
    }),
    operation({
      id: "docs-style",
      topic: "health",
      method: "GET",
      path: "/docs/page.css",
      reply: text("text/css; charset=utf-8"),
      refuses: [],
      handle: () => ({ content: style }),
    }),
    operation({
      id: "docs-page",
      topic: "health",
      method: "GET",
      path: "/docs/{id}",
      params: groupField({ id: textField() }),
      reply: text(html),
      refuses: ["nothing-there"],
      handle: ({ params: { id } }) => {
        const found = described.find((one) => one.id === id);
        return found ? { content: operationPage(found) } : { problem: nothingThere("id", id) };
      },
    }),
  ];
}
