import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { sources } from "../sources/index.ts";
import { type GaugePressure, inUnit, quantity } from "../units/index.ts";
import { type BoxPressure, boxDesigns, boxPressure, impellerDiameters } from "./index.ts";

const facts = readAllFacts().flush.boxPressure;
type Given = Parameters<typeof boxPressure>[0];
const psi = (value: number) => quantity("pressure", value, "psi");
const bar = (value: number) => quantity("pressure", value, "bar");
const inPsi = (value: GaugePressure) => inUnit("pressure", value, "psi");

function work(given: Given): BoxPressure {
  const answer = boxPressure(given, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}
const ids = (given: Given) => {
  const answer = boxPressure(given, facts);
  return answer.ok ? answer.warnings.map(({ says }) => says.id) : [];
};

against(
  {
    topic: "flush",
    check: "Box pressure by design of pump",
    source: { source: "buck-seal-chambers", at: "worked examples of eqs. 1 and 3, suction 10 and discharge 200 psi" },
    tolerance: "printed to half a psi at most; the first is printed as a sum cut off in the copy",
  },
  [
    {
      what: "balance holes and back rings",
      theirs: 38.5,
      ours: () => inPsi(work({ suction: psi(10), discharge: psi(200), design: "balance-holes-back-rings" }).typical),
      unit: "psi",
      within: { absolute: 0.1 },
    },
    {
      what: "back vanes, largest impeller",
      theirs: 29,
      ours: () => inPsi(work({ suction: psi(10), discharge: psi(200), design: "back-vanes", impellerDiameter: "maximum" }).typical),
      unit: "psi",
      within: { absolute: 0.1 },
    },
  ],
);

against(
  {
    topic: "flush",
    check: "Box pressure with a tenth of the differential",
    source: { source: "seal-cavity-note", at: "worked example of eq. 1, suction 5 and discharge 95 psi" },
    tolerance: "printed as a whole number, exact",
  },
  [
    {
      what: "balance holes, the figure of this source",
      theirs: 14,
      ours: () => {
        const { published } = work({ suction: psi(5), discharge: psi(95), design: "balance-holes-back-rings" });
        return inPsi(
          published.find(({ source, factor }) => source === "seal-cavity-note" && factor === 0.1)?.pressure ?? (0 as GaugePressure),
        );
      },
      unit: "psi",
      within: { absolute: 1e-9 },
    },
  ],
);

test("the other printed figure lies inside the band: sources differ, and the band shows it", () => {
  const { band } = work({ suction: psi(5), discharge: psi(95), design: "balance-holes-back-rings" });
  expect(inPsi(band.low)).toBeCloseTo(5, 9);
  expect(inPsi(band.high)).toBeCloseTo(5 + 0.225 * 90, 9);
});

describe("designs", () => {
  const at = (design: (typeof boxDesigns)[number], more: Partial<Given> = {}) =>
    work({ suction: bar(1), discharge: bar(11), design, ...more });

  test("a closed impeller without back ring or holes puts discharge on the box", () => expect(at("plain-closed").typical).toBe(bar(11)));

  test("double suction and the low end of a multistage pump have suction on the box", () => {
    for (const design of ["double-suction", "multistage-low-end", "two-stage-back-to-back-low", "progressing-cavity"] as const) {
      expect(at(design).typical, design).toBe(bar(1));
      expect(at(design).band.high, design).toBeGreaterThan(bar(1));
    }
  });

  test("a progressing-cavity pump run the other way has discharge on the box", () =>
    expect(at("progressing-cavity-reversed").typical).toBe(bar(11)));

  test("a balance line leaves 75 psi above suction, but never more than the pump makes", () => {
    const design = "multistage-high-end-balance-line";
    expect(at(design).typical - bar(1)).toBeCloseTo(psi(75), 6);
    expect(work({ suction: bar(1), discharge: bar(2), design }).typical).toBe(bar(2));
  });

  test("back vanes hold back less on a trimmed impeller; if nobody knows, the band covers both and says so", () => {
    expect(at("back-vanes", { impellerDiameter: "minimum" }).typical - bar(1)).toBeCloseTo(bar(3), 3);
    const unknown = at("back-vanes");
    expect(unknown.band.high).toBeGreaterThanOrEqual(at("back-vanes", { impellerDiameter: "minimum" }).typical);
    expect(ids({ suction: bar(1), discharge: bar(11), design: "back-vanes" })).toContain("impeller-diameter-unknown");
  });

  test("an unknown design may be anything from suction to discharge", () => {
    expect(at("unknown").band).toEqual({ low: bar(1), high: bar(11) });
    expect(ids({ suction: bar(1), discharge: bar(11), design: "unknown" })).toContain("design-unknown");
  });

  test("each design has facts, each fact a source in the register", () => {
    for (const design of boxDesigns)
      expect(
        facts.designs.some((entry) => entry.design === design),
        design,
      ).toBe(true);
    for (const { typical, published } of facts.designs) {
      for (const figure of [typical, ...published]) {
        expect(Object.hasOwn(sources, figure.citation.source)).toBe(true);
        expect((figure.factor === undefined) !== (figure.above === undefined)).toBe(true);
      }
    }
  });
});

describe("a gauge at the flush tee", () => {
  const both = { suction: bar(1), discharge: bar(11), design: "balance-holes-back-rings" } as const;

  test("wins over the design, which stays as a cross-check", () => {
    const found = work({ ...both, measuredGauge: bar(2.4) });
    expect(found.basis).toBe("gauge");
    expect(found.typical).toBe(bar(2.4));
    expect(inUnit("pressure", found.band.high, "bar")).toBeCloseTo(2.5, 12);
    expect(found.byDesign).toEqual(work(both).band);
    expect(ids({ ...both, measuredGauge: bar(2.4) })).toEqual(["tee-reads-the-lantern"]);
  });

  test("far from the design asks for another look", () =>
    expect(ids({ ...both, measuredGauge: bar(9) })).toContain("gauge-outside-design"));

  test("is enough by itself", () => {
    const found = work({ design: "unknown", measuredGauge: bar(2), gaugeError: quantity("pressure-difference", 0.5, "bar") });
    expect(found.band.low).toBeCloseTo(bar(1.5), 6);
    expect(found.byDesign).toBeUndefined();
  });
});

const gauge = fc.double({ min: -0.9, max: 100, noNaN: true }).map(bar);
const design = fc.constantFrom(...boxDesigns);
const diameter = fc.option(fc.constantFrom(...impellerDiameters), { nil: undefined });

property(
  "the band holds the usual figure and every published one, between suction and discharge",
  [gauge, gauge, design, diameter],
  (a, b, which, size) => {
    const [suction, discharge] = a <= b ? [a, b] : [b, a];
    const found = work({ suction, discharge, design: which, ...(size ? { impellerDiameter: size } : {}) });
    const slack = 1e-6 * (1 + Math.abs(discharge));
    for (const pressure of [found.typical, ...found.published.map((opinion) => opinion.pressure)]) {
      expect(pressure).toBeGreaterThanOrEqual(found.band.low - slack);
      expect(pressure).toBeLessThanOrEqual(found.band.high + slack);
    }
    expect(found.band.low).toBeGreaterThanOrEqual(suction - slack);
    expect(found.band.high).toBeLessThanOrEqual(discharge + slack);
    if (discharge > suction + 1) expect(found.band.high).toBeGreaterThan(found.band.low);
  },
);

property(
  "more discharge never means less on the box; moving both gauges moves the box alike",
  [gauge, gauge, gauge, design],
  (a, b, c, which) => {
    const [suction, middle, discharge] = [a, b, c].sort((x, y) => x - y) as [GaugePressure, GaugePressure, GaugePressure];
    const low = work({ suction, discharge: middle, design: which });
    const high = work({ suction, discharge, design: which });
    expect(high.typical).toBeGreaterThanOrEqual(low.typical - 1e-6);
    const up = bar(3);
    const moved = work({ suction: (suction + up) as GaugePressure, discharge: (discharge + up) as GaugePressure, design: which });
    expect(moved.typical - high.typical).toBeCloseTo(up, 3);
  },
);

describe("what cannot be", () => {
  const both = { suction: bar(1), discharge: bar(11), design: "back-vanes" } as const;

  test("discharge below suction is impossible, equal is a pump that makes no pressure", () => {
    expect(boxPressure({ ...both, suction: bar(12) }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "impossible", input: "discharge" },
    });
    const still = { ...both, suction: bar(11) };
    expect(work(still).band).toEqual({ low: bar(11), high: bar(11) });
    expect(ids(still)).toContain("pump-makes-no-pressure");
  });

  test.each(["suction", "discharge", "measuredGauge"] as const)(
    "%s below a perfect vacuum, endless or no number is refused by name",
    (input) => {
      for (const value of [bar(-1.2), bar(2000), Number.NaN, 1e308]) {
        expect(boxPressure({ ...both, [input]: value }, facts)).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
      }
    },
  );

  test("neither gauge nor both pressures is not known", () => {
    expect(boxPressure({ design: "double-suction", suction: bar(1) }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "not-known", input: "discharge" },
    });
    expect(boxPressure({ ...both, design: "turbine" as never }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "not-known", input: "design" },
    });
  });
});
