import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../../testing/property.ts";
import { rows, width, wrap } from "./layout.ts";

property(
  "no wrapped line is wider than the page unless a single word is, and no word is lost",
  [fc.array(fc.stringMatching(/^[a-zé°]{1,12}$/u), { maxLength: 60 })],
  (words) => {
    const wrapped = wrap(words.join(" "), "  ! ");
    for (const line of wrapped.split("\n")) expect(line.length).toBeLessThanOrEqual(width);
    expect(wrapped.replace("!", "").split(/\s+/u).filter(Boolean)).toEqual(words.filter(Boolean));
  },
);

test("values line up by the decimal mark", () => {
  const lines = rows([
    { label: "shaft", value: "49.97 mm" },
    { label: "depth", value: "92 mm" },
    { label: "coil", value: "1.01 m", note: "with trim" },
  ]).split("\n");
  const marks = [lines[0]?.indexOf("."), (lines[1]?.indexOf("92") ?? 0) + 2, lines[2]?.indexOf(".")];
  expect(new Set(marks).size).toBe(1);
  expect(lines[2]).toContain("with trim");
});
