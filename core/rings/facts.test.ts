import { expect, test } from "vitest";
import ringFile from "../../data/limits/rings.json" with { type: "json" };
import { motions } from "../box/index.ts";
import { families } from "../materials/index.ts";
import { sources } from "../sources/index.ts";
import { type RingFile, readRingFacts, seatings } from "./facts.ts";

const facts = readRingFacts(ringFile as RingFile);

/** Every citation anywhere in the file. */
function citations(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  const own = "source" in value && typeof value.source === "string" ? [value.source] : [];
  return [...own, ...Object.values(value).flatMap(citations)];
}

test("every value in the file names a source that stands in the register", () => {
  const named = citations(ringFile);
  expect(named.length).toBeGreaterThan(30);
  expect([...new Set(named)].filter((id) => !Object.hasOwn(sources, id))).toEqual([]);
});

test("every motion has its counts, every seating its loss, every family that is cut into rings its gap", () => {
  expect([...facts.counts.keys()].sort()).toEqual([...motions].sort());
  expect([...facts.seating.keys()].sort()).toEqual([...seatings].sort());
  expect(families.filter((family) => !facts.gaps.has(family))).toEqual(["injectable", "elastomer-core"]);
  expect(facts.gaps.size).toBe(families.length - 2);
  for (const { fewest, usual, most } of facts.counts.values()) {
    expect(fewest.value).toBeLessThanOrEqual(usual);
    expect(usual).toBeLessThanOrEqual(most.value);
  }
});

test("values come out in SI from the unit they were printed in", () => {
  expect(facts.leastEntry.value).toBeCloseTo(0.003, 12);
  expect(facts.gapOpinions.map(({ low }) => low)).toContainEqual(expect.closeTo(0.0254 / 16, 12));
  // 30 psi in pascals, NIST SP 811 appendix B: 6894.757 Pa a psi.
  expect(facts.oneRingPressure.value).toBeCloseTo(30 * 6894.757, 0);
});
