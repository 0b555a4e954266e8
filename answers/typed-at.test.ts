import { expect, test } from "vitest";
import { typedAt } from "./typed-at.ts";

const question = { parts: [{ height: "10 mm" }, { height: { value: 12, unit: "mm" } }], sleeve: "hard bronze", shaft: 5 };

test("what stands at a path is found as it was typed", () => {
  expect(typedAt(question, "parts[1].height")).toEqual({ path: "parts[1].height", typed: { value: 12, unit: "mm" } });
  expect(typedAt(question, "shaft")).toEqual({ path: "shaft", typed: 5 });
});

test("a group given as one word is echoed by the word, under its own name", () => {
  expect(typedAt(question, "sleeve.material")).toEqual({ path: "sleeve", typed: "hard bronze" });
});

test("what was not typed is not found, names of the language included", () => {
  for (const path of ["bore", "parts[2].height", "parts[0].ratio", "constructor", "__proto__", "shaft[", ""]) {
    expect(typedAt(question, path)?.path, path).not.toBe(path);
  }
});
