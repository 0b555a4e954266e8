import { readdirSync, readFileSync } from "node:fs";
import { readAllFacts } from "@ringwright/data";
import Ajv2020 from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import type { Json } from "./field.ts";
import { answers } from "./register.ts";
import { ask } from "./reply.ts";
import { replySchema } from "./schema.ts";

const folder = new URL("./examples/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const facts = readAllFacts();
const schemas = new Ajv2020.default({ strict: false, allErrors: false });

test("there are answers, and each has one example of its name", () => {
  expect(answers.length).toBeGreaterThan(0);
  expect(files.map((name) => name.replace(".json", "")).sort()).toEqual(answers.map((entry) => entry.name).sort());
});

for (const description of answers) {
  test(`the example of ${description.name} fits its schemas and is what the program replies today`, () => {
    const example = JSON.parse(readFileSync(new URL(`${description.name}.json`, folder), "utf8")) as { question: Json; reply: Json };
    const fitsQuestion = schemas.compile(description.question.schema as object);
    const fitsReply = schemas.compile(replySchema(description) as object);
    expect(fitsQuestion(example.question), schemas.errorsText(fitsQuestion.errors)).toBe(true);
    expect(fitsReply(example.reply), schemas.errorsText(fitsReply.errors)).toBe(true);
    const reply = JSON.parse(JSON.stringify(ask(description.name, example.question, facts))) as { ok: boolean };
    expect(reply.ok).toBe(true);
    expect(reply).toEqual(example.reply);
  });
}
