import { expect, test } from "vitest";
import ringFile from "../../data/limits/rings.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { type Family, families } from "../materials/index.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { buttGap } from "./butt-gap.ts";
import { type RingFile, readRingFacts } from "./facts.ts";
import { ringCut } from "./ring-cut.ts";

const facts = readRingFacts(ringFile as RingFile);
const mm = (value: number) => quantity("length", value, "mm");

function gapOf(family?: Family) {
  const answer = buttGap(family === undefined ? {} : { family }, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

against(
  {
    topic: "rings",
    check: "The gap for packing that swells",
    source: { source: "bloch-geitner-maintenance", at: "1/16 to 1/8 in between the ends" },
    tolerance: "ours is the metric habit of 1.5 to 3 mm; sixteenths of an inch are 1.59 and 3.18 mm",
  },
  [
    {
      what: "smallest",
      theirs: 1 / 16,
      ours: () => inUnit("length", gapOf("vegetable-fibre").gap?.low ?? (0 as Length), "in"),
      unit: "in",
      within: { absolute: 0.01 },
    },
    {
      what: "largest",
      theirs: 1 / 8,
      ours: () => inUnit("length", gapOf("vegetable-fibre").gap?.high ?? (0 as Length), "in"),
      unit: "in",
      within: { absolute: 0.01 },
    },
  ],
);

test("only packing that swells stands apart; what is not cut into rings has no gap", () => {
  const policies: Partial<Record<Family, string>> = { "vegetable-fibre": "swell", injectable: "not-known", "elastomer-core": "not-known" };
  for (const family of families) expect(gapOf(family).policy).toBe(policies[family] ?? "close");
});

test("with the material not known no gap is named, and the quarrel of the books is shown", () => {
  const gap = gapOf();
  expect(gap).toMatchObject({ policy: "not-known" });
  expect(gap.gap).toBeUndefined();
  const printed = gap.opinions.map(({ low }) => low);
  expect(Math.min(...printed)).toBe(0);
  expect(Math.max(...printed)).toBeCloseTo(quantity("length", 1 / 8, "in"), 12);
});

test("a flax ring is cut 2 mm shorter than its mean line, a PTFE ring is not", () => {
  const cut = (family: "vegetable-fibre" | "ptfe") => ringCut({ shaft: mm(50), bore: mm(75), cut: "butt", family }, facts);
  const flax = cut("vegetable-fibre");
  // 196.35 mm less 2.25 mm, the middle of 1.5 to 3 mm.
  expect(flax.ok && inUnit("length", flax.value.cutLengthLessGap ?? (0 as Length), "mm")).toBeCloseTo(194, 9);
  expect(cut("ptfe")).toMatchObject({ ok: true, value: { cutLengthLessGap: undefined } });
});
