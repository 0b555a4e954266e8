import { type Family, families } from "@ringwright/core/materials";
import { expect, test } from "vitest";
import type { Point } from "../shapes.ts";
import { rounded } from "../sheet/rounded.ts";
import { braid } from "./braid.ts";

const clear = { boxes: [], circles: [] };
const box = [0, 0, 10, 10] as const;
const outline = rounded(
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ],
  1.6,
);
const weave = (family: Family | undefined, relaxed = 1) => braid({ kind: "weave", family, relaxed }, box, outline, clear);
const ink = (lines: readonly (readonly Point[])[]) =>
  lines.reduce(
    (sum, line) =>
      sum + line.slice(1).reduce((length, [x, y], i) => length + Math.hypot(x - (line[i]?.[0] ?? 0), y - (line[i]?.[1] ?? 0)), 0),
    0,
  );

test("no weave runs out of its ring, nor into its rounded corners", () => {
  for (const family of families) {
    for (const [x, y] of weave(family).flat()) {
      expect(x >= -1e-9 && x <= 10 + 1e-9 && y >= -1e-9 && y <= 10 + 1e-9).toBe(true);
      // The corner at the origin is cut off by a curve through (0.4, 0.4).
      expect(x + y).toBeGreaterThan(0.75);
    }
  }
});

test("families that look alike share a weave; no other two have the same lines", () => {
  const alike = [
    ["graphite", "carbon"],
    ["ptfe"],
    ["aramid"],
    ["novoloid", "acrylic", "glass", "melamine", "injectable", "elastomer-core", undefined],
    ["vegetable-fibre"],
    ["metal"],
  ] as const;
  expect(new Set(alike.flat())).toEqual(new Set([...families, undefined]));
  const drawn = alike.map((group) => new Set(group.map((family) => JSON.stringify(weave(family)))));
  expect(drawn.map((lines) => lines.size)).toEqual([1, 1, 1, 1, 1, 1]);
  expect(new Set(drawn.flatMap((lines) => [...lines])).size).toBe(alike.length);
  for (const family of families) expect(ink(weave(family))).toBeGreaterThan(60);
});

test("graphite is the darkest and foil among the lightest, so a set can be told in black and white", () => {
  const dark = Object.fromEntries(families.map((family) => [family, ink(weave(family))])) as Record<Family, number>;
  for (const family of families) expect(dark[family]).toBeLessThanOrEqual(dark.graphite);
  expect(dark.metal).toBeLessThan(0.7 * dark.graphite);
});

test("a squeezed ring keeps its strands, so they lie closer", () => {
  const count = (lines: readonly (readonly Point[])[]) => lines.length;
  const squeezed = braid(
    { kind: "weave", family: "acrylic", relaxed: 1 },
    [0, 0, 7, 10],
    rounded(
      [
        [0, 0],
        [7, 0],
        [7, 10],
        [0, 10],
      ],
      1,
    ),
    clear,
  );
  expect(count(squeezed)).toBeGreaterThan(0.9 * count(weave("acrylic")));
});

test("a weave keeps clear of the number in its circle", () => {
  const circle = { centre: [5, 5] as const, radius: 2.5 };
  for (const family of families) {
    for (const [x, y] of braid({ kind: "weave", family, relaxed: 1 }, box, outline, { boxes: [], circles: [circle] }).flat()) {
      expect(Math.hypot(x - 5, y - 5)).toBeGreaterThan(2.5 - 1e-6);
    }
  }
});
