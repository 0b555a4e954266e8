import { english } from "@ringwright/words";
import fc from "fast-check";
import { expect } from "vitest";
import { property } from "../../testing/property.ts";
import { drawBoxSection } from "../index.ts";
import { overlapsOf } from "../testing/overlaps.ts";
import { randomBox } from "../testing/random-box.ts";
import { layOut, type Page } from "./lay-out.ts";

const page = (width: number, system: "metric" | "inch" = "metric", size = 3.5): Page => ({
  width,
  size,
  show: { catalogue: english, system },
  heading: true,
});

property(
  "nothing overlaps in the drawing of any box, on a phone, a tablet, a desk or a sheet of paper",
  [randomBox, fc.constantFrom(70, 95, 103, 150, 186, 200, 300, 420), fc.constantFrom("metric" as const, "inch" as const)],
  (box, width, system) => {
    const drawing = drawBoxSection(box);
    expect(drawing.shapes.length).toBeGreaterThan(0);
    expect(overlapsOf(layOut(drawing, page(width, system)))).toEqual([]);
  },
);
