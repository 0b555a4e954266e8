import { motions } from "@ringwright/core/box";
import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import type { Json } from "../field.ts";
import { ask } from "../reply.ts";

const facts = readAllFacts();

/** A length as people give it, or left out. */
const maybeLength = (low: number, high: number) =>
  fc.option(
    fc.double({ min: low, max: high, noNaN: true }).map((value) => ({ value, unit: "mm" })),
    { nil: null },
  );

const survey = fc.record({
  motion: fc.constantFrom(...motions),
  shaft: maybeLength(10, 120),
  bore: maybeLength(10, 180),
  section: maybeLength(3, 25),
  depth: maybeLength(5, 300),
  spacer: maybeLength(0, 40),
  rings: fc.option(fc.integer({ min: 1, max: 12 }), { nil: null }),
  ringHeight: maybeLength(3, 25),
  endRings: fc.option(fc.constantFrom("none", "throat", "gland", "both"), { nil: null }),
  lantern: fc.option(
    fc.record({
      wanted: fc.option(fc.boolean(), { nil: null }),
      width: maybeLength(4, 40),
      window: maybeLength(2, 40),
      ringsThroatSide: fc.option(fc.integer({ min: 0, max: 6 }), { nil: null }),
    }),
    { nil: null },
  ),
  portFromThroat: maybeLength(0, 200),
  portFromFace: maybeLength(0, 200),
  portDiameter: maybeLength(2, 20),
  noseLength: maybeLength(0, 80),
  glandGap: maybeLength(0, 60),
  threadLeft: maybeLength(0, 60),
  pressure: fc.option(fc.constantFrom("1 bar", "5 bar"), { nil: null }),
  stroke: maybeLength(10, 200),
});

/** What a person would read in a reply: sentences, and names of quantities. */
function words(reply: ReturnType<typeof ask>): readonly string[] {
  if (!reply.ok) return [reply.refusal.why];
  const warnings = reply.warnings as readonly { why: string }[];
  const steps = reply.workings as readonly { name: string; inputs: readonly { name: string }[] }[];
  return [...warnings.map(({ why }) => why), ...steps.flatMap(({ name, inputs }) => [name, ...inputs.map((input) => input.name)])];
}

property(
  "whatever is known of a box, the ring set speaks in sentences and plain names",
  [survey],
  (question) => {
    const reply = ask("ring-set", question as unknown as Json, facts);
    const code = words(reply).filter((text) => /[a-z][A-Z]|^[a-z]+(?:-[a-z]+)+$|[{}]/u.test(text));
    expect(code).toEqual([]);
  },
  "fuzz",
);

test("a partial survey written as text gives a set that names what it rests on", () => {
  const reply = ask("ring-set", { motion: "turning", shaft: "1 15/16 in", bore: "2 15/16 in" }, facts);
  expect(reply).toMatchObject({ ok: true, answer: { restsOn: ["shaft", "bore"], section: { value: expect.closeTo(0.0127, 9) } } });
});

test("a refusal echoes what was typed", () => {
  const reply = ask("ring-cut", { shaft: "75 mm", bore: "50 mm", cut: "butt" }, facts);
  expect(reply).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore", given: "50 mm" } });
});

test("the sentence of the go/no-go is one a fitter can act on", () => {
  const question = { ringsThroatSide: 2, ringsGlandSide: 3, ringHeight: "12.5 mm", lanternWidth: "16 mm", window: "12 mm" };
  const port = { portFromThroat: "31 mm", portDiameter: "6 mm", glandGap: "16.5 mm" };
  const reply = ask("lantern-limit", { ...question, ...port }, facts);
  expect(
    words(reply)
      .find((text) => text.startsWith("Repack"))
      ?.replaceAll("\u00a0", " "),
  ).toBe("Repack when a drill shank of 8 mm no longer goes into the gland gap. Past that, ring 3 starts to close the flush port.");
});
