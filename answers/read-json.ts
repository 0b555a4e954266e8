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
  /** Where this level stands, as in `parts[2]`. */
  readonly path: string;
  name: string;
  index: number;
}

/** What JSON lets pass and a question must not have. The text is known to be JSON. */
function faultIn(text: string): Malformed | undefined {
  const levels: Level[] = [];
  let atName = false;
  for (let i = 0; i < text.length; i++) {
    const level = levels.at(-1);
    switch (text[i]) {
      case "{":
      case "[": {
        if (levels.length >= deepest) return { kind: "malformed", input: "question", id: "question-too-deep", with: { deepest } };
        const names = text[i] === "{" ? new Set<string>() : undefined;
        levels.push({ names, path: level ? pathIn(level) : "", name: "", index: 0 });
        atName = names !== undefined;
        break;
      }
      case "}":
      case "]":
        levels.pop();
        break;
      case ",":
        if (level?.names) atName = true;
        else if (level) level.index++;
        break;
      case '"': {
        const from = i;
        for (i++; text[i] !== '"'; i++) if (text[i] === "\\") i++;
        if (!atName || !level?.names) break;
        level.name = JSON.parse(text.slice(from, i + 1)) as string;
        if (level.names.has(level.name)) {
          const path = pathIn(level);
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

function pathIn({ names, path, name, index }: Level): string {
  if (!names) return `${path}[${index}]`;
  return path === "" ? name : `${path}.${name}`;
}
