import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property, runs } from "../../testing/property.ts";
import { formatQuantity, type Kind, kinds, parseQuantity, quantity, seenIn, unitsOf } from "./index.ts";

const inches = (n: number) => quantity("length", n, "in");
const mm = (n: number) => quantity("length", n, "mm");
const parsed = (text: string, kind: Kind, beside?: string): number => {
  const read = parseQuantity(text, kind, beside);
  return read.ok ? read.quantity.value : Number.NaN;
};

describe("what people write for a length", () => {
  const cases: readonly (readonly [string, number])[] = [
    ["45 mm", mm(45)],
    ["45mm", mm(45)],
    ["  45\u00a0mm ", mm(45)],
    ["45\u2009mm", mm(45)],
    ["4.5 cm", mm(45)],
    ["12,5 mm", mm(12.5)],
    [",375 in", inches(0.375)],
    [".375 in", inches(0.375)],
    ['0,375"', inches(0.375)],
    ["1 3/4 in", inches(1.75)],
    ['1-3/4"', inches(1.75)],
    ["1-3/4 in.", inches(1.75)],
    ["1 3/4″", inches(1.75)],
    ["1¾ in", inches(1.75)],
    ["1 ¾ in", inches(1.75)],
    ["⅜ inch", inches(0.375)],
    ["11/8 in", inches(1.375)],
    ["1' 2 1/2\"", inches(14.5)],
    ["1′ 2″", inches(14)],
    ["2 ft", inches(24)],
    ["1 200 mm", mm(1200)],
    ["50 µm", mm(0.05)],
    ["50 μm", mm(0.05)],
    ["2 thou", inches(0.002)],
    ["٣٥ mm", mm(35)],
    ["３５ mm", mm(35)],
    ["-0.2 mm", mm(-0.2)],
    ["−0.2 mm", mm(-0.2)],
    ["1e1 mm", mm(10)],
    ["45 MM", mm(45)],
  ];
  for (const [text, value] of cases) test(text, () => expect(parsed(text, "length")).toBeCloseTo(value, 12));
});

describe("what people write for other things", () => {
  const cases: readonly (readonly [string, Kind, number])[] = [
    ["2.5 bar", "pressure", 250000],
    ["2,5 bar(g)", "pressure", 250000],
    ["36 psi", "pressure", 36 * 6894.757293168361],
    ["36 psig", "pressure", 36 * 6894.757293168361],
    ["30 psia", "absolute-pressure", 30 * 6894.757293168361],
    ["1 bar abs", "absolute-pressure", 100000],
    ["0.5 N/mm²", "stress", 500000],
    ["80 °C", "temperature", 353.15],
    ["80°C", "temperature", 353.15],
    ["80 C", "temperature", 353.15],
    ["80 degC", "temperature", 353.15],
    ["176 F", "temperature", 353.15],
    ["20 K", "temperature-difference", 20],
    ["36 °F", "temperature-difference", 20],
    ["1450 rpm", "rotation", (1450 * Math.PI) / 30],
    ["1450 1/min", "rotation", (1450 * Math.PI) / 30],
    ["1 450 rpm", "rotation", (1450 * Math.PI) / 30],
    ["25 ft-lb", "torque", 25 * 1.3558179483314],
    ["25 ft·lbf", "torque", 25 * 1.3558179483314],
    ["30 Nm", "torque", 30],
    ["30 N·m", "torque", 30],
    ["10 mL/min", "flow", 10e-6 / 60],
    ["1 gpm", "flow", 6.30901964e-5],
    ["1 cP", "viscosity", 0.001],
    ["30°", "angle", Math.PI / 6],
    ["1.2 kN", "force", 1200],
    ["100 lb", "force", 444.82216152605],
    ["30 N.m", "torque", 30],
    ["25 ft.lb", "torque", 25 * 1.3558179483314],
    ["20 ℃", "temperature", 293.15],
    ["3 L/s", "flow", 0.003],
    ["30 m/min", "speed", 0.5],
    ["50 µL", "volume", 5e-8],
    ["2 bar (abs)", "absolute-pressure", 200000],
    ["2 bar abs.", "absolute-pressure", 200000],
    ["1 kgf/cm2 g", "pressure", 98066.5],
  ];
  for (const [text, kind, value] of cases) {
    test(`${text} is a ${kind}`, () => expect(Math.abs(parsed(text, kind) / value - 1)).toBeLessThan(1e-14));
  }
});

test("a bare number takes the unit shown beside the field, and is refused where none is shown", () => {
  expect(parsed("45", "length", "mm")).toBe(mm(45));
  expect(parsed("1 3/4", "length", "in")).toBe(inches(1.75));
  expect(parseQuantity("45", "length")).toMatchObject({ ok: false, unread: { kind: "missing", typed: "45" } });
});

test("a unit typed wins over the one shown beside the field", () => {
  expect(parsed('1"', "length", "mm")).toBe(inches(1));
});

test("three digits after a single comma are read as decimals, and the other reading is kept for asking", () => {
  expect(parseQuantity("1,450 rpm", "rotation")).toMatchObject({
    ok: true,
    quantity: { value: quantity("rotation", 1.45, "rpm"), mayMean: quantity("rotation", 1450, "rpm") },
  });
  expect(parseQuantity("12,5 mm", "length")).not.toHaveProperty("quantity.mayMean");
  expect(parseQuantity("0,375 in", "length")).not.toHaveProperty("quantity.mayMean");
});

test("a gauge reading is not taken for an absolute one, nor the other way round", () => {
  expect(parseQuantity("30 psia", "pressure")).toMatchObject({ ok: false, unread: { kind: "wrong-unit", from: "absolute" } });
  expect(parseQuantity("30 psig", "absolute-pressure")).toMatchObject({ ok: false, unread: { kind: "wrong-unit", from: "gauge" } });
  expect(parseQuantity("30 mm", "pressure")).not.toHaveProperty("unread.from");
});

test("millipascal is never read as megapascal, nor megametre as millimetre", () => {
  expect(parseQuantity("3 mPa", "stress").ok).toBe(false);
  expect(parseQuantity("3 Mm", "length").ok).toBe(false);
  expect(parsed("3 mPa·s", "viscosity")).toBe(0.003);
});

test("what is no quantity is refused with the text kept", () => {
  for (const text of [
    "",
    " ",
    "mm",
    "abc",
    "5o mm",
    "1/0 in",
    "1 3/4/2 in",
    "1,234.5 mm",
    "NaN mm",
    "Infinity mm",
    "--5 mm",
    "5 5 mm",
    "1..2 mm",
    "x".repeat(500),
  ]) {
    const read = parseQuantity(text, "length");
    expect(read.ok, text).toBe(false);
    if (!read.ok) expect(read.unread.typed).toBe(text);
  }
  expect(parseQuantity("1e999 mm", "length")).toMatchObject({ ok: false, unread: { kind: "outside-range" } });
  expect(parseQuantity("45 kg", "length")).toMatchObject({ ok: false, unread: { kind: "wrong-unit", unit: "kg" } });
});

const aKind = fc.constantFrom(...kinds);

property(
  "any number of unit toggles changes nothing: not the value, not the text, not what is shown in the typed unit",
  [
    aKind,
    fc.integer({ min: -9999, max: 9999 }),
    fc.integer({ min: 1, max: 64 }),
    fc.array(fc.nat({ max: 20 }), { minLength: 1, maxLength: 8 }),
  ],
  (kind, whole, den, toggles) => {
    const all = unitsOf(kind);
    const typedIn = all[Math.abs(whole) % all.length]?.symbol ?? "";
    const text = kind === "length" ? `${Math.abs(whole)} ${(Math.abs(whole) % den) + 1}/${den + 1} ${typedIn}` : `${whole / 8} ${typedIn}`;
    const read = parseQuantity(text, kind);
    expect(read.ok, text).toBe(true);
    if (!read.ok) return;
    const before = JSON.stringify(read.quantity);
    const shown = seenIn(read.quantity, read.quantity.unit).value;
    for (const toggle of toggles) seenIn(read.quantity, all[toggle % all.length]?.symbol ?? "");
    expect(seenIn(read.quantity, read.quantity.unit).value).toBe(shown);
    expect(JSON.stringify(read.quantity)).toBe(before);
  },
  "unit-toggles",
);

property("what is shown can be typed back", [aKind, fc.double({ min: 1, max: 1e5, noNaN: true })], (kind, value) => {
  const text = formatQuantity(kind, value as never, { digits: 12 });
  expect(Math.abs(parsed(text, kind) / value - 1)).toBeLessThan(1e-8);
});

property(
  "no text makes the reader throw or give a number that is none",
  [fc.oneof(fc.string({ maxLength: 40 }), fc.stringMatching(/^[0-9.,/ '"e+-]{0,12}(mm|in|bar|psi|°C|rpm|")?$/u)), aKind],
  (text, kind) => {
    const read = parseQuantity(text, kind, "mm");
    if (read.ok) expect(Number.isFinite(read.quantity.value)).toBe(true);
    else expect(read.unread.typed).toBe(text);
  },
  "fuzz",
);

test("the tier's count of toggles is the one that is run", () => expect(runs("unit-toggles")).toBeGreaterThanOrEqual(10000));
