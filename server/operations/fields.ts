import type { Field, Json } from "@ringwright/answers";
import { isId } from "@ringwright/logbook";

/** Characters of a question: the largest survey is a few thousand. */
export const largestQuestion = 1_048_576;

/** A UUID as entries carry it. */
export const idField: Field<string> = {
  schema: { type: "string", pattern: "^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$" },
  read: (raw, path) =>
    isId(raw)
      ? { ok: true, value: raw }
      : { ok: false, malformed: { kind: "malformed", input: path, ...(raw === undefined ? {} : { given: raw }), id: "not-an-id" } },
};

/** JSON that is handed on as it is. */
export function asItIs(schema: Field<Json>["schema"]): Field<Json> {
  return { schema, read: (raw) => ({ ok: true, value: raw ?? null }) };
}

/** A whole number in a query, where everything is text. */
export function countInQuery(field: Field<number>): Field<number> {
  return {
    schema: field.schema,
    read: (raw, path, reader) => field.read(typeof raw === "string" && /^\d{1,16}$/u.test(raw) ? Number(raw) : raw, path, reader),
  };
}
