import type { Json } from "@ringwright/answers";
import type { Streams } from "./streams.ts";

/** A file as data, or why it could not be read. */
export type FileRead = { readonly ok: true; readonly value: Json } | { readonly ok: false; readonly why: string };

/**
 * Reads a box file: JSON when it starts like JSON, else YAML 1.2. The YAML
 * reader is loaded only when it is needed.
 */
export async function readBoxFile(path: string, streams: Streams): Promise<FileRead> {
  let text: string;
  try {
    text = streams.read(path);
  } catch (error) {
    return { ok: false, why: messageOf(error) };
  }
  try {
    if (/^\s*[{[]/u.test(text)) return { ok: true, value: JSON.parse(text) as Json };
    const { parse } = await import("yaml");
    return { ok: true, value: plain(parse(text, { prettyErrors: true })) };
  } catch (error) {
    return { ok: false, why: messageOf(error) };
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** What YAML can give beyond JSON, brought back to JSON: an empty file is no question, a date or a big number its text. */
function plain(value: unknown): Json {
  if (value === undefined || value === null) return null;
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return value;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value === "object" && Object.getPrototypeOf(value) === Object.prototype) {
    return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, plain(entry)]));
  }
  return String(value);
}
