import { groupField, type JsonSchema, listField, optional, textField } from "@ringwright/answers";
import type { Store } from "@ringwright/store";
import { type AnyOperation, json, operation, replies } from "../operations/operation.ts";

const path = "/api/v1/people";
const reply = {
  type: json,
  schema: {
    type: "object",
    properties: {
      people: {
        type: "array",
        items: {
          type: "object",
          properties: { person: { type: "string" }, name: { type: "string" } },
          required: ["person", "name"],
          additionalProperties: false,
        },
      },
    },
    required: ["people"],
    additionalProperties: false,
  } satisfies JsonSchema,
};

const person = groupField({
  person: nonEmpty(textField("Opaque id of a person, as entries carry it.", 80)),
  name: optional(nonEmpty(textField("What the person is called; left out or null: no name any more.", 200))),
});

/** Texts that every store keeps, and that say something. */
function nonEmpty(field: ReturnType<typeof textField>): typeof field {
  return {
    schema: { ...field.schema, minLength: 1 },
    read(raw, path, reader) {
      const read = field.read(raw, path, reader);
      if (!read.ok || (read.value.trim() !== "" && !read.value.includes("\u0000") && !/\p{Surrogate}/u.test(read.value))) return read;
      return { ok: false, malformed: { kind: "malformed", input: path, id: "not-a-text", given: read.value } };
    },
  };
}

/** Names of people by their opaque ids. */
export function peopleOperations(store: Store): readonly AnyOperation[] {
  return [
    operation({
      id: "people",
      topic: "people",
      method: "GET",
      path,
      reply,
      refuses: ["store-fault"],
      handle: async () => replies({ people: await store.people() }),
    }),
    operation({
      id: "name-people",
      topic: "people",
      method: "PUT",
      path,
      body: { field: groupField({ people: listField(person, { max: 1000 }) }), largest: 1_048_576 },
      reply,
      refuses: ["too-large", "media-type", "store-fault"],
      handle: async ({ body: { people } }) => {
        for (const { person: id, name } of people) await store.namePerson(id, name ?? null);
        return replies({ people: await store.people() });
      },
    }),
  ];
}
