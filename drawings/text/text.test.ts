import { quantity } from "@ringwright/core/units";
import { english } from "@ringwright/words";
import { expect, test } from "vitest";
import { drawingsSentences } from "../../words/en/drawings.ts";
import { figure } from "./figure.ts";
import { runsOf, runsWidth, wrap } from "./runs.ts";
import { widthOf } from "./widths.ts";

/** The width of a character that the table does not know. */
const unknown = widthOf("\u4e2d", "words", false);

test("every character of Latin text and of the words in drawings has a width of its own", () => {
  const latin = Array.from({ length: 0x17f - 0x20 }, (_, i) => String.fromCharCode(0x20 + i)).filter(
    (one) => (one < "\u007f" || one >= "\u00a0") && one < "\u0100" && one !== "\u00ad",
  );
  const used = Object.values(drawingsSentences).join("");
  for (const one of new Set([...latin, ...used])) {
    for (const heavy of [false, true]) expect([one, widthOf(one, "words", heavy) < unknown]).toEqual([one, true]);
  }
  expect(english.sentences["drawing-air-side"]).toBe("air side");
});

// Advance widths in thousandths of the font size, read from the font files: Atkinson Hyperlegible Next 400 (OpenType, units 1000 to the em), DejaVu Sans 2.37.
test("no text is kept less room than the fonts take", () => {
  for (const [one, atkinson, dejavu] of [
    ["0", 648, 636],
    ["A", 626, 684],
    ["i", 252, 278],
    ["W", 926, 989],
    ["Ø", 714, 787],
    ["°", 352, 500],
    [" ", 280, 318],
  ] as const) {
    expect(widthOf(one, "words", false) * 1000).toBeGreaterThanOrEqual(Math.max(atkinson, dejavu) - 0.5);
  }
  // Both mono faces have one width for every character: 632 and 602.
  expect(widthOf("Ø75.0", "numbers", false)).toBeCloseTo(5 * 0.632, 9);
});

test("numbers with their unit stand in the face for numbers, the rest in the face for words", () => {
  const faces = (text: string) => runsOf(text).map(({ text: part, face }) => `${face}:${part}`);
  expect(faces("flush 2.4\u00a0bar")).toEqual(["words:flush ", "numbers:2.4\u00a0bar"]);
  expect(faces("Stock pump 2, coupling-side box")).toEqual(["words:Stock pump ", "numbers:2", "words:, coupling-side box"]);
  expect(faces("port Ø6.0\u00a0mm, open")).toEqual(["words:port ", "numbers:Ø6.0\u00a0mm", "words:, open"]);
  expect(faces("pump side")).toEqual(["words:pump side"]);
  expect(
    runsOf("12 studs, 3 left")
      .map(({ text }) => text)
      .join(""),
  ).toBe("12 studs, 3 left");
});

test("a line breaks where it must and loses no word", () => {
  const text = "The middle of the shaft is left out; the diameters are as stated.";
  const lines = wrap(text, 60, 3.5);
  expect(lines.length).toBeGreaterThan(1);
  expect(lines.join(" ")).toBe(text);
  for (const line of lines) expect(runsWidth(runsOf(line), 3.5)).toBeLessThanOrEqual(60);
});

test("a length is printed as a caliper shows it, or as a rule does", () => {
  const mm = (value: number) => quantity("length", value, "mm");
  expect(figure(mm(78.5), "metric")).toBe("78.5");
  expect(figure(mm(92), "metric")).toBe("92");
  expect(figure(mm(50), "metric", { diameter: true })).toBe("Ø50.0");
  expect(figure(mm(196.35), "metric", { byRule: true })).toBe("196");
  // 78.5 / 25.4 = 3.0906; 196.35 / 25.4 = 7.7303
  expect(figure(mm(78.5), "inch")).toBe("3.091");
  expect(figure(mm(196.35), "inch", { byRule: true })).toBe("7.73");
});
