import { expect, test } from "vitest";
import table from "../../data/tables/unit-factors.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { inUnit, type Kind, parseQuantity, quantity, unitsOf } from "./index.ts";
import { findUnit, units } from "./unit.ts";

const known = table.factors.flatMap((row) => {
  const unit = findUnit(row.unit.replace("ft lbf", "ft*lbf"));
  return unit && row.exact ? [{ ...row, unit }] : [];
});

against(
  {
    topic: "units",
    check: "Conversion factors",
    source: { source: "nist-sp-811", at: "definitions as exact fractions, worked out with rational arithmetic" },
    tolerance: "one unit in the last place of a double",
  },
  known.map((row) => ({
    what: `one ${row.unit.symbol}`,
    theirs: row.value,
    ours: () => quantity(row.unit.kinds[0] as Kind, 1, row.unit.symbol) as number,
    unit: row.unit.kinds[0] ?? "",
    within: { relative: 3e-16 },
  })),
);

against(
  {
    topic: "units",
    check: "Fractions of an inch in millimetres",
    source: { source: "nist-sp-811", at: "25.4 mm, exact" },
    tolerance: "one unit in the last place",
  },
  table.inchFractions.map((row) => ({
    what: `${row.text} in`,
    theirs: row.mm,
    ours: () => {
      const read = parseQuantity(`${row.text} in`, "length");
      return read.ok ? inUnit("length", read.quantity.value, "mm") : Number.NaN;
    },
    unit: "mm",
    within: { relative: 3e-16 },
  })),
);

against(
  {
    topic: "units",
    check: "Temperatures",
    source: { source: "nist-sp-811", at: "K = (°F + 459.67) × 5/9" },
    tolerance: "rounding of a double",
  },
  table.temperatures.flatMap((row) => [
    {
      what: `${row.F} °F in °C`,
      theirs: row.C,
      ours: () => inUnit("temperature", quantity("temperature", row.F, "degF"), "degC"),
      unit: "°C",
      within: { absolute: 1e-12 },
    },
    {
      what: `${row.F} °F in K`,
      theirs: row.K,
      ours: () => quantity("temperature", row.F, "degF") as number,
      unit: "K",
      within: { absolute: 1e-12 },
    },
  ]),
);

test("every spelling of every unit finds that unit or one of another kind", () => {
  for (const unit of units.values()) {
    for (const spelling of [unit.symbol, ...(unit.shown ? [unit.shown] : []), ...unit.also]) {
      expect(findUnit(spelling)?.symbol, `${spelling} for ${unit.symbol}`).toBe(unit.symbol);
    }
  }
});

test("every unit goes to SI and back", () => {
  for (const unit of units.values()) {
    for (const kind of unit.kinds) {
      const there = quantity(kind, 12.375, unit.symbol);
      expect(Math.abs(inUnit(kind, there, unit.symbol) / 12.375 - 1)).toBeLessThan(1e-13);
    }
  }
});

test("a unit of another kind is a programming mistake and says so", () => {
  expect(() => quantity("length", 1, "bar")).toThrow(RangeError);
  expect(() => inUnit("pressure", 1 as never, "mm")).toThrow(RangeError);
});

test("every kind can be given in its SI unit", () => {
  expect(unitsOf("heat-capacity").map((unit) => unit.symbol)).toContain("J/(kg*K)");
});
