import type { Json } from "./field.ts";

/** Where something was typed, and what. */
export interface TypedAt {
  readonly path: string;
  readonly typed: Json;
}

/**
 * What stands in a question at a path such as `parts[2].height`. Where a group
 * was given as one word or one number (`sleeve: "hard bronze"` for
 * `sleeve.material`), that is what was typed.
 */
export function typedAt(question: Json, path: string): TypedAt | undefined {
  let at: Json = question;
  let reached = "";
  for (const part of path.split(/\.|(?=\[)/u)) {
    if (typeof at !== "object" || at === null) return reached === "" ? undefined : { path: reached, typed: at };
    const name = part.startsWith("[") ? part.slice(1, -1) : part;
    if (!Object.hasOwn(at, name)) return undefined;
    at = (at as { readonly [name: string]: Json })[name] ?? null;
    reached += part.startsWith("[") || reached === "" ? part : `.${part}`;
  }
  return { path, typed: at };
}
