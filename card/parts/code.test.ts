import type { Point } from "@ringwright/drawings";
import fc from "fast-check";
import { expect } from "vitest";
import { property } from "../../testing/property.ts";
import { PdfCanvas } from "../pdf/canvas.ts";
import { Typesetter } from "../pdf/typesetter.ts";
import { emptyDocument } from "../testing/empty-document.ts";
import { fonts } from "../testing/issue.ts";
import { codeOf, codeSize } from "./code.ts";

class Noting extends PdfCanvas {
  readonly areas: (readonly Point[])[] = [];

  override area(pieces: readonly (readonly Point[])[]): void {
    this.areas.push(...pieces);
  }
}

const doc = emptyDocument();
const type = new Typesetter(doc, fonts);

property(
  "the modules of any link's code are 0.35 mm or more, with four of them free all round (ISO/IEC 18004)",
  [fc.webUrl({ size: "small" }).filter(({ length }) => length <= 255), fc.double({ min: 0, max: 30, noNaN: true })],
  (link, more) => {
    const code = codeOf(link);
    const side = codeSize(code) + more;
    const canvas = new Noting(doc, type);
    code.paint(canvas, 0, 0, side);
    const points = canvas.areas.flat();
    const heights = canvas.areas.map((corners) => Math.max(...corners.map(([, y]) => y)) - Math.min(...corners.map(([, y]) => y)));
    const module = Math.min(...heights);
    expect(module).toBeGreaterThanOrEqual(0.35 - 1e-9);
    const across = points.flat();
    expect(Math.min(...across)).toBeGreaterThanOrEqual(4 * module - 1e-9);
    expect(Math.max(...across)).toBeLessThanOrEqual(side - 4 * module + 1e-9);
    // Three finder patterns: seven modules dark at the top left corner.
    const [first] = canvas.areas;
    expect((first?.[1]?.[0] ?? 0) - (first?.[0]?.[0] ?? 0)).toBeCloseTo(7 * module, 6);
  },
);
