import type { Store } from "@ringwright/store";
import { type AnyOperation, json, operation, replies } from "../operations/operation.ts";

/** Whether the server can do its work: it answers when the store does. */
export function healthOperations(store: Store): readonly AnyOperation[] {
  return [
    operation({
      id: "health",
      topic: "health",
      method: "GET",
      path: "/healthz",
      reply: {
        type: json,
        schema: {
          type: "object",
          properties: { ok: { const: true }, program: { const: "ringwright" } },
          required: ["ok", "program"],
          additionalProperties: false,
        },
      },
      refuses: ["store-fault"],
      handle: async () => {
        await store.ping();
        return replies({ ok: true, program: "ringwright" });
      },
    }),
  ];
}
