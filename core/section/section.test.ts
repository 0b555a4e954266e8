import { readAllFacts } from "@ringwright/data";
import { allIds, say } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type SectionQuestion, section } from "./index.ts";

const facts = readAllFacts();
const mm = (value: number) => quantity("length", value, "mm");
const inch = (value: number) => quantity("length", value, "in");
const ask = (given: SectionQuestion) => section(given, facts.section.stock, facts.uncertainty);

function found(given: SectionQuestion) {
  const answer = ask(given);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

const box = (shaft: number, bore: number, theirs: number, what: string) => ({
  what,
  theirs,
  ours: () => inUnit("length", found({ shaft: inch(shaft), bore: inch(bore), how: "micrometer" }).section.mean, "in"),
  unit: "in",
  within: { absolute: 1e-12 },
});
against(
  {
    topic: "section",
    check: "Section from shaft and bore",
    source: { source: "mobley-1999", at: "ch. 18, p. 226" },
    tolerance: "exact; rounding of binary numbers",
  },
  [box(2, 4, 1, "2 in shaft in a 4 in bore")],
);
against(
  {
    topic: "section",
    check: "Boxes of chemical pumps come out at stock sections",
    source: { source: "pump-manual-7", at: "appendix 5, shaft and bore; the sections are the trade's inch series" },
    tolerance: "exact; rounding of binary numbers",
  },
  [
    box(1.375, 2, 5 / 16, "1 3/8 in shaft in a 2 in bore"),
    box(1.75, 2.5, 3 / 8, "1 3/4 in shaft in a 2 1/2 in bore"),
    box(2.125, 2.875, 3 / 8, "2 1/8 in shaft in a 2 7/8 in bore"),
    box(2.5, 3.375, 7 / 16, "2 1/2 in shaft in a 3 3/8 in bore"),
  ],
);

describe("which stock size to buy", () => {
  const sizes = (given: SectionQuestion) =>
    found({ how: "caliper", ...given }).choice.map((size) => Math.round(inUnit("length", size, "mm") * 100) / 100);

  test("a box of 50 and 70 takes 10 mm, and is nearly sure of it", () => {
    const answer = found({ shaft: mm(50), bore: mm(70), how: "caliper", series: "metric" });
    expect(answer.choice).toEqual([mm(10)]);
    expect(answer.stock[0]).toMatchObject({ label: "10 mm", fit: "fits" });
    expect(answer.stock[0]?.probability).toBeGreaterThan(0.99);
    expect(answer.advice).toEqual(["section-fit"]);
  });
  test("between 9.5 mm and 3/8 in either will do", () => {
    const answer = found({ shaft: mm(50), bore: mm(69.02), how: "caliper", series: "both" });
    expect(answer.choice).toHaveLength(2);
    expect(answer.advice).toContain("section-either");
  });
  test("a gap of 9.6 mm in metric stock takes 9.5 and 10, the nearer first", () => {
    expect(sizes({ shaft: mm(50), bore: mm(69.2), series: "metric" })).toEqual([9.5]);
    expect(sizes({ shaft: mm(50), bore: mm(69.4), series: "metric" })).toEqual([9.5, 10]);
  });
  test("a gap of 7.6 mm takes 8 mm rolled down", () => {
    const answer = found({ shaft: mm(50), bore: mm(65.2), how: "micrometer", series: "metric" });
    expect(answer.choice).toEqual([mm(8)]);
    expect(answer.advice).toContain("section-roll");
    expect(answer.stock.find((entry) => entry.size === mm(8))).toMatchObject({ fit: "roll", advice: "stock-roll" });
  });
  test("formed rings are never rolled", () => {
    const answer = found({ shaft: mm(50), bore: mm(65.2), how: "micrometer", series: "metric", preformed: true });
    expect(answer.choice).toEqual([]);
    expect(answer.advice).toEqual(["section-sleeve-or-bush", "section-preformed"]);
  });
  test("a gap between two stock sizes wants a sleeve or a bush", () => {
    expect(found({ shaft: mm(50), bore: mm(64.2), how: "micrometer", series: "metric" }).advice).toEqual(["section-sleeve-or-bush"]);
  });
  test("a gap larger than any stock wants a sleeve or a bush, a gap smaller than any takes no braid", () => {
    expect(found({ shaft: mm(100), bore: mm(160), how: "micrometer" }).advice).toEqual(["section-sleeve-or-bush"]);
    expect(found({ shaft: mm(20), bore: mm(25), how: "micrometer" }).advice).toEqual(["section-below-stock"]);
  });
  test("a gap taken with a rule is to be measured again before cutting", () => {
    expect(found({ shaft: mm(50), bore: mm(70.6), how: "rule", series: "metric" }).advice).toContain("section-measure-again");
    expect(found({ shaft: mm(50), bore: mm(70), how: "micrometer", series: "metric" }).advice).not.toContain("section-measure-again");
  });
  test("in the inch series a shaft of 1 3/4 in a bore of 2 1/2 takes 3/8", () => {
    expect(found({ shaft: inch(1.75), bore: inch(2.5), how: "caliper", series: "inch" }).stock[0]).toMatchObject({
      label: "3/8 in",
      fit: "fits",
    });
  });
});

describe("what was measured decides", () => {
  test("readings of the worn sleeve are used instead of the single value, and that is said", () => {
    const answer = ask({ shaft: mm(50), bore: mm(70), shaftReadings: [mm(48.9), mm(49.1)], resolution: mm(0.02) });
    if (!answer.ok) throw new Error("refused");
    expect(answer.value.section.mean).toBeCloseTo(0.0105, 12);
    expect(answer.warnings.map((warning) => warning.says.id)).toContain("readings-used");
  });
  test("the nameplate is compared and never used", () => {
    const given = { shaft: mm(49), bore: mm(70), how: "micrometer" } as const;
    const answer = ask({ ...given, nameplateSection: mm(10) });
    if (!answer.ok) throw new Error("refused");
    expect(answer.value.section).toEqual(found(given).section);
    expect(answer.warnings.map((warning) => warning.says.id)).toEqual(["nameplate-differs"]);
    expect(ask({ ...given, nameplateSection: mm(10.5) })).toMatchObject({ warnings: [{ says: { id: "nameplate-agrees" } }] });
  });
  test("half of each diameter's uncertainty goes into the gap, as squares", () => {
    const { section: gap, shaft, bore } = found({ shaft: mm(50), bore: mm(70), shaftHow: "micrometer", boreHow: "caliper-at-mouth" });
    expect(gap.u).toBeCloseTo(Math.hypot(shaft.u, bore.u) / 2, 15);
    expect(bore.u).toBeGreaterThan(5 * shaft.u);
  });
});

describe("bad input is refused by name, a slip is asked about", () => {
  const refusal = (given: SectionQuestion) => {
    const answer = ask(given);
    if (!answer.ok) expect([...allIds()]).toContain(answer.refusal.says.id);
    return answer.ok ? "ok" : `${answer.refusal.kind} ${answer.refusal.input} ${answer.refusal.says.id}`;
  };
  test("a shaft as large as the bore or larger leaves no room", () => {
    expect(refusal({ shaft: mm(70), bore: mm(70) })).toBe("impossible bore bore-not-larger");
    expect(refusal({ shaft: mm(70), bore: mm(50) })).toBe("impossible bore bore-not-larger");
  });
  test("a bore in inches typed as millimetres is refused with what it may have been", () => {
    const answer = ask({ shaft: mm(50), bore: mm(2.75) });
    expect(answer).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore", says: { id: "bore-not-larger-meant" } } });
    const shown = answer.ok ? {} : { ...answer.refusal.says.with };
    expect((shown.meant as { value: number }).value).toBeCloseTo(inch(2.75), 12);
  });
  test("where a shaft of no box is the odd one, the bore is not taken to be ten times as large", () => {
    expect(refusal({ shaft: mm(500), bore: mm(70) })).toBe("impossible bore bore-not-larger");
  });
  test("negative, nought, endless and not a number", () => {
    for (const bad of [mm(-50), mm(0), Number.NaN as Length, Number.POSITIVE_INFINITY as Length, 1e308 as Length]) {
      expect(refusal({ shaft: bad, bore: mm(70) })).toBe("outside-range shaft outside-range-above-to");
      expect(refusal({ shaft: mm(50), bore: bad })).toBe("outside-range bore outside-range-above-to");
      expect(refusal({ shaft: mm(50), bore: mm(70), nameplateSection: bad })).toBe("outside-range nameplateSection outside-range-above-to");
    }
    expect(refusal({ shaft: mm(50), bore: mm(70), shaftReadings: [mm(50), mm(-1)] })).toBe(
      "outside-range shaftReadings[1] outside-range-from-to",
    );
    expect(refusal({ shaft: mm(50), bore: mm(70), boreReadings: [] })).toBe("missing boreReadings measured-no-readings");
    expect(refusal({ shaft: mm(50), bore: mm(70), shaftReadings: [mm(0)] })).toBe("outside-range shaft outside-range-above-to");
    expect(refusal({ shaft: mm(50), bore: mm(70), braidTolerance: 0.4 })).toBe("outside-range braidTolerance outside-range-from-to");
  });
  test("two diameters that look right with a gap that does not are asked about", () => {
    const answer = ask({ shaft: mm(20), bore: mm(300), how: "caliper" });
    if (!answer.ok) throw new Error("refused");
    expect(answer.warnings).toMatchObject([{ kind: "slip", says: { id: "section-slip" } }]);
  });
  test("an ordinary box is not asked about", () => {
    expect(ask({ shaft: mm(50), bore: mm(70), how: "caliper" })).toMatchObject({ ok: true, warnings: [] });
  });
  test("every sentence that can be asked for is there", () => {
    const ids = allIds();
    for (const fit of ["fits", "roll", "too-big", "too-small"]) expect(ids.has(`stock-${fit}`)).toBe(true);
    for (const id of ["section-slip", "section-unlikely", "readings-used", "nameplate-differs", "nameplate-agrees"])
      expect(ids.has(id), id).toBe(true);
  });
});

test("stock stands in ascending order, no size twice", () => {
  const sizes = facts.section.stock.sizes.map((entry) => entry.size);
  expect(sizes.length).toBeGreaterThan(25);
  for (let i = 1; i < sizes.length; i++) expect(sizes[i]).toBeGreaterThan(sizes[i - 1] ?? 0);
});

describe("what is shown and said about a box", () => {
  const warned = (given: SectionQuestion) => {
    const answer = ask(given);
    return answer.ok ? answer.warnings : [];
  };
  test("a well measured gap is shown with the sizes next to it in each series and no others", () => {
    const labels = (stock: "metric" | "inch" | "both") =>
      found({ shaft: mm(50), bore: mm(70.4), how: "micrometer", series: stock }).stock.map((entry) => entry.label);
    expect(labels("metric")).toEqual(["10 mm", "11 mm"]);
    expect(labels("inch")).toEqual(["3/8 in", "7/16 in"]);
    expect(labels("both")).toEqual(["10 mm", "3/8 in", "11 mm", "7/16 in"].sort((a, b) => distance(a) - distance(b)));
    function distance(label: string): number {
      const size = facts.section.stock.sizes.find((entry) => entry.label === label)?.size ?? 1;
      return Math.abs(size - mm(10.2));
    }
  });
  test("a gap of just a stock size is shown with that size and the next larger one", () => {
    const { stock: listed } = found({ shaft: mm(50), bore: mm(70), how: "micrometer", series: "metric" });
    expect(listed.map((entry) => entry.label)).toEqual(["10 mm", "11 mm"]);
  });
  test("a size that can be rolled to the gap fills it as surely as one that fits", () => {
    const { stock: listed } = found({ shaft: mm(50), bore: mm(65.2), how: "micrometer", series: "metric" });
    const eight = listed.find((entry) => entry.label === "8 mm");
    expect(eight?.fills).toBeGreaterThan(0.99);
    const formed = found({ shaft: mm(50), bore: mm(65.2), how: "micrometer", series: "metric", preformed: true });
    expect(formed.stock.find((entry) => entry.label === "8 mm")?.fills).toBeLessThan(0.01);
  });
  test("the chance of the nearest size is the normal one between the halfway marks", () => {
    // Gap 10.5 mm lies on the mark between 10 and 11: even odds, whatever the tool.
    const { stock: listed } = found({ shaft: mm(50), bore: mm(71), how: "rule", series: "metric" });
    const ten = listed.find((entry) => entry.label === "10 mm")?.probability ?? 0;
    const eleven = listed.find((entry) => entry.label === "11 mm")?.probability ?? 0;
    expect(eleven / ten).toBeGreaterThan(0.8);
    expect(eleven / ten).toBeLessThan(1.3);
  });
  test("a slip of either diameter is named with what explains the gap", () => {
    const bore = warned({ shaft: mm(20), bore: mm(300), how: "caliper" });
    expect(bore).toMatchObject([{ kind: "slip", input: "bore", says: { id: "section-slip" } }]);
    expect(inUnit("length", bore[0]?.suggestion as Length, "mm")).toBeCloseTo(30, 9);
    // 9 mm for a shaft of 90: a bore of 110 cannot be meant otherwise.
    const shaft = warned({ shaft: mm(9), bore: mm(110), how: "caliper" });
    expect(shaft).toMatchObject([{ kind: "slip", input: "shaft", says: { id: "section-slip" } }]);
    expect(inUnit("length", shaft[0]?.suggestion as Length, "mm")).toBeCloseTo(90, 9);
  });
  test("a gap that no slip explains is asked about all the same, a thin one too", () => {
    expect(warned({ shaft: mm(100), bore: mm(400), how: "caliper" })).toMatchObject([
      { kind: "slip", input: "bore", says: { id: "section-unlikely" } },
    ]);
    expect(warned({ shaft: mm(100), bore: mm(103), how: "caliper" })).toMatchObject([
      { kind: "slip", input: "bore", says: { id: "section-unlikely" } },
    ]);
  });
  test("a shaft outside all belief is asked about once, not again for its gap", () => {
    expect(warned({ shaft: mm(2), bore: mm(70), how: "caliper" })).toMatchObject([{ kind: "slip", input: "shaft" }]);
  });
  test("that nobody said how it was measured is said once, and for each diameter where they differ", () => {
    const ids = (given: SectionQuestion) => warned(given).map((warning) => warning.says.id);
    expect(ids({ shaft: mm(50), bore: mm(70) })).toEqual(["how-not-known"]);
    expect(ids({ shaft: mm(50), bore: mm(70), resolution: mm(0.1) })).toEqual(["how-not-said"]);
    expect(ids({ shaft: mm(50), bore: mm(70), shaftHow: "micrometer" })).toEqual(["how-not-known"]);
    expect(ids({ shaft: mm(50), bore: mm(70), how: "caliper" })).toEqual([]);
  });
  test("a slip among the readings of one diameter is named with that diameter", () => {
    const [slip] = warned({ shaft: mm(50), bore: mm(70), how: "caliper", shaftReadings: [mm(50), mm(50.1), mm(5.02)] });
    expect(slip).toMatchObject({ kind: "slip", input: "shaftReadings[2]", says: { id: "slip-against-siblings" } });
  });
  test("each step of the workings has a number for every symbol of its rule", () => {
    for (const [shaft, bore] of [
      [50, 70.4],
      [20, 25],
      [100, 170],
    ] as const) {
      const answer = ask({ shaft: mm(shaft), bore: mm(bore), how: "rule" });
      if (!answer.ok) throw new Error("refused");
      for (const [rule, inputs] of answer.workings) expect(inputs.filter(Number.isFinite), rule.id).toHaveLength(rule.inputs.length);
    }
  });
  test("a sentence about a box shows its figures", () => {
    const said = [
      ...warned({ shaft: mm(20), bore: mm(300), how: "caliper" }),
      ...warned({ shaft: mm(100), bore: mm(400), how: "caliper" }),
      ...warned({ shaft: mm(50), bore: mm(70), shaftReadings: [mm(48)], how: "caliper", nameplateSection: mm(10) }),
    ].map((warning) => say(warning.says));
    expect(said).toHaveLength(4);
    for (const sentence of said) expect(sentence).toMatch(/\d.*mm/u);
    expect(said.join(" ")).not.toMatch(/[{}]|undefined|NaN/u);
    expect(said[0]).toMatch(/30\.0\smm/u);
    const refused = ask({ shaft: mm(50), bore: mm(2.75) });
    expect(refused.ok ? "" : say(refused.refusal.says)).toMatch(/2\.75\smm.*50\.0\smm.*69\.[89]/u);
  });
});

const shafts = fc.integer({ min: 1000, max: 20000 }).map((hundredths) => mm(hundredths / 100));
const gaps = fc.integer({ min: 200, max: 3000 }).map((hundredths) => mm(hundredths / 100));
const how = fc.constantFrom("micrometer", "caliper", "caliper-at-mouth", "rule", "unknown");
const series = fc.constantFrom("metric", "inch", "both");

property(
  "the probabilities of the listed sizes lie between 0 and 1, and together make no more than 1 and nearly all of it",
  [shafts, gaps, how, series],
  (shaft, gap, taken, stock) => {
    const { stock: listed, advice } = found({ shaft, bore: (shaft + 2 * gap) as Length, how: taken, series: stock });
    const sum = listed.reduce((total, entry) => total + entry.probability, 0);
    expect(sum).toBeLessThanOrEqual(1 + 1e-9);
    expect(sum).toBeGreaterThan(0.97);
    for (const entry of listed) {
      expect(entry.probability).toBeGreaterThanOrEqual(0);
      expect(entry.probability).toBeLessThanOrEqual(1);
      expect(entry.fills).toBeGreaterThanOrEqual(0);
      expect(entry.fills).toBeLessThanOrEqual(1);
    }
    for (const id of advice) expect(allIds().has(id), id).toBe(true);
  },
);

property("the nearest size stands first, and is the likeliest when the gap is known well", [shafts, gaps, series], (shaft, gap, stock) => {
  const { stock: listed, section: measured } = found({ shaft, bore: (shaft + 2 * gap) as Length, how: "micrometer", series: stock });
  const [first] = listed;
  const all = facts.section.stock.sizes.filter((entry) => stock === "both" || entry.series.includes(stock as never));
  const nearest = Math.min(...all.map((entry) => Math.abs(entry.size - measured.mean)));
  expect(Math.abs(first?.misfit ?? 1)).toBeCloseTo(nearest, 12);
});

property("the more a size is above the gap, the further it is from fitting", [gaps, fc.integer({ min: 0, max: 500 })], (gap, more) => {
  const order = ["too-small", "fits", "roll", "too-big"];
  const fitAt = (bore: number) => {
    const { stock: listed } = found({ shaft: mm(50), bore: bore as Length, how: "micrometer", series: "metric" });
    return new Map(listed.map((entry) => [entry.size, order.indexOf(entry.fit)]));
  };
  const narrow = fitAt(mm(50) + 2 * gap);
  const wide = fitAt(mm(50) + 2 * (gap + mm(more / 100)));
  for (const [size, fit] of narrow) expect(wide.get(size) ?? 0).toBeLessThanOrEqual(fit);
});

property("twice the box has twice the gap", [shafts, gaps], (shaft, gap) => {
  const one = found({ shaft, bore: (shaft + 2 * gap) as Length, resolution: mm(0.1) }).section;
  const two = found({ shaft: (2 * shaft) as Length, bore: (2 * (shaft + 2 * gap)) as Length, resolution: mm(0.2) }).section;
  expect(two.mean / one.mean).toBeCloseTo(2, 9);
  expect(two.u / one.u).toBeCloseTo(2, 9);
});
