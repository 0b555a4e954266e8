import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { sectionOpinions } from "./index.ts";

const { tables } = readAllFacts().section;
const mm = (value: number) => quantity("length", value, "mm");

function ask(shaft: Length, section?: Length) {
  const answer = sectionOpinions({ shaft, ...(section === undefined ? {} : { section }) }, tables);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}
const opinion = (table: string, shaft: Length) => ask(shaft).opinions.find((entry) => entry.id === table)?.section;
const row = (table: string, shaft: number, unit: string, theirs: number) => ({
  what: `${table}: shaft ${shaft} ${unit}`,
  theirs,
  ours: () => inUnit("length", opinion(table, quantity("length", shaft, unit))?.low as Length, unit),
  unit,
  within: { absolute: 1e-9 },
});

against(
  {
    topic: "section",
    check: "Section by shaft diameter",
    source: { source: "neale-1995", at: "table 25.2" },
    tolerance: "a table is read, not worked out",
  },
  [
    row("neale-braid", 12, "mm", 3),
    row("neale-braid", 12.1, "mm", 5),
    row("neale-braid", 25, "mm", 6.5),
    row("neale-braid", 50, "mm", 8),
    row("neale-braid", 90, "mm", 10),
    row("neale-braid", 150, "mm", 12.5),
    row("neale-braid", 151, "mm", 15),
    row("neale-expanded-graphite", 18, "mm", 3),
    row("neale-expanded-graphite", 75, "mm", 5),
    row("neale-expanded-graphite", 150, "mm", 7.5),
    row("neale-expanded-graphite", 200, "mm", 10),
  ],
);
against(
  {
    topic: "section",
    check: "Section by shaft diameter, inch series",
    source: { source: "power-plant-packing-training", at: "first band of the table for rotary shafts" },
    tolerance: "a table is read, not worked out",
  },
  [row("inch-rotary", 0.625, "in", 0.3125), row("inch-rotary", 1.125, "in", 0.3125)],
);

describe("tables are opinion", () => {
  test("between two bands of DIN 3780 both are shown", () => {
    expect(opinion("din-3780", mm(51))).toEqual({ low: mm(10), high: mm(12.5) });
    expect(opinion("din-3780", mm(50))).toEqual({ low: mm(10), high: mm(10) });
  });
  test("a table that does not reach the shaft is silent, and is named", () => {
    expect(ask(mm(400)).silent).toEqual(["din-3780", "inch-rotary"]);
    expect(ask(mm(3)).silent).toEqual(["din-3780", "inch-rotary"]);
  });
  test("a value from memory says so in its citation, one that was read does not", () => {
    const seen = (shaft: number) => {
      const answer = sectionOpinions({ shaft: quantity("length", shaft, "in") }, tables);
      return answer.ok ? answer.workings.filter(([rule]) => rule.id === "inch-rotary").map(([rule]) => rule.citation.seen) : [];
    };
    expect(seen(1)).toEqual(["read"]);
    expect(seen(2)).toEqual(["memory"]);
  });
  // Boxes of chemical pumps, pump maker's instruction manual, appendix 5.
  test("boxes of chemical pumps have 1.3 to 1.43 times the root of the shaft in millimetres", () => {
    for (const [shaft, section] of [
      [1.375, 5 / 16],
      [1.75, 3 / 8],
      [2.125, 3 / 8],
      [2.5, 7 / 16],
    ] as const) {
      const { ratio } = ask(quantity("length", shaft, "in"), quantity("length", section, "in"));
      expect(ratio).toBeGreaterThan(1.29);
      expect(ratio).toBeLessThan(1.44);
    }
  });
  test("the root rule gives 1.4 to 2 times the root of the shaft in millimetres", () => {
    const root = opinion("section-root-rule", mm(100));
    expect(inUnit("length", root?.low as Length, "mm")).toBeCloseTo(14, 9);
    expect(inUnit("length", root?.high as Length, "mm")).toBeCloseTo(20, 9);
  });
  test("a shaft before the first band of a table, or between bands, is never given one that does not hold it", () => {
    expect(opinion("din-3780", mm(3.9))).toBeUndefined();
    expect(opinion("inch-rotary", mm(15))).toBeUndefined();
    expect(opinion("din-3780", mm(19))).toEqual({ low: mm(5), high: mm(6) });
  });
  test("each step of the workings has a number for every symbol of its rule", () => {
    const answer = sectionOpinions({ shaft: mm(51), section: mm(10) }, tables);
    if (!answer.ok) throw new Error("refused");
    expect(answer.workings.length).toBeGreaterThan(6);
    for (const [rule, inputs] of answer.workings) expect(inputs.filter(Number.isFinite), rule.id).toHaveLength(rule.inputs.length);
  });
  test("no shaft, a negative one, one that is no number, and an endless section are refused by name", () => {
    for (const shaft of [0, -0.05, Number.NaN, 1e308]) {
      expect(sectionOpinions({ shaft: shaft as Length }, tables)).toMatchObject({
        ok: false,
        refusal: { kind: "outside-range", input: "shaft" },
      });
    }
    expect(sectionOpinions({ shaft: mm(50), section: Number.POSITIVE_INFINITY as Length }, tables)).toMatchObject({
      ok: false,
      refusal: { input: "section" },
    });
  });
});

const shafts = fc.integer({ min: 50, max: 40000 }).map((hundredths) => mm(hundredths / 100));
property("no table gives a larger shaft a smaller section", [shafts, shafts], (one, other) => {
  const [small, large] = one <= other ? [one, other] : [other, one];
  for (const { id } of tables) {
    const [low, high] = [opinion(id, small as Length), opinion(id, large as Length)];
    if (low && high) expect(high.high).toBeGreaterThanOrEqual(low.low);
  }
});
