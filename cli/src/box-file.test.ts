import { say } from "@ringwright/words";
import { describe, expect, test } from "vitest";
import { readBoxFile } from "./box-file.ts";
import type { Streams } from "./streams.ts";

function reading(read: Streams["read"]) {
  return readBoxFile("box.yaml", { out: () => {}, err: () => {}, write: () => {}, now: () => new Date(0), read });
}

const of = (text: string) => reading(() => text);

/** The sentence that a fitter gets. */
async function saidOf(text: string): Promise<string> {
  const read = await of(text);
  if (read.ok) return "read";
  const { id, given, with: shown } = read.malformed;
  return say({ id, with: { ...(typeof given === "string" ? { given } : {}), ...shown } });
}

test("a box is read alike as YAML, as YAML in one line, and as JSON, with or without a byte order mark", async () => {
  const box = { motion: "turning", shaft: "50 mm" };
  for (const text of [
    "motion: turning\nshaft: 50 mm\n",
    "\ufeffmotion: turning\r\nshaft: 50 mm\r\n",
    "{motion: turning, shaft: 50 mm}",
    '{"motion":"turning","shaft":"50 mm"}',
    '\ufeff{"motion":"turning","shaft":"50 mm"}',
  ]) {
    expect(await of(text), text).toEqual({ ok: true, value: box });
  }
});

describe("what is wrong with a file is said with its line", () => {
  const cases: readonly (readonly [string, string, RegExp])[] = [
    ["a name twice", "motion: turning\nshaft: 50 mm\nshaft: 60 mm\n", /^Line 3: “shaft” stands there twice/u],
    ["a name twice, as JSON", '{"shaft":"50 mm","shaft":"60 mm"}', /^“shaft” stands there twice/u],
    ["a tab", "studs:\n\tcount: 2\n", /^Line 2 starts with a tab/u],
    ["two boxes", "motion: turning\n---\nmotion: turning\n", /^Line 2: a second box/u],
    ["a bracket left open", "motion: turning\nshaft: [50 mm\n", /^Line \d could not be read/u],
    ["JSON cut off", '{"motion":\n', /^Line \d could not be read/u],
    ["nothing", "", /is empty/u],
    ["only remarks", "# nothing yet\n", /is empty/u],
    ["groups without end", "[".repeat(100_000), /groups deep/u],
    ["a group in itself", "a: &a [*a]\n", /groups deep/u],
  ];
  for (const [title, text, sentence] of cases) {
    test(title, async () => {
      const said = await saidOf(text);
      expect(said).toMatch(sentence);
      expect(said).not.toMatch(/\n|\.\.|YAML\.|call stack/u);
    });
  }
});

test("a file that is not there and a folder are called so, and nothing throws", async () => {
  const failing = (code: string) => reading(() => throwing(code));
  expect(await failing("ENOENT")).toMatchObject({ ok: false, malformed: { id: "file-none", given: "box.yaml" } });
  expect(await failing("EISDIR")).toMatchObject({ ok: false, malformed: { id: "file-folder" } });
  expect(await failing("EACCES")).toMatchObject({ ok: false, malformed: { id: "file-not-read" } });
});

function throwing(code: string): never {
  throw Object.assign(new Error(`${code}: no`), { code });
}
