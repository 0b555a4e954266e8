import { readAllFacts } from "@ringwright/data";
import { describe, expect, test } from "vitest";
import type { Json } from "./field.ts";
import { ask } from "./reply.ts";

const facts = readAllFacts();

interface Slip {
  readonly kind: string;
  readonly input: string;
  readonly given: Json;
  readonly suggestion?: number;
  readonly why: string;
}

/** Fields asked about with what was perhaps meant; the question is answered all the same. */
function asked(name: string, question: Json): Readonly<Record<string, unknown>> {
  const reply = ask(name, question, facts);
  if (!reply.ok) throw new Error(`${name}: ${reply.refusal.why}`);
  const warnings = reply.warnings as unknown as readonly Slip[];
  return Object.fromEntries(
    warnings
      .filter((warning) => warning.kind === "slip")
      .map((slip) => {
        expect(slip.why.length).toBeGreaterThan(10);
        expect(slip.given).toBeDefined();
        return [slip.input, slip.suggestion === undefined ? undefined : Math.round(slip.suggestion * 1e5) / 1e5];
      }),
  );
}

const gland = { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", nuts: 2, thread: "M12", nutFactor: 0.2 };
const ring = { height: "10 mm", ratio: 0.5, frictionShaft: 0.1, frictionBore: 0.1 };
const stack = { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", turning: false };

describe("a likely slip is asked about, whatever is to be worked out, and never blocks", () => {
  const cases: readonly (readonly [string, string, Json, Readonly<Record<string, unknown>>])[] = [
    ["an inch typed as a millimetre", "surface-speed", { shaft: "2 mm", rotation: "1450 rpm" }, { shaft: 0.0508 }],
    ["ten times the speed", "surface-speed", { shaft: "50 mm", rotation: "14500 rpm" }, { rotation: 151.84364 }],
    ["a tenth of the shaft", "gland-load", { ...gland, shaft: "5 mm" }, { shaft: 0.05 }],
    ["ten times the bore", "ring-cut", { shaft: "50 mm", bore: "700 mm", cut: "butt" }, { bore: 0.07 }],
    ["ten times the depth", "ring-set", { motion: "turning", shaft: "50 mm", bore: "70 mm", depth: "800 mm" }, { depth: 0.08 }],
    ["an inch of section", "coil", { shaft: "50 mm", section: "0.375 mm", cut: "butt", rings: 5 }, { section: 0.00953 }],
    [
      "one ring ten times its siblings",
      "stress-along-box",
      { ...stack, parts: [ring, ring, { ...ring, height: "100 mm" }, ring] },
      { "parts[2].height": 0.01 },
    ],
    ["nothing mistyped", "gland-load", gland, {}],
    ["rings beside a wide lantern ring", "stress-along-box", { ...stack, parts: [ring, { ...ring, height: "20 mm", ratio: 0 }, ring] }, {}],
  ];
  for (const [title, name, question, expected] of cases) test(title, () => expect(asked(name, question)).toEqual(expected));
});

test("of readings that fall in two, the likely ones are believed", () => {
  const question = { shaft: "50 mm", bore: "70 mm", shaftReadings: ["50 mm", "5 mm", "1.97 mm", "50.1 mm"], resolution: "0.01 mm" };
  const slips = asked("section", question);
  expect(slips).toHaveProperty(["shaftReadings[1]"], 0.05);
  expect(slips).toHaveProperty(["shaftReadings[2]"], 0.05004);
  expect(slips).not.toHaveProperty(["shaftReadings[0]"]);
});
