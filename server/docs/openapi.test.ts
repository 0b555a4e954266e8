import { answers } from "@ringwright/answers";
import { english } from "@ringwright/words";
import { Validator } from "@seriousme/openapi-schema-validator";
import { afterAll, beforeAll, expect, test } from "vitest";
import { operationsOf } from "../app.ts";
import { facts, injected, now, type Served, served } from "../testing/asked.ts";

let server: Served;
beforeAll(async () => {
  server = await served();
});
afterAll(() => server.close());

test("the document is OpenAPI 3.1", async () => {
  const { json } = await server.ask("GET", "/api/v1/openapi.json");
  expect(json).toEqual(JSON.parse(JSON.stringify(server.document)));
  const validator = new Validator();
  expect(await validator.validate(json as Record<string, unknown>)).toEqual({ valid: true });
  expect(validator.version).toBe("3.1");
});

test("a document that is none is seen", async () => {
  expect(await new Validator().validate({ openapi: "3.1.0", info: {}, paths: {} })).toMatchObject({ valid: false });
});

test("every operation has its sentence, its own id and a page; every answer has a path", async () => {
  const operations = operationsOf({ store: server.store, facts, now });
  expect(new Set(operations.map(({ id }) => id)).size).toBe(operations.length);
  for (const { name } of answers) expect(operations.map(({ path }) => path)).toContain(`/api/v1/answers/${name}`);
  const overview = await injected(server.app, { url: "/docs" });
  for (const { id, about, topic } of operations) {
    if (about === undefined) expect(english.sentences, id).toHaveProperty([`operation-${id}`]);
    expect(english.sentences).toHaveProperty([`docs-topic-${topic}`]);
    expect(overview.text).toContain(`href="/docs/${id}"`);
    const page = await injected(server.app, { url: `/docs/${id}` });
    expect(page.status).toBe(200);
    expect(page.type).toContain("text/html");
    expect(page.text, id).not.toMatch(/<script|style="|onclick|undefined|\[object/u);
  }
  expect((await injected(server.app, { url: "/docs/page.css" })).type).toContain("text/css");
  expect((await injected(server.app, { url: "/docs/nothing" })).status).toBe(404);
});
