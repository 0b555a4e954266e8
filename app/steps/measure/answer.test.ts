import type { PlanFacts } from "@ringwright/core/plan";
import { readAllFacts } from "@ringwright/data";
import { describe, expect, test } from "vitest";
import { readAnswer } from "./answer.ts";
import { type Draft, draftOfValue, readDraft, writeDraft } from "./draft.ts";
import { checked, happenedAt } from "./keep.ts";
import { overlaid } from "./live.ts";
import type { Question } from "./question.ts";
import { questions } from "./questions.ts";
import { compared } from "./second.ts";
import { slipsOf } from "./slips.ts";

const facts: PlanFacts = readAllFacts();

function asked(id: string): Question {
  const found = questions.find((question) => question.id === id);
  if (!found) throw new Error(`no question ${id}`);
  return found;
}

const mm = (...texts: readonly string[]): Draft => ({ typed: texts.map((text) => ({ text, unit: "mm" })) });
const metres = (value: number) => ({ readings: [{ value, unit: "m" }] });
const valueOfDraft = (id: string, draft: Draft) => {
  const read = readAnswer(asked(id), draft);
  return read.kind === "value" ? read.value : read;
};

describe("what is kept of an answer", () => {
  test("readings as typed, with the unit beside them and how they were taken", () => {
    expect(valueOfDraft("shaft", { ...mm("49,97", "49.96", ""), how: "micrometer" })).toEqual({
      readings: [
        { value: 0.04997, unit: "m", typed: "49,97 mm" },
        { value: 0.04996, unit: "m", typed: "49.96 mm" },
      ],
      how: "micrometer",
    });
  });

  test("one quantity, four gaps, a choice, yes or no, a count, a number, a list, and not knowing", () => {
    expect(valueOfDraft("port-diameter", { typed: [{ text: "1/4 in", unit: "" }] })).toEqual({
      value: 0.00635,
      unit: "m",
      typed: "1/4 in",
    });
    expect(valueOfDraft("clock-gaps", mm("12.4", "12.6", "12.6", "12.5"))).toHaveLength(4);
    expect(valueOfDraft("clock-gaps", mm("12.4", "12.6"))).toMatchObject({ kind: "refused" });
    expect(valueOfDraft("solids", { typed: [], text: "fibrous" })).toBe("fibrous");
    expect(valueOfDraft("flush-fitted", { typed: [], text: "no" })).toBe(false);
    expect(valueOfDraft("stud-count", { typed: [], text: "4" })).toBe(4);
    expect(valueOfDraft("ph", { typed: [], text: "7,5" })).toBe(7.5);
    expect(valueOfDraft("fluids", { typed: [], chosen: ["potable-water"] })).toEqual(["potable-water"]);
    expect(valueOfDraft("depth", { typed: [], unknown: true })).toBeNull();
    expect(valueOfDraft("hot", { typed: [], unknown: true })).toBe("unknown");
    expect(valueOfDraft("nail-catches", { typed: [], unknown: true })).toBe("not-known");
  });

  test("what the survey would refuse is refused in its words, and stays typed", () => {
    expect(valueOfDraft("stud-count", { typed: [], text: "200" })).toMatchObject({ kind: "refused", says: { id: "number-outside" } });
    expect(valueOfDraft("stud-count", { typed: [], text: "2.5" })).toMatchObject({ kind: "refused", says: { id: "not-a-whole-number" } });
    expect(valueOfDraft("ph", { typed: [], text: "seven" })).toMatchObject({ kind: "refused", says: { id: "measure-not-number" } });
    expect(valueOfDraft("bore", mm("75.0", "wide"))).toMatchObject({ kind: "refused", at: 1 });
  });

  test("what was kept can be corrected: it comes back as it was typed, and unchanged says the same", () => {
    for (const [id, draft] of [
      ["shaft", { ...mm("49,97", "1 31/32 in"), how: "caliper" }],
      ["port-diameter", mm("6")],
      ["clock-gaps", mm("12.4", "12.6", "12.6", "12.5")],
      ["ph", { typed: [], text: "7.5" }],
      ["flush-fitted", { typed: [], text: "yes" }],
      ["renewed", { typed: [], chosen: ["sleeve"] }],
      ["sleeve", { typed: [], text: "hard-bronze" }],
      ["depth", { typed: [], unknown: true }],
    ] as const satisfies readonly (readonly [string, Draft])[]) {
      const value = valueOfDraft(id, draft);
      expect(valueOfDraft(id, draftOfValue(asked(id).asks, value as never)), id).toEqual(value);
    }
  });

  test("a draft is whole again after the page was killed; one that is no draft counts as nothing typed", () => {
    const draft: Draft = { ...mm("49,9"), how: "caliper", aside: 1, rounds: 1 };
    expect(readDraft(writeDraft(draft))).toEqual(draft);
    expect([readDraft("{"), readDraft("7"), readDraft(undefined)]).toEqual([undefined, undefined, undefined]);
  });
});

describe("a likely slip is asked about", () => {
  const slips = (id: string, draft: Draft, known = {}) => {
    const read = readAnswer(asked(id), draft);
    return read.kind === "value" ? slipsOf(asked(id), draft, read.value, { motion: "turning", ...known }, facts) : [];
  };

  test("ten times too small: a shaft of 5 mm where 50 was meant", () => {
    expect(slips("shaft", mm("5"))[0]).toMatchObject({ given: "5 mm", meant: [{ text: "50", unit: "mm" }, {}] });
  });

  test("an inch taken for a millimetre: 1.75 is 44.45", () => {
    expect(slips("shaft", mm("1.75"))[0]?.meant).toContainEqual({ text: "44.45", unit: "mm" });
  });

  test("one reading against the others", () => {
    expect(slips("shaft", mm("45.02", "45.01", "4.5"))).toMatchObject([{ at: 2, meant: [{ text: "45", unit: "mm" }] }]);
  });

  test("a comma before three digits", () => {
    const found = slips("rotation", { typed: [{ text: "1,450", unit: "rpm" }] });
    expect(found).toMatchObject([{ meant: [{ text: "1450", unit: "rpm" }] }]);
  });

  test("a bore that is no larger than the shaft, whichever is typed last", () => {
    expect(slips("bore", mm("45"), { shaft: metres(0.05) })).toHaveLength(1);
    expect(slips("shaft", mm("80"), { bore: metres(0.075) })).toHaveLength(1);
    expect(slips("bore", mm("75"), { shaft: metres(0.05) })).toEqual([]);
  });

  test("not again once it was said to be meant so", () => {
    expect(slips("shaft", { ...mm("5"), sure: ["5 mm"] })).toEqual([]);
    expect(checked(asked("shaft"), { ...mm("5"), sure: ["5 mm"] }, { motion: "turning" }, facts)).toMatchObject({ kind: "fine" });
  });

  test("what is likely is kept without a word", () => {
    expect(checked(asked("shaft"), mm("49.97"), { motion: "turning" }, facts)).toMatchObject({ kind: "fine" });
  });
});

describe("a second reading with the first hidden", () => {
  const again = (first: string, second: string): Draft => ({ ...mm(first, second), how: "caliper", aside: 1, rounds: 1 });

  test("agrees within what the way of measuring explains, else a third is asked for", () => {
    expect(compared(again("75.0", "75.05"), facts.uncertainty.instruments)?.agree).toBe(true);
    expect(compared(again("75.0", "75.9"), facts.uncertainty.instruments)?.agree).toBe(false);
    expect(checked(asked("bore"), again("75.0", "75.9"), { motion: "turning" }, facts)).toMatchObject({ kind: "apart" });
  });

  test("after the third all readings are kept, those that were hidden too", () => {
    const third: Draft = { ...mm("75.0", "75.9", "75.1"), how: "caliper", aside: 2, rounds: 2 };
    const looked = checked(asked("bore"), third, { motion: "turning" }, facts);
    expect(looked.kind === "fine" && looked.value).toMatchObject({ readings: [{}, {}, {}] });
  });
});

test("drafts that can be read are laid over what is known, the others leave it as it is", () => {
  const drafts = new Map([
    ["shaft", writeDraft(mm("50"))],
    ["bore", writeDraft(mm("7x"))],
  ]);
  const over = overlaid({ motion: "turning", bore: metres(0.075) }, drafts);
  expect(over).toMatchObject({ shaft: { readings: [{ value: 0.05 }] }, bore: metres(0.075) });
});

test("a time from paper is kept beside the time of typing", () => {
  expect(happenedAt("2031-04-30T14:05")).toBe(new Date(2031, 3, 30, 14, 5).getTime());
  expect([happenedAt(""), happenedAt(undefined), happenedAt("yesterday")]).toEqual([undefined, undefined, undefined]);
});
