import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import type { Point } from "../shapes.ts";
import { hatch } from "./hatch.ts";

const square: readonly Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

test("hatching leans at 45 degrees, one way or the other", () => {
  for (const lean of [45, -45] as const) {
    for (const [[ax, ay], [bx, by]] of hatch(square, lean, 1.7)) expect((by - ay) / (bx - ax)).toBeCloseTo(lean === 45 ? 1 : -1, 9);
  }
});

property(
  "hatching has the length that the area asks for: area over spacing, for an L as for a rectangle",
  [fc.double({ min: 2, max: 40, noNaN: true }), fc.double({ min: 2, max: 40, noNaN: true }), fc.constantFrom(45 as const, -45 as const)],
  (w, h, lean) => {
    const ell: readonly Point[] = [
      [0, 0],
      [w, 0],
      [w, h / 2],
      [w / 2, h / 2],
      [w / 2, h],
      [0, h],
    ];
    const spacing = 0.01;
    const drawn = hatch(ell, lean, spacing).reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0);
    const area = (3 / 4) * w * h;
    expect(Math.abs(drawn * spacing - area) / area).toBeLessThan(0.02);
  },
);
