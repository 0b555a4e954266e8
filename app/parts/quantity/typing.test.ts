import { describe, expect, test } from "vitest";
import { pressed } from "./keys.ts";
import { draftOf, otherUnit, readTyping, typingOf, unitBeside } from "./typing.ts";

const inMm = (text: string) => readTyping({ text, unit: "mm" }, "length", "shaft");
const inInches = (text: string) => readTyping({ text, unit: "in" }, "length", "shaft");

describe("a number as people type it", () => {
  // 1 in is 25.4 mm exactly (1959).
  test.each([
    ["12,5", 0.0125],
    ["12.5", 0.0125],
    ["12,5 mm", 0.0125],
    ["45\u00a0mm", 0.045],
    ["45\u2009mm", 0.045],
    ['1-3/4"', 0.04445],
    ["1 3/4 in", 0.04445],
    ["1 3/4in", 0.04445],
  ])("%j beside mm", (text, metres) => {
    const read = inMm(text);
    expect(read.kind === "read" && read.value).toBeCloseTo(metres, 12);
  });

  test("beside inches a bare fraction is in inches", () => {
    const read = inInches("1 3/4");
    expect(read.kind === "read" && read.value).toBeCloseTo(0.04445, 12);
  });

  test("what was typed is kept, with the unit beside it where it had none of its own", () => {
    const kept = (text: string, unit: string) => {
      const read = readTyping({ text, unit }, "length", "shaft");
      return read.kind === "read" ? read.measured.typed : read;
    };
    expect(kept("50", "mm")).toBe("50 mm");
    expect(kept(" 49,97 ", "mm")).toBe("49,97 mm");
    expect(kept("1 3/4", "in")).toBe("1 3/4 in");
    expect(kept('1-3/4"', "mm")).toBe('1-3/4"');
  });

  test("a refusal names the field and what was given", () => {
    const read = inMm("fifty");
    expect(read.kind === "refused" && read.says).toMatchObject({ id: "not-a-quantity", with: { input: "shaft", given: "fifty" } });
    expect(inMm("3 bar").kind).toBe("refused");
    expect(inMm("  ").kind).toBe("empty");
  });
});

describe("the unit beside a field", () => {
  test("follows the reader until something is typed, then stays with it", () => {
    expect(unitBeside({ text: "", unit: "mm" }, "length", "inch")).toBe("in");
    expect(unitBeside({ text: "50", unit: "mm" }, "length", "inch")).toBe("mm");
  });

  test("can be changed where the systems differ", () => {
    expect([otherUnit("mm", "length"), otherUnit("in", "length"), otherUnit("psi", "pressure"), otherUnit("rpm", "rotation")]).toEqual([
      "in",
      "mm",
      "bar",
      undefined,
    ]);
  });

  test("is part of the draft, so that a killed page finds it again", () => {
    expect(typingOf(draftOf({ text: "1 3/4", unit: "in" }))).toEqual({ text: "1 3/4", unit: "in" });
  });
});

describe("keys", () => {
  const at = (text: string) => ({ text, from: text.length, to: text.length });
  test("a fraction follows the whole inches, and takes the place of another", () => {
    expect(pressed(at("1"), { does: "fraction", text: "3/4" }).text).toBe("1 3/4");
    expect(pressed(at(""), { does: "fraction", text: "3/8" }).text).toBe("3/8");
    expect(pressed(at("1 3/4"), { does: "fraction", text: "13/16" }).text).toBe("1 13/16");
    expect(pressed(at("3/4"), { does: "fraction", text: "1/2" }).text).toBe("1/2");
  });

  test("write and rub out at the caret, or what is marked", () => {
    expect(pressed({ text: "497", from: 2, to: 2 }, { does: "write", text: "." })).toEqual({ text: "49.7", from: 3, to: 3 });
    expect(pressed({ text: "49.7", from: 0, to: 4 }, { does: "write", text: "5" })).toEqual({ text: "5", from: 1, to: 1 });
    expect(pressed({ text: "49.7", from: 3, to: 3 }, { does: "rub-out" })).toEqual({ text: "497", from: 2, to: 2 });
    expect(pressed({ text: "497", from: 0, to: 0 }, { does: "rub-out" })).toEqual({ text: "497", from: 0, to: 0 });
  });
});
