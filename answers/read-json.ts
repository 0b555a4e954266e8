import type { Json, Malformed } from "./field.ts";

/** Deeper than any question goes. */
const deepest = 64;

/** A text read as JSON, or what is wrong with it. */
export type JsonRead = { readonly ok: true; readonly value: Json } | { readonly ok: false; readonly malformed: Malformed };

/**
 * Reads a question. A byte order mark at its start is passed over. A name that
 * stands twice in one group is refused, since one of the two would be lost.
 */
export function readJson(text: string): JsonRead {
  const bare = text.startsWith("\ufeff") ? text.slice(1) : text;
  if (bare.trim() === "") return no({ kind: "malformed", input: "question", id: "question-empty" });
  let value: Json;
  try {
    value = JSON.parse(bare) as Json;
  } catch (error) {
    const why = error instanceof Error ? error.message.replace(/\.$/u, "") : String(error);
    return no({ kind: "malformed", input: "question", id: "not-json", with: { why } });
  }
  const fault = faultIn(bare);
  return fault ? no(fault) : { ok: true, value };
}

function no(malformed: Malformed): JsonRead {
  return { ok: false, malformed };
}

interface Level {
  /** Names so far; none in a list. */
  readonly names: Set<string> | undefined;
  name: string;
  index: number;
}

/** What JSON lets pass and a question must not have. The text is known to be JSON. */
function faultIn(text: string): Malformed | undefined {
  const levels: Level[] = [];
  let level: Level | undefined;
  let atName = false;
  // By code: this looks at every character of what may be sixteen million.
  for (let i = 0; i < text.length; i++) {
    switch (text.charCodeAt(i)) {
      case openGroup:
      case openList: {
        if (levels.length >= deepest) return { kind: "malformed", input: "question", id: "question-too-deep", with: { deepest } };
        atName = text.charCodeAt(i) === openGroup;
        level = { names: atName ? new Set() : undefined, name: "", index: 0 };
        levels.push(level);
        break;
      }
      case closeGroup:
      case closeList:
        levels.pop();
        level = levels.at(-1);
        break;
      case comma:
        if (level?.names) atName = true;
        else if (level) level.index++;
        break;
      case quote: {
        const from = i;
        i = endOfText(text, from);
        if (!atName || !level?.names) break;
        const inside = text.slice(from + 1, i);
        level.name = inside.includes("\\") ? (JSON.parse(text.slice(from, i + 1)) as string) : inside;
        if (level.names.has(level.name)) {
          const path = levels.reduce(pathIn, "");
          return { kind: "malformed", input: path, id: "name-twice", with: { typed: path } };
        }
        level.names.add(level.name);
        atName = false;
        break;
      }
    }
  }
  return undefined;
}

const [openGroup, closeGroup, openList, closeList, comma, quote, backslash] = [0x7b, 0x7d, 0x5b, 0x5d, 0x2c, 0x22, 0x5c];

/** Where the text that begins with the quote at `from` has its other one. */
function endOfText(text: string, from: number): number {
  for (let i = from + 1; ; i++) {
    const code = text.charCodeAt(i);
    if (code === quote) return i;
    if (code === backslash) i++;
  }
}

/** Where something stands, as in `parts[2].height`. */
function pathIn(path: string, { names, name, index }: Level): string {
  if (!names) return `${path}[${index}]`;
  return path === "" ? name : `${path}.${name}`;
}
