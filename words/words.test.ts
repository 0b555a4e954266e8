import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { english } from "./en/index.ts";
import { inputName, nameOf, say } from "./index.ts";

/** Every source file of a folder that is no test. */
function sourcesOf(folder: string): readonly string[] {
  return readdirSync(new URL(`../${folder}/`, import.meta.url), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".test.ts") && !path.startsWith("dist") && !path.includes("node_modules"))
    .map((path) => readFileSync(new URL(`../${folder}/${path}`, import.meta.url), "utf8"));
}

test("every sentence that core, answers or logbook ask for by id is there", () => {
  const asked = [...sourcesOf("core"), ...sourcesOf("answers"), ...sourcesOf("logbook")].flatMap((text) =>
    [...text.matchAll(/says:\s*\{\s*id:\s*"([^"]+)"/gu)].map((found) => found[1] ?? ""),
  );
  expect(asked.length).toBeGreaterThan(3);
  expect([...new Set(asked)].filter((id) => english.sentences[id] === undefined)).toEqual([]);
});

test("core carries no sentence of its own", () => {
  const sentence = /["'`][A-Z][a-z]+(?: [a-z]+){5,}[^"'`]*[.!?]["'`]/u;
  const core = readdirSync(new URL("../core/", import.meta.url), { recursive: true, encoding: "utf8" }).filter(
    (path) =>
      path.endsWith(".ts") &&
      !path.endsWith(".test.ts") &&
      !path.startsWith("dist") &&
      !path.startsWith("sources") &&
      !path.includes("node_modules"),
  );
  const found = core.filter((path) =>
    sentence.test(readFileSync(new URL(`../core/${path}`, import.meta.url), "utf8").replace(/^\s*(\*|\/\/).*$/gmu, "")),
  );
  expect(found).toEqual([]);
});

test("no sentence claims that something is safe, isolated or approved", () => {
  const claim = /\b(?:is|are|now|it's) (?:safe|isolated|approved)\b|\bsafe to\b/iu;
  expect(
    Object.entries(english.sentences)
      .filter(([, sentence]) => claim.test(sentence))
      .map(([id]) => id),
  ).toEqual([]);
});

test("no id means one thing in one topic and another in the next", async () => {
  const topics = readdirSync(new URL("./en/", import.meta.url)).filter(
    // These put topics together and say nothing themselves.
    (name) => name.endsWith(".ts") && !name.endsWith(".test.ts") && !["index.ts", "first.ts", "rest.ts"].includes(name),
  );
  const seen = new Map<string, string>();
  const clashes: string[] = [];
  for (const topic of topics) {
    const catalogues = Object.entries((await import(`./en/${topic}`)) as Record<string, Readonly<Record<string, string>>>);
    for (const [kind, catalogue] of catalogues) {
      for (const [id, text] of Object.entries(catalogue)) {
        const key = `${kind.endsWith("Names") ? "name" : "sentence"} ${id}`;
        if ((seen.get(key) ?? text) !== text) clashes.push(`${key} in ${topic}`);
        seen.set(key, text);
      }
    }
  }
  expect(clashes).toEqual([]);
});

test("sentences and names are tidy: no double spaces but in the columns of the usage, no leftover braces, none empty", () => {
  const untidy = [...Object.entries(english.sentences), ...Object.entries(english.names)]
    .filter(([id]) => id !== "command-usage")
    .filter(([, text]) => text.trim() !== text || text === "" || / {2}/u.test(text) || /[{}]/u.test(text.replace(/\{\w+\}/gu, "")));
  expect(untidy.map(([id]) => id)).toEqual([]);
});

test("a field inside another is called by words, and a typed text is shown as it is", () => {
  expect(inputName("parts[2].height")).toBe("parts no. 3, height");
  expect(inputName("notNamedAnywhere")).toBe("not named anywhere");
  expect(inputName("pH")).toBe("pH");
  expect(say({ id: "not-a-choice", with: { input: "motion", given: "stem", allowed: "turning" } })).toContain("“stem”");
  expect(say({ id: "not-a-text", with: { input: "thread", given: "x".repeat(100_000) } }).length).toBeLessThan(300);
});

test("values are shown in workshop units inside a sentence", () => {
  expect(
    say({
      id: "comma-or-thousands",
      with: {
        input: "rotation",
        typed: "1,450 rpm",
        read: { value: 0.1518, kind: "rotation" },
        other: { value: 151.84, kind: "rotation" },
      },
    }),
  ).toContain("1450");
  expect(nameOf("gland-stress")).toBe("gland stress");
});
