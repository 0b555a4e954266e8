import { answers, ask, isMalformed, type Json } from "@ringwright/answers";
import { afterAll, beforeAll, expect, test } from "vitest";
import { ran } from "../../testing/command.ts";
import { exampleOf } from "../docs/examples.ts";
import { facts, type Served, served } from "../testing/asked.ts";

let server: Served;
beforeAll(async () => {
  server = await served();
});
afterAll(() => server.close());

test.each(answers.map(({ name }) => name))("%s: the example's reply over HTTP is the one that answers gives", async (name) => {
  const { question } = exampleOf(name);
  const { status, json } = await server.ask("POST", `/api/v1/answers/${name}`, question);
  expect(status).toBe(200);
  expect(json).toEqual(ask(name, question, facts));
});

test("the command line and HTTP give the same reply, and exit code and status agree", async () => {
  const statusOf: Readonly<Record<number, readonly number[]>> = { 0: [200], 2: [400, 404], 3: [422] };
  for (const [name, input] of [
    ["surface-speed", '{"shaft":"50 mm","rotation":"1450 rpm"}'],
    ["surface-speed", '\ufeff{"shaft":"50 mm",\r\n"rotation":"1450 rpm"}\r\n'],
    ["surface-speed", '{"shaft":"50","rotation":"1450 rpm"}'],
    ["surface-speed", '{"shaft":"-50 mm","rotation":"1450 rpm"}'],
    ["surface-speed", '{"shaft":"50 mm","shaft":"60 mm","rotation":"1450 rpm"}'],
    ["surface-speed", '{"shaft":{"value":1e999,"unit":"mm"},"rotation":"1450 rpm"}'],
    ["surface-speed", '{"shaft":"50 mm","rotation":"1450 rpm","colour":"red"}'],
    ["surface-speed", "{"],
    ["surface-speed", ""],
    ["surface-speed", "null"],
    ["surface-speed", `{"shaft":${"[".repeat(50_000)}${"]".repeat(50_000)}}`],
    ["horoscope", "{}"],
    ["horoscope", "{"],
    ["plan", "{}"],
    ["plan", '{"motion":"turning"}'],
  ] as const) {
    const said = await ran(["answer", name], input);
    const { status, type, json } = await server.ask("POST", `/api/v1/answers/${name}`, input);
    const reply = JSON.parse(said.out) as { readonly ok: boolean; readonly refusal?: { readonly kind: string } };
    expect(statusOf[said.code], `${name} ${input.slice(0, 60)}`).toContain(status);
    if (reply.ok) expect(json).toEqual(reply);
    else {
      expect(type).toContain("application/problem+json");
      expect(json).toMatchObject({ ok: false, refusal: reply.refusal, status });
      expect((json as { refusal: Json }).refusal).toEqual(reply.refusal);
      const kind = reply.refusal?.kind ?? "";
      expect(status).toBe(kind === "unknown-answer" ? 404 : isMalformed({ kind }) ? 400 : 422);
    }
  }
});

test("the list of answers is the one of the command line", async () => {
  const { json } = await server.ask("GET", "/api/v1/answers");
  expect(json).toEqual(JSON.parse((await ran(["answers"])).out));
});
