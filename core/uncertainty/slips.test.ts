import { readAllFacts } from "@ringwright/data";
import { allIds, say } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { plausibleFields, slips, slipsAmong } from "./index.ts";

const { plausible } = readAllFacts().uncertainty;
const mm = (value: number) => quantity("length", value, "mm");

describe("a value no box is likely to have is asked about", () => {
  const suggested = (field: Parameters<typeof slips>[0]["field"], value: number) => slips({ field, value }, plausible)[0]?.suggestion;
  test("a shaft of 1 3/4 typed as millimetres was perhaps inches", () => {
    expect(inUnit("length", suggested("shaft", mm(1.75)) as never, "in")).toBeCloseTo(1.75, 12);
  });
  test("a shaft of 50 typed as inches was perhaps millimetres", () => {
    expect(inUnit("length", suggested("shaft", quantity("length", 50, "in")) as never, "mm")).toBeCloseTo(50, 10);
  });
  test("a bore of 700 was perhaps 70", () => {
    expect(inUnit("length", suggested("bore", mm(700)) as never, "mm")).toBeCloseTo(70, 10);
  });
  test("145 bar at a box was perhaps 14.5 bar, or psi", () => {
    const [slip] = slips({ field: "pressure", value: quantity("pressure", 145, "bar") }, plausible);
    const meant = [slip?.suggestion, (slip?.says.with?.other as { value: number } | undefined)?.value];
    expect(meant.map((pascal) => Math.round(inUnit("pressure", pascal as never, "bar") * 10) / 10)).toEqual([14.5, 10]);
  });
  test("800 °C was perhaps 80 °C, and tenfold is counted on the scale that is typed", () => {
    const [slip] = slips({ field: "temperature", value: quantity("temperature", 800, "degC") }, plausible);
    const meant = [slip?.suggestion, (slip?.says.with?.other as { value: number } | undefined)?.value];
    expect(meant.map((kelvin) => Math.round(inUnit("temperature", kelvin as never, "degC") * 10) / 10)).toContain(80);
  });
  test("a shaft no slip explains is asked about all the same", () => {
    expect(slips({ field: "shaft", value: 5000 }, plausible)).toMatchObject([{ kind: "slip", says: { id: "slip-unlikely" } }]);
  });
  test("of two meanings the one nearer the middle of what boxes have comes first", () => {
    // 4 mm for a shaft: 40 mm by a point, 101.6 mm by inches; the middle of 8 to 350 mm is about 53.
    const [slip] = slips({ field: "shaft", value: mm(4) }, plausible);
    expect(inUnit("length", slip?.suggestion as never, "mm")).toBeCloseTo(40, 9);
    expect(say(slip?.says as never)).toMatch(/4\.00\smm.*40\.0\smm.*102\smm/u);
  });
  test("a shaft of 0.05 mm was perhaps 0.05 m", () => {
    expect(inUnit("length", suggested("shaft", mm(0.05)) as never, "mm")).toBeCloseTo(50, 10);
  });
  test("where the unit that was typed is known, no other is taken to have been wrong", () => {
    const [slip] = slips({ field: "bore", value: mm(700), unit: "mm" }, plausible);
    expect(slip?.says.id).toBe("slip-meant");
    expect(slip?.suggestion).toBeCloseTo(0.07, 12);
  });
  test("1450 rad/s was perhaps 1450 rpm", () => {
    const [slip] = slips({ field: "rotation", value: 1450, unit: "rad/s" }, plausible);
    expect(say(slip?.says as never)).toMatch(/1450\srpm/u);
  });
  test("a tenfold slip is counted in the degrees that were typed", () => {
    const [slip] = slips({ field: "temperature", value: quantity("temperature", 1130, "degF"), unit: "degF" }, plausible);
    expect(inUnit("temperature", slip?.suggestion as never, "degF")).toBeCloseTo(113, 9);
  });
  test("a gap may be nought, and its range has a middle all the same", () => {
    const [slip] = slips({ field: "gap", value: mm(600) }, plausible);
    expect(inUnit("length", slip?.suggestion as never, "mm")).toBeCloseTo(60, 9);
    expect(slips({ field: "gap", value: 0 }, plausible)).toEqual([]);
  });
  test("the ends of the range are still believed", () => {
    const { low, high } = plausible.shaft;
    expect(slips({ field: "shaft", value: low }, plausible)).toEqual([]);
    expect(slips({ field: "shaft", value: high }, plausible)).toEqual([]);
  });
  test("the sentence shows what was read and where boxes lie", () => {
    const [slip] = slips({ field: "shaft", value: 5000 }, plausible);
    expect(say(slip?.says as never)).toMatch(/8\.00\smm.*350\smm/u);
  });
  test("an ordinary box is not asked about", () => {
    expect(slips({ field: "shaft", value: mm(50) }, plausible)).toEqual([]);
    expect(slips({ field: "bore", value: mm(70) }, plausible)).toEqual([]);
    expect(slips({ field: "temperature", value: quantity("temperature", 20, "degC") }, plausible)).toEqual([]);
  });
});

describe("a reading is held against its siblings", () => {
  const asked = (readings: readonly number[], field?: "shaft") =>
    slipsAmong({ readings: readings.map(mm), ...(field ? { field } : {}) }, plausible).map(
      (slip) => `${slip.input} ${inUnit("length", slip.suggestion as never, "mm").toFixed(2)}`,
    );
  test("a point misplaced", () => {
    expect(asked([45.02, 45.01, 4.503])).toEqual(["readings[2] 45.03"]);
    expect(asked([45.02, 450.1, 45.03])).toEqual(["readings[1] 45.01"]);
  });
  test("an inch among millimetres", () => expect(asked([44.45, 44.46, 1.75, 44.44])).toEqual(["readings[2] 44.45"]));
  test("of two readings the one that a shaft can have is believed", () => {
    expect(asked([4.5, 45], "shaft")).toEqual(["readings[0] 45.00"]);
    expect(asked([4.5, 45])).toEqual(["readings[1] 4.50"]);
  });
  test("the sentence shows the reading, what it may be, and the others", () => {
    const [slip] = slipsAmong({ readings: [45, 45, 4.5].map(mm) }, plausible);
    expect(slip?.kind).toBe("slip");
    expect(say(slip?.says as never)).toMatch(/readings no\. 3.*4\.50\smm.*45\.0\smm.*45\.0\smm/u);
  });
  test("four times as large is no slip anyone makes", () => expect(asked([10, 40, 10])).toEqual([]));
  test("readings that agree, a single one, and nought are left alone", () => {
    expect(asked([45, 45.2, 44.8])).toEqual([]);
    expect(asked([45])).toEqual([]);
    expect(asked([0, 45])).toEqual([]);
  });
});

const field = fc.constantFrom(...plausibleFields);
property(
  "every tenfold slip that leaves the plausible range is asked about, and the right value is among what is suggested",
  [field, fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.constantFrom(10, 0.1)],
  (name, share, factor) => {
    const { kind, low, high } = plausible[name];
    const meant = low + share * (high - low);
    const scale = kind === "temperature" ? "degC" : undefined;
    const typed = scale ? quantity("temperature", inUnit("temperature", meant as never, scale) * factor, scale) : meant * factor;
    const asked = slips({ field: name, value: typed }, plausible);
    if (typed >= low && typed <= high) return expect(asked).toEqual([]);
    expect(asked).toHaveLength(1);
    expect(allIds().has(asked[0]?.says.id ?? "")).toBe(true);
    expect(say(asked[0]?.says as never)).not.toMatch(/[{}]|undefined|NaN/u);
    const offered = [asked[0]?.suggestion, ...Object.values(asked[0]?.says.with ?? {}).map((shown) => (shown as { value?: number }).value)];
    // Two are offered; a third that fits as well may push out the one that was meant.
    if (offered.filter((one) => one !== undefined).length < 3)
      expect(offered.some((one) => Math.abs(Number(one) / meant - 1) < 1e-9)).toBe(true);
  },
);

property(
  "every inch typed for a millimetre that leaves the plausible range of a length is asked about",
  [fc.constantFrom("shaft", "bore", "depth", "section"), fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean()],
  (name, share, inchTyped) => {
    const { low, high } = plausible[name];
    const meant = low + share * (high - low);
    const [from, to] = inchTyped ? ["mm", "in"] : ["in", "mm"];
    const typed = quantity("length", inUnit("length", meant as never, from as string), to as string);
    const asked = slips({ field: name, value: typed }, plausible);
    expect(asked).toHaveLength(typed >= low && typed <= high ? 0 : 1);
  },
);

property(
  "one reading out of four that slipped by a factor is found, whichever it is",
  [fc.integer({ min: 20, max: 200 }), fc.integer({ min: 0, max: 3 }), fc.constantFrom(10, 0.1, 25.4, 1 / 25.4)],
  (size, which, factor) => {
    const readings = [1.001, 1, 0.998, 1.002].map((near, i) => mm(size * near * (i === which ? factor : 1)));
    const found = slipsAmong({ readings }, plausible);
    expect(found.map((slip) => slip.input)).toEqual([`readings[${which}]`]);
    expect(inUnit("length", found[0]?.suggestion as never, "mm") / size).toBeCloseTo(1, 2);
  },
);
