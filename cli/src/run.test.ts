import { expect, test } from "vitest";
import { ran } from "../../testing/command.ts";

test("an answer is one JSON document and a newline on standard output, and nothing else anywhere", async () => {
  for (const [input, code] of [
    ['{"shaft":"50 mm","rotation":"1450 rpm"}', 0],
    ['{"shaft":"50","rotation":"1450 rpm"}', 2],
    ['{"shaft":"-50 mm","rotation":"1450 rpm"}', 3],
    ["{", 2],
    ["", 2],
    ['\ufeff{"shaft":"50 mm",\r\n"rotation":"1450 rpm"}\r\n', 0],
    ['{"shaft":"50 mm","shaft":"60 mm","rotation":"1450 rpm"}', 2],
    [`{"shaft":${"[".repeat(50_000)}${"]".repeat(50_000)}}`, 2],
    [`{"shaft":"${"9".repeat(1_000_000)} mm","rotation":"1450 rpm"}`, 2],
    ['{"shaft":{"value":1e999,"unit":"mm"},"rotation":"1450 rpm"}', 3],
  ] as const) {
    const { code: given, out, err } = await ran(["answer", "surface-speed"], input);
    expect(given, input.slice(0, 80)).toBe(code);
    expect(err).toBe("");
    expect(out.endsWith("\n")).toBe(true);
    expect(out.indexOf("\n")).toBe(out.length - 1);
    expect(JSON.parse(out)).toMatchObject({ ok: code === 0 });
  }
});

test("an unknown answer is malformed, and says which there are", async () => {
  const { code, out } = await ran(["answer", "horoscope"], "{}");
  expect(code).toBe(2);
  expect(JSON.parse(out)).toMatchObject({ ok: false, refusal: { kind: "unknown-answer", given: "horoscope" } });
});

test("words after the name of an answer are refused, not passed over", async () => {
  const { code, out } = await ran(["answer", "surface-speed", "box.json"], '{"shaft":"50 mm","rotation":"1450 rpm"}');
  expect(code).toBe(2);
  expect(JSON.parse(out)).toMatchObject({ ok: false, refusal: { kind: "malformed", given: "box.json" } });
});

test("the list of answers carries their schemas", async () => {
  const { code, out } = await ran(["answers"]);
  expect(code).toBe(0);
  const list = JSON.parse(out) as { name: string; question: object }[];
  expect(list.map((entry) => entry.name)).toContain("surface-speed");
  for (const entry of list) expect(entry.question).toHaveProperty("type");
});

test("no command, or one that is none, shows what there is", async () => {
  expect(await ran([])).toMatchObject({ code: 2, out: "" });
  const { code, err } = await ran(["repair"]);
  expect(code).toBe(2);
  expect(err).toContain("ringwright plan");
  expect(await ran(["help"])).toMatchObject({ code: 0, err: "" });
});
