import { readAllFacts } from "@ringwright/data";
import { allIds } from "@ringwright/words";
import fc from "fast-check";
import { expect } from "vitest";
import { property } from "../../testing/property.ts";
import { motions, uses } from "../box/index.ts";
import { sources } from "../sources/index.ts";
import { quantity } from "../units/index.ts";
import { type Materials, materials, type Reason, type Service, solidsLevels } from "./index.ts";

const facts = readAllFacts().materials;
const sentences = allIds();
const known: ReadonlySet<string> = new Set(Object.keys(sources));
const fluidIds = facts.fluids.map(({ id }) => id);

const celsius = (value: number) => quantity("temperature", value, "degC");
const temperature = fc.double({ min: 0, max: 600, noNaN: true }).map(celsius);
const sleeve = fc.record(
  {
    material: fc.constantFrom(...facts.sleeves.map(({ id }) => id)),
    hardness: fc.double({ min: 50, max: 900, noNaN: true }),
    wetWhenIdle: fc.boolean(),
  },
  { requiredKeys: [] },
);
const service: fc.Arbitrary<Service> = fc
  .record(
    {
      motion: fc.constantFrom(...motions),
      fluids: fc.uniqueArray(fc.constantFrom(...fluidIds), { maxLength: 3 }),
      temperature,
      pressure: fc.double({ min: -1, max: 400, noNaN: true }).map((value) => quantity("pressure", value, "bar")),
      speed: fc.double({ min: 0, max: 40, noNaN: true }).map((value) => quantity("speed", value, "m/s")),
      pH: fc.double({ min: 0, max: 14, noNaN: true }),
      solids: fc.constantFrom(...solidsLevels),
      sleeve,
      phase: fc.constantFrom("liquid", "gas"),
      condition: fc.record({ overall: fc.constantFrom("good", "worn", "poor") }, { requiredKeys: [] }),
      release: fc.constantFrom("allowed", "not-allowed"),
      film: fc.constantFrom("product", "grease"),
      use: fc.constantFrom(...uses),
      items: fc.array(
        fc.record(
          {
            style: fc.constantFrom(...facts.styles.map(({ id }) => id)),
            listed: fc.constant(["potable", "food"] as const),
            oxygenLot: fc.boolean(),
            inhibited: fc.boolean(),
            lubricant: fc.constantFrom("none", ...facts.lubricants.map(({ id }) => id)),
            rubber: fc.constantFrom(...facts.rubbers.map(({ id }) => id)),
            jacket: fc.constantFrom(...facts.styles.map(({ id }) => id)),
            suits: fc.uniqueArray(fc.constantFrom(...fluidIds), { maxLength: 3 }),
            sheet: fc.constant("sheet 7"),
          },
          { requiredKeys: ["style"] },
        ),
        { maxLength: 3 },
      ),
    },
    { requiredKeys: ["motion"] },
  )
  .map((given) => given as Service);

function chosen(asked: Service): Materials {
  const answer = materials(asked, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}
const rejectedIn = (asked: Service) => new Set(chosen(asked).rejected.map(({ style }) => style));

property("every style is either ranked or rejected, once", [service], (asked) => {
  const { ranked, rejected } = chosen(asked);
  expect([...ranked, ...rejected].map(({ style }) => style).sort()).toEqual(facts.styles.map(({ id }) => id).sort());
});

property("one more fluid never lets a packing back in", [service, fc.constantFrom(...fluidIds)], (asked, fluid) => {
  const before = rejectedIn(asked);
  const after = rejectedIn({ ...asked, fluids: [...(asked.fluids ?? []), fluid] });
  for (const style of before) expect(after, style).toContain(style);
});

property(
  "more heat never lets a packing back in",
  [service, temperature, fc.double({ min: 0, max: 300, noNaN: true })],
  (asked, cooler, more) => {
    const hotter = quantity("temperature", cooler + more, "K");
    const after = rejectedIn({ ...asked, temperature: hotter });
    for (const style of rejectedIn({ ...asked, temperature: cooler })) expect(after, style).toContain(style);
  },
);

property("every reason has a sentence and a source that exists, and every stop is a stop", [service], (asked) => {
  const answer = materials(asked, facts);
  expect(answer.ok).toBe(true);
  if (!answer.ok) return;
  const { ranked, rejected, nearly } = answer.value;
  const lacking = new Set<string>();
  for (const { binding, because } of [...ranked, ...rejected]) {
    for (const { says, citation, clears } of [binding, ...because] as readonly Pick<Reason, "says" | "citation" | "clears">[]) {
      if (!sentences.has(says.id)) lacking.add(says.id);
      if (!known.has(citation.source)) lacking.add(citation.source);
      if (clears && !sentences.has(clears.id)) lacking.add(clears.id);
    }
  }
  for (const { says } of answer.warnings) if (!sentences.has(says.id)) lacking.add(says.id);
  expect([...lacking]).toEqual([]);
  expect(ranked.filter(({ because }) => because.some(({ kind }) => kind === "stop"))).toEqual([]);
  const stops = new Map(rejected.map(({ style, because }) => [style, because.filter(({ kind }) => kind === "stop")]));
  expect(rejected.filter(({ style, binding }) => !stops.get(style)?.some(({ constraint }) => constraint === binding.constraint))).toEqual(
    [],
  );
  expect(nearly.filter(({ style }) => stops.get(style)?.length !== 1)).toEqual([]);
});

property("the score is the sum of its parts and the list is in its order; no figure is other than a number", [service], (asked) => {
  const { ranked } = chosen(asked);
  let last = Number.POSITIVE_INFINITY;
  for (const { score, contributions, binding } of ranked) {
    expect(contributions.reduce((sum, part) => sum + part, 0)).toBeCloseTo(score, 9);
    expect(score).toBeLessThanOrEqual(last);
    last = score;
    for (const figure of [score, ...contributions, ...Object.values(binding.compared ?? {}).filter((entry) => typeof entry === "number")])
      expect(Number.isFinite(figure)).toBe(true);
  }
});

property("the same question gets the same answer", [service], (asked) => {
  expect(chosen(asked)).toEqual(chosen(structuredClone(asked)));
});
