import { type Json, type JsonRead, type Malformed, readJson } from "@ringwright/answers";
import type { Streams } from "./streams.ts";

/** Deeper than any box goes. */
const deepest = 64;

/**
 * Reads a box file: JSON when it is that, else YAML 1.2. The YAML reader is
 * loaded only when it is needed. What is wrong with the file comes back with
 * the line where it is.
 */
export async function readBoxFile(path: string, streams: Streams): Promise<JsonRead> {
  let text: string;
  try {
    text = streams.read(path).replace(/^\ufeff/u, "");
  } catch (error) {
    return no({ kind: "malformed", input: "file", given: path, id: unreadable(error), with: { typed: path, why: messageOf(error) } });
  }
  const read = await readText(text);
  if (!read.ok || read.value !== null) return read;
  return path === "-"
    ? no({ kind: "malformed", input: "file", id: "question-empty" })
    : no({ kind: "malformed", input: "file", given: path, id: "file-empty", with: { typed: path } });
}

async function readText(text: string): Promise<JsonRead> {
  if (text.trim() === "") return { ok: true, value: null };
  if (/^\s*[{[]/u.test(text)) {
    const json = readJson(text);
    if (json.ok || json.malformed.id !== "not-json") return json;
  }
  return readYaml(text);
}

/** Whether so many brackets are open at once that the YAML reader would lose itself in them. */
function tooManyBrackets(text: string): boolean {
  let open = 0;
  for (const mark of text.match(/[[\]{}]/gu) ?? []) {
    open += mark === "[" || mark === "{" ? 1 : -1;
    if (open > deepest) return true;
  }
  return false;
}

const tooDeep: JsonRead = no({ kind: "malformed", input: "file", id: "question-too-deep", with: { deepest } });

async function readYaml(text: string): Promise<JsonRead> {
  if (tooManyBrackets(text)) return tooDeep;
  const { parseDocument } = await import("yaml");
  try {
    const read = parseDocument(text, { prettyErrors: true, logLevel: "error" });
    const [fault] = read.errors;
    if (fault?.message.includes("call stack")) throw new RangeError();
    if (fault) return no(faulty(fault, text));
    return { ok: true, value: plain(read.toJS(), 0) };
  } catch (error) {
    // The reader runs out of stack where a file goes too deep or in a circle; so does what follows.
    if (error instanceof RangeError) return tooDeep;
    return no({ kind: "malformed", input: "file", id: "not-json", with: { why: messageOf(error) } });
  }
}

interface YamlFault {
  readonly code: string;
  readonly message: string;
  readonly linePos?: readonly [{ readonly line: number; readonly col: number }, ...unknown[]] | undefined;
}

/** What the YAML reader found, in a fitter's words where there are any. */
function faulty({ code, message, linePos }: YamlFault, text: string): Malformed {
  const line = linePos?.[0].line ?? 1;
  const typed = (text.split(/\r?\n/u)[line - 1] ?? "").split(":")[0]?.trim() ?? "";
  const why = message.split(/ at line \d|\n/u)[0]?.replace(/[.:]$/u, "") ?? "";
  const known: Readonly<Record<string, string>> = {
    DUPLICATE_KEY: "file-name-twice",
    MULTIPLE_DOCS: "file-several-boxes",
    TAB_AS_INDENT: "file-tab",
  };
  return { kind: "malformed", input: "file", id: known[code] ?? "file-line", with: { line, typed, why } };
}

function unreadable(error: unknown): string {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  if (code === "ENOENT" || code === "ENOTDIR") return "file-none";
  if (code === "EISDIR") return "file-folder";
  return "file-not-read";
}

function no(malformed: Malformed): JsonRead {
  return { ok: false, malformed };
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** What YAML can give beyond JSON, brought back to JSON: a date or a big number its text. */
function plain(value: unknown, depth: number): Json {
  if (depth > deepest) throw new RangeError();
  if (value === undefined || value === null) return null;
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return value;
  if (Array.isArray(value)) return value.map((entry) => plain(entry, depth + 1));
  if (typeof value === "object" && Object.getPrototypeOf(value) === Object.prototype) {
    return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, plain(entry, depth + 1)]));
  }
  return String(value);
}
