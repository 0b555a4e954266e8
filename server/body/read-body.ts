import { type Field, type Json, type Malformed, readJson } from "@ringwright/answers";

/** Whether a content type is JSON in UTF-8, the only one that is read here. */
export function isJson(type: string | undefined): boolean {
  return /^\s*application\/json\s*(?:;\s*charset\s*=\s*"?utf-8"?\s*)?$/iu.test(type ?? "");
}

const utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly malformed: Malformed };

/** Bytes as JSON, read the way the command line reads its question. */
export function readBytes(bytes: Uint8Array | undefined): Read<Json> {
  let text: string;
  try {
    text = utf8.decode(bytes ?? new Uint8Array());
  } catch {
    return { ok: false, malformed: { kind: "malformed", input: "question", id: "not-utf-8" } };
  }
  return readJson(text);
}

/** What stands behind the question mark as named texts; a name that comes twice is refused. */
export function readQuery(search: string): Read<Json> {
  const named = new Map<string, string>();
  for (const [name, value] of new URLSearchParams(search)) {
    if (named.has(name)) return { ok: false, malformed: { kind: "malformed", input: name, id: "name-twice", with: { typed: name } } };
    named.set(name, value);
  }
  return { ok: true, value: Object.fromEntries(named) };
}

/** Reads named texts by a field; none is looked at where there is no field. */
export function readBy<T>(field: Field<T> | undefined, raw: Json): Read<T | undefined> {
  return field ? field.read(raw, "", { typed: new Map() }) : { ok: true, value: undefined };
}
