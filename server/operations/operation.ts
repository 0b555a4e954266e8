import type { Field, Json, JsonSchema } from "@ringwright/answers";
import type { Problem, ProblemId } from "../problems/problem.ts";

/** What a request carried, read by the operation's own fields. */
interface Asked<Params, Query, Body> {
  readonly params: Params;
  readonly query: Query;
  readonly body: Body;
}

/** What goes back: a document of the operation's type, or what is wrong. */
export type Handled = { readonly content: string | Uint8Array } | { readonly problem: Problem };

/** One thing that can be asked over HTTP: described once, for the router, the OpenAPI document and the docs page. */
export interface Operation<Params = unknown, Query = unknown, Body = unknown> {
  /** kebab-case; its sentence in words/ is `operation-<says>`, or `operation-<id>`. */
  readonly id: string;
  /** What it does in a sentence, where that is known already. */
  readonly about?: string;
  readonly topic: "answers" | "entries" | "boxes" | "drawings" | "cards" | "people" | "health";
  readonly method: "GET" | "POST" | "PUT";
  /** As OpenAPI writes it: `/api/v1/sites/{site}`. */
  readonly path: string;
  readonly params?: Field<Params>;
  /** Names and values behind the question mark, each once. */
  readonly query?: Field<Query>;
  readonly body?: { readonly field: Field<Body>; readonly largest: number; readonly example?: () => Json };
  readonly reply: { readonly type: string; readonly schema: JsonSchema; readonly example?: () => Json };
  /** Problems of its own, beside those that any request can have. */
  readonly refuses: readonly ProblemId[];
  handle(asked: Asked<Params, Query, Body>): Handled | Promise<Handled>;
}

/** An operation whose types are its own business. */
export type AnyOperation = Operation<never, never, never>;

/** Declares an operation; the types of what is asked follow from its fields. */
export function operation<Params, Query, Body>(described: Operation<Params, Query, Body>): AnyOperation {
  return described as unknown as AnyOperation;
}

export const json = "application/json; charset=utf-8";

/** A reply that is JSON. */
export function replies(value: unknown): Handled {
  return { content: JSON.stringify(value) };
}
