import { quantity } from "@ringwright/core/units";
import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { stockPump } from "../gallery/boxes.ts";
import { type BoxDrawing, drawBoxSection, fillsMoved, sheetOf, toSvg } from "../index.ts";

const at = (gland: number): BoxDrawing => ({ ...stockPump, moved: { gland: quantity("length", gland, "mm"), share: 0.4 } });
const start = sheetOf(drawBoxSection(at(0)), { width: 190, heading: false });
const still = toSvg(start.drawing, { like: start, width: 190, heading: false });
const movement = fc.double({ min: 0, max: 15, noNaN: true });

/** Leftmost and rightmost x of a path on the page. */
function across(svg: string, id: string): readonly [number, number] {
  const d = new RegExp(`id="box-section-${id}"[^>]* d="([^"]+)"`, "u").exec(svg)?.[1] ?? "";
  const xs = [...d.matchAll(/(-?[\d.]+) -?[\d.]+/gu)].map(([, x]) => Number(x));
  return [Math.min(...xs), Math.max(...xs)];
}

property("hatching and weave are carried to where the outline of their part is drawn", [movement], (gland) => {
  const after = drawBoxSection(at(gland));
  const svg = toSvg(after, { like: start, bare: true, width: 190, heading: false });
  for (const ring of ["ring-1-upper", "ring-2-lower", "ring-3-upper", "ring-5-lower", "follower-upper", "lantern-lower-gland"]) {
    const [a, , , , e] =
      /matrix\(([^)]+)\)/u
        .exec(fillsMoved(start, after).get(`${ring}-fill`) ?? "")?.[1]
        ?.split(" ")
        .map(Number) ?? [];
    const [from, to] = across(still, ring);
    const [nowFrom, nowTo] = across(svg, ring);
    expect((a ?? 0) * from + (e ?? 0)).toBeCloseTo(nowFrom, 3);
    expect((a ?? 0) * to + (e ?? 0)).toBeCloseTo(nowTo, 3);
  }
});

property("what does not move lies on the same spot of the page, whatever the movement", [movement], (gland) => {
  const svg = toSvg(drawBoxSection(at(gland)), { like: start, bare: true, width: 190, heading: false });
  for (const part of ["housing-upper-outline", "shaft", "ring-1-upper"]) expect(across(svg, part)[0]).toBe(across(still, part)[0]);
  expect(/viewBox="([^"]+)"/u.exec(svg)?.[1]?.split(" ")[2]).toBe(/viewBox="([^"]+)"/u.exec(still)?.[1]?.split(" ")[2]);
});

test("drawn like itself, a drawing is the same to the letter; bare, it lacks hatching and weave and nothing else", () => {
  const drawing = drawBoxSection(at(0));
  const whole = toSvg(drawing, { width: 190, heading: false });
  expect(toSvg(drawing, { width: 190, heading: false, like: start })).toBe(whole);
  const lines = whole.split("\n").filter((line) => !/class="(?:hatch|weave)"/u.test(line));
  expect(toSvg(drawing, { width: 190, heading: false, bare: true }).split("\n")).toEqual(lines);
  expect(whole.split("\n").length - lines.length).toBe(start.drawing.shapes.filter(({ fill }) => fill).length);
});
