import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import type { Json } from "../field.ts";
import { ask } from "../reply.ts";

const facts = readAllFacts();
const asked = (question: Json) => JSON.parse(JSON.stringify(ask("materials", question, facts))) as Record<string, never> & { ok: boolean };

test("sleeve and condition may be one word or told in full, to the same effect", () => {
  const rest = { motion: "turning", fluids: ["seawater-brine"], temperature: "20 °C" };
  const word = asked({ ...rest, sleeve: "chromium-13", condition: "worn" });
  expect(word.ok).toBe(true);
  expect(word).toEqual(asked({ ...rest, sleeve: { material: "chromium-13" }, condition: { overall: "worn" } }));
});

test("each packing comes with its binding constraint, what was given, the limit and what is left, in SI with its source", () => {
  const { answer } = asked({ motion: "turning", fluids: ["cold-industrial-water"], speed: "12.3 m/s" }) as unknown as {
    answer: { ranked: readonly { style: string; binding: Record<string, unknown> }[] };
  };
  // Tribology Handbook, table 25.1: PTFE on pumps below 10 m/s.
  const { given, limit, margin, source, seen } = answer.ranked.find(({ style }) => style === "ptfe-lub")?.binding ?? {};
  expect([given, limit]).toEqual([
    { value: 12.3, unit: "m/s" },
    { value: 10, unit: "m/s" },
  ]);
  expect((margin as { value: number }).value).toBeCloseTo(-2.3, 12);
  expect(source).toMatchObject({ source: "neale-1995", seen: "read" });
  expect(seen).toBe(true);
});

test("a question that is malformed names the field, and one about a fluid that is not known names those that are", () => {
  expect(asked({ motion: "sideways" })).toMatchObject({ ok: false, refusal: { kind: "malformed", input: "motion" } });
  expect(asked({ motion: "turning", sleeve: { colour: "blue" } })).toMatchObject({
    ok: false,
    refusal: { kind: "unknown-field", input: "sleeve.colour" },
  });
  expect(asked({ motion: "turning", condition: "rusty" })).toMatchObject({ ok: false, refusal: { kind: "malformed", input: "condition" } });
  const treacle = asked({ motion: "turning", fluids: ["treacle"] }) as unknown as { refusal: { allowed: string[] } };
  expect(treacle.refusal.allowed).toHaveLength(54);
});
