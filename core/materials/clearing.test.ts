import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { english } from "../../words/en/index.ts";
import { quantity } from "../units/index.ts";
import { clearing, type Materials, materials, type Reason, type Service } from "./index.ts";

const { materials: facts } = readAllFacts();

function found(service: Service): Materials {
  const answer = materials(service, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

const against = ({ ranked, rejected }: Materials): readonly Reason[] =>
  [...ranked, ...rejected].flatMap(({ because }) => because.filter(({ kind }) => kind === "warn" || kind === "ask" || kind === "stop"));

const anyService = fc.record({
  motion: fc.constantFrom("turning" as const, "stroking" as const, "rising-stem" as const, "slow-agitator" as const),
  fluids: fc.subarray(
    facts.fluids.map(({ id }) => id),
    { maxLength: 2 },
  ),
  temperature: fc.integer({ min: -60, max: 500 }).map((degrees) => quantity("temperature", degrees, "degC")),
  pressure: fc.integer({ min: 0, max: 100 }).map((bar) => quantity("pressure", bar, "bar")),
  speed: fc.integer({ min: 0, max: 40 }).map((speed) => quantity("speed", speed, "m/s")),
  pH: fc.integer({ min: 0, max: 14 }),
  solids: fc.constantFrom("none" as const, "fine" as const, "coarse" as const),
  phase: fc.constantFrom("liquid" as const, "gas" as const),
  use: fc.constantFrom("none" as const, "potable" as const, "oxygen" as const),
  condition: fc.constant({ overall: "worn" as const, throatGap: quantity("length", 1, "mm") }),
  sleeve: fc.constantFrom({}, { material: "chromium-13" }, { hardness: 180 }, { hardness: 300, material: "hard-bronze" }),
});

/** Against these only another packing helps. */
const onlyAnother: ReadonlySet<string> = new Set([
  "chemistry-stops",
  "ph-stops",
  "never-on-a-turning-shaft",
  "only-on-a-slow-shaft",
  "lead-stops",
  "oxygen-lubricated-stops",
  "metal-couple-with-shaft",
]);

property("every reason against a packing says what would clear it, or is one where only another packing helps", [anyService], (service) => {
  const left = against(found(service)).filter((reason) => {
    const clear = clearing(reason);
    return clear === undefined ? !onlyAnother.has(reason.says.id) : english.sentences[clear.says.id] === undefined;
  });
  expect(left.map(({ says }) => says.id)).toEqual([]);
});

test("a wide throat is cleared by an end ring or a bush, an unknown limit by the item's own sheet", () => {
  const { ranked } = found({
    motion: "turning",
    fluids: ["cold-industrial-water"],
    temperature: quantity("temperature", 20, "degC"),
    condition: { throatGap: quantity("length", 1.5, "mm") },
  });
  const ids = ranked.flatMap(({ because }) => because.map((reason) => clearing(reason)?.says.id));
  expect(ids).toContain("clear-by-end-ring");
  expect(clearing({ kind: "ask", constraint: "speed", says: { id: "speed-limit-unknown" }, citation: { source: "memory" } })).toEqual({
    says: { id: "clear-by-sheet" },
  });
});

test("what only has to be said is named: the fluid, the sleeve, its hardness", () => {
  const reason = (kind: Reason["kind"], id: string): Reason => ({
    kind,
    constraint: "galvanic",
    says: { id },
    citation: { source: "memory" },
  });
  expect(clearing(reason("ask", "graphite-may-eat-sleeve"))?.unsaid).toBe("fluids");
  expect(clearing(reason("warn", "graphite-may-eat-sleeve"))?.unsaid).toBe("sleeve");
  expect(clearing(reason("ask", "sleeve-hardness-unsure"))?.unsaid).toBe("hardness");
});

test("what holds, and what is only good to know, has nothing to clear", () => {
  expect(clearing({ kind: "holds", constraint: "speed", says: { id: "speed-holds" }, citation: { source: "memory" } })).toBeUndefined();
  expect(
    clearing({ kind: "note", constraint: "chemistry", says: { id: "wire-not-stated" }, citation: { source: "memory" } }),
  ).toBeUndefined();
});
