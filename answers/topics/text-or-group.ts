import type { Field } from "../field.ts";

/** A group that may also be given as one word, which then stands for one of its members. */
export function textOrGroup<N extends string, T, G extends { readonly [K in N]?: T }>(name: N, word: Field<T>, group: Field<G>): Field<G> {
  return {
    schema: { anyOf: [word.schema, group.schema] },
    read(raw, path, reader) {
      if (typeof raw !== "string" && typeof raw !== "number") return group.read(raw, path, reader);
      const read = word.read(raw, path, reader);
      return read.ok ? { ok: true, value: { [name]: read.value } as unknown as G } : read;
    },
  };
}
