import { inUnit, type Length, quantity } from "@ringwright/core/units";
import { english } from "@ringwright/words";
import fc, { type Arbitrary } from "fast-check";
import { expect, test } from "vitest";
import { property } from "../testing/property.ts";
import { hardnessRuler, runoutRuler } from "./gallery/rulers.ts";
import { drawLimitRuler, type LimitRuler } from "./index.ts";
import { layOut } from "./sheet/lay-out.ts";
import { overlapsOf } from "./testing/overlaps.ts";
import { reading } from "./text/reading.ts";

const names = ["ISO 9908", "MIL-HDBK-1164", "Mobley 1999", "common practice", "axial-flow pump manual", "MO-209", "slurry-seal sheet"];

/** Rulers of any size with up to eight limits, alike or far apart, with and without a house limit and a reading. */
const randomRuler: Arbitrary<LimitRuler> = fc
  .record({
    unit: fc.constantFrom("m" as const, "1" as const),
    size: fc.constantFrom(1e-6, 1e-4, 1e-3, 0.1),
    shares: fc.array(fc.oneof(fc.double({ min: 0.05, max: 1, noNaN: true }), fc.constantFrom(0.3, 0.301, 0.5, 0.5005)), {
      minLength: 1,
      maxLength: 8,
    }),
    sources: fc.array(fc.constantFrom(...names), { minLength: 8, maxLength: 8 }),
    beside: fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
    house: fc.option(fc.double({ min: 0.05, max: 1.5, noNaN: true })),
    measured: fc.option(fc.tuple(fc.double({ min: 0, max: 6, noNaN: true }), fc.double({ min: 0, max: 0.2, noNaN: true }))),
  })
  .map(({ unit, size, shares, sources, beside, house, measured }) => {
    const scale = unit === "m" ? size : 400;
    return {
      title: "runout",
      unit,
      limits: shares.map((share, i) => ({ value: share * scale, source: sources[i] ?? "", ...(beside[i] ? { beside: true } : {}) })),
      ...(house === null ? {} : { house: { value: house * scale, setBy: "reliability engineer" } }),
      ...(measured === null ? {} : { measured: { value: measured[0] * scale, standardUncertainty: measured[1] * scale } }),
    };
  });

const page = (width: number, system: "metric" | "inch") => ({ width, size: 3.4, show: { catalogue: english, system }, heading: false });
const systems = fc.constantFrom("metric" as const, "inch" as const);
/** From a phone of 320 CSS pixels to a desk. */
const widths = fc.constantFrom(76, 85, 110, 148, 200);

property(
  "nothing overlaps on any ruler, on a phone as on a desk, in millimetres as in inches",
  [randomRuler, widths, systems],
  (ruler, width, system) => {
    const sheet = layOut(drawLimitRuler(ruler), page(width, system));
    expect(overlapsOf(sheet)).toEqual([]);
    expect(sheet.placed.texts.length).toBeGreaterThan(1);
  },
);

property(
  "every limit, the house limit and the reading stand at their place along the ruler, to a millionth of its length",
  [randomRuler, widths, systems],
  (ruler, width, system) => {
    const { placed, scale } = layOut(drawLimitRuler(ruler), page(width, system));
    const at = (id: string) => placed.paths.find((path) => path.id === id)?.pieces[0]?.[0]?.[0] ?? Number.NaN;
    const own = (value: number) => (ruler.unit === "m" ? inUnit("length", value as Length, "mm") : value);
    const values = [...new Set(ruler.limits.map(({ value }) => value))].sort((a, b) => a - b);
    const marks = values.filter((value, i) => i === 0 || value - (values[i - 1] ?? 0) > 1e-9);
    const length = Math.max(...values.map(own), own(ruler.house?.value ?? 0), own(ruler.measured?.value ?? 0)) * scale;
    const near = (id: string, value: number) => expect(Math.abs(at(id) - own(value) * scale)).toBeLessThan(1e-6 * length);
    for (const [i, value] of marks.entries()) near(`limit-${i + 1}`, value);
    if (ruler.house) near("house", ruler.house.value);
    if (ruler.measured) near("measured-mark", ruler.measured.value);
  },
);

test("two sources that say the same are one mark with both names, and the band runs from the strictest to the widest", () => {
  const drawing = drawLimitRuler(runoutRuler);
  const marks = drawing.labels.filter(({ place }) => place === "under").map(({ lines }) => lines.map(({ text }) => text).join(", "));
  expect(marks).toEqual(["MIL-HDBK-1164, Mobley 1999", "FIST 4-1A", "ISO 9908", "axial-flow pump manual", "MO-209"]);
  const band = drawing.shapes.find(({ id }) => id === "spread")?.points.map(([x]) => x) ?? [];
  // 0.002 in is 0.0508 mm, 0.006 in is 0.1524 mm.
  expect([Math.min(...band), Math.max(...band)]).toEqual([expect.closeTo(0.0508, 9), expect.closeTo(0.1524, 9)]);
});

test("the bar is as long as the reading is unsure: two standard uncertainties either way", () => {
  const bar =
    drawLimitRuler(runoutRuler)
      .shapes.find(({ id }) => id === "measured-reach")
      ?.points.map(([x]) => x) ?? [];
  expect([Math.min(...bar), Math.max(...bar)]).toEqual([expect.closeTo(0.048, 9), expect.closeTo(0.072, 9)]);
});

test("limits far from nought do not crowd at the end of the ruler, and its beginning says where it begins", () => {
  const { shapes, labels } = drawLimitRuler(hardnessRuler);
  const ends = shapes.find(({ id }) => id === "ruler")?.points.map(([x]) => x) ?? [];
  expect(Math.min(...ends)).toBeGreaterThan(150);
  expect(Math.min(...ends)).toBeLessThan(250);
  expect(labels.some(({ id, lines }) => id === "start" && JSON.stringify(lines).includes(String(Math.round(Math.min(...ends)))))).toBe(
    true,
  );
});

test("a ruler of nothing, or of readings below nought, says why it is not drawn", () => {
  for (const bad of [
    { ...runoutRuler, limits: [], house: undefined, measured: undefined },
    { ...runoutRuler, measured: { value: Number.NaN, standardUncertainty: 0 } },
    { ...runoutRuler, limits: [{ value: -1, source: "ISO 9908" }] },
  ]) {
    const { house, measured, ...rest } = bad;
    const drawing = drawLimitRuler({ ...rest, ...(house ? { house } : {}), ...(measured ? { measured } : {}) });
    expect(drawing.shapes).toEqual([]);
    expect(drawing.notes.map(({ text }) => text)).toEqual([{ id: "drawing-cannot-ruler" }]);
  }
});

test("a value is written in the reader's unit, without idle noughts: 0.0508 mm is 0.002 in", () => {
  const value = quantity("length", 0.0508, "mm");
  const shown = { value, unit: "m", among: 0.00015, named: true } as const;
  expect(reading(shown, "metric")).toBe("0.051\u00a0mm");
  expect(reading(shown, "inch")).toBe("0.002\u00a0in");
  expect(reading({ value: 0.0000032, unit: "m", among: 0.0000032, named: true }, "metric")).toBe("3.2\u00a0µm");
  expect(reading({ value: 0.0875, unit: "m", among: 0.092 }, "metric")).toBe("87.5");
  expect(reading({ value: 250, unit: "1", among: 300 }, "inch")).toBe("250");
});
