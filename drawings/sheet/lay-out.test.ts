import { english } from "@ringwright/words";
import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { largeShaft, stockPump, valveStem } from "../gallery/boxes.ts";
import { drawBoxSection, drawCutStrip, drawJointClock, drawStressCurve } from "../index.ts";
import { overlapsOf } from "../testing/overlaps.ts";
import { randomBox } from "../testing/random-box.ts";
import { randomJoints, randomPush, randomStrip } from "../testing/random-rings.ts";
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

property(
  "nothing overlaps at a scale that was asked for, however small",
  [randomBox, fc.constantFrom(0.05, 0.1, 0.2, 0.5, 1)],
  (box, scale) => {
    const { width: _, ...rest } = page(0);
    const sheet = layOut(drawBoxSection(box), { ...rest, scale });
    expect(overlapsOf(sheet)).toEqual([]);
    expect(sheet.scale * sheet.shrunk).toBeCloseTo(scale, 12);
  },
);

const narrow = fc.constantFrom(60, 95, 103, 150, 300);

property("nothing overlaps in a joint clock", [randomJoints, narrow], (joints, width) => {
  expect(overlapsOf(layOut(drawJointClock(joints), page(width)))).toEqual([]);
});

property(
  "nothing overlaps on the strip to cut",
  [randomStrip, narrow, fc.constantFrom("metric" as const, "inch" as const)],
  (strip, width, system) => {
    expect(overlapsOf(layOut(drawCutStrip(strip), page(width, system)))).toEqual([]);
  },
);

property("nothing overlaps where the push is drawn, and the curves keep clear of every figure", [randomPush, narrow], (push, width) => {
  expect(overlapsOf(layOut(drawStressCurve(push), page(width)))).toEqual([]);
});

test("the check for overlaps sees one: a text moved onto its neighbour, a line drawn through a text", () => {
  const sheet = layOut(drawBoxSection(stockPump), page(150));
  expect(overlapsOf(sheet)).toEqual([]);
  const [first, ...rest] = sheet.placed.texts;
  const other = rest.find(({ id }) => id === "figure-depth");
  if (!first || !other) throw new Error("no texts");
  const moved = { ...sheet, placed: { ...sheet.placed, texts: [{ ...first, box: other.box }, ...rest] } };
  expect(overlapsOf(moved)).toContainEqual(expect.stringContaining("figure-depth"));
  const [x0, y0, x1, y1] = other.box;
  const struck = {
    layer: "thin",
    ink: "quiet",
    closed: false,
    filled: false,
    role: "dimension",
    pieces: [
      [
        [x0 - 1, y0 - 1],
        [x1 + 1, y1 + 1],
      ],
    ],
  } as const;
  expect(overlapsOf({ ...sheet, placed: { ...sheet.placed, paths: [...sheet.placed.paths, struck] } })).toEqual([
    "dimension thin  over text figure-depth",
  ]);
});

test("a page that is too narrow to read is laid out wider and shrunk as a whole", () => {
  const sheet = layOut(drawBoxSection(stockPump), page(30));
  expect(sheet.shrunk).toBeLessThan(1);
  expect((sheet.frame[2] - sheet.frame[0]) * sheet.shrunk).toBeCloseTo(30, 6);
  expect(overlapsOf(sheet)).toEqual([]);
});

test("a wider page makes a larger drawing, and the page is filled", () => {
  for (const box of [stockPump, valveStem, largeShaft]) {
    const sheets = [105, 125, 150, 190, 240, 300, 400].map((width) => ({ width, sheet: layOut(drawBoxSection(box), page(width)) }));
    for (const [i, { width, sheet }] of sheets.entries()) {
      expect(sheet.frame[2] - sheet.frame[0]).toBeCloseTo(width, 6);
      expect(sheet.scale).toBeGreaterThan(sheets[i - 1]?.sheet.scale ?? 0);
    }
  }
});
