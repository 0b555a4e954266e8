import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import tables from "../../data/tables/bolts.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { found, refusalOf, warnings } from "../../testing/found.ts";
import { inUnit } from "../units/index.ts";
import { bolt } from "./index.ts";

const facts = readAllFacts().gland;
const stud = (thread: string, propertyClass = "8.8") => found(bolt({ thread, propertyClass }, facts));
const digits = (value: number, count: number) => Number(value.toPrecision(count));

against(
  {
    topic: "gland",
    check: "Nominal stress area of coarse metric threads, to the three digits printed",
    source: { source: "iso-898-1", at: "nominal stress areas, coarse thread" },
    tolerance: "equal once rounded as printed",
  },
  tables.stressArea.rows.map(({ thread, printed }) => ({
    what: thread,
    theirs: printed,
    ours: () => digits(inUnit("area", stud(thread).stressArea, "mm2"), 3),
    unit: "mm2",
    within: { absolute: 1e-9 },
  })),
);

// Tables of unified threads print these; from memory of ASME B1.1.
against(
  {
    topic: "gland",
    check: "Tensile stress area of unified threads",
    source: { source: "asme-b1-1", at: "tensile stress areas", seen: "memory" },
    tolerance: "a unit of the last digit printed; tables round or cut off",
  },
  (
    [
      ["1/4-20 UNC", 0.0318, 1e-4],
      ["5/16-18 UNC", 0.0524, 1e-4],
      ["3/8-16 UNC", 0.0775, 1e-4],
      ["7/16-14 UNC", 0.1063, 1e-4],
      ["1/2-13 UNC", 0.1419, 1e-4],
      ["5/8-11 UNC", 0.226, 1e-3],
      ["3/4-10 UNC", 0.334, 1e-3],
      ["7/8-9 UNC", 0.462, 1e-3],
      ["1-8 UNC", 0.606, 1e-3],
      ["1/2-20 UNF", 0.1599, 1e-4],
      ["5/8-18 UNF", 0.256, 1e-3],
      ["3/4-16 UNF", 0.373, 1e-3],
    ] as const
  ).map(([thread, area, unit]) => ({
    what: thread,
    theirs: area,
    ours: () => inUnit("area", stud(thread, "SAE 5").stressArea, "in2"),
    unit: "in2",
    within: { absolute: unit },
  })),
);

against(
  {
    topic: "gland",
    check: "Proof load of coarse metric studs",
    source: { source: "iso-898-1", at: "proof loads, coarse thread" },
    tolerance: "exact: the table is carried as printed",
  },
  [
    ...(
      [
        ["M12", "8.8", 48900],
        ["M16", "8.8", 91000],
        ["M20", "8.8", 147000],
        ["M12", "4.6", 19000],
      ] as const
    ).map(([thread, propertyClass, load]) => ({ thread, propertyClass, load })),
    ...tables.proofLoad.rows.flatMap((row) =>
      (["6.8", "8.8", "10.9"] as const).map((propertyClass) => ({ thread: row.thread, propertyClass, load: row[propertyClass] })),
    ),
  ].map(({ thread, propertyClass, load }) => ({
    what: `${thread} class ${propertyClass}`,
    theirs: load,
    ours: () => stud(thread, propertyClass).proofLoad,
    unit: "N",
    within: { absolute: 0 },
  })),
);

test("every printed proof load is the printed area times the proof stress within half a per cent", () => {
  let looked = 0;
  for (const thread of new Set(facts.threads.byKey.values())) {
    for (const [propertyClass, printed] of Object.entries(thread.printedLoads ?? {})) {
      looked++;
      const { proofStress } = stud(thread.name, propertyClass);
      const product = (thread.printedArea ?? Number.NaN) * proofStress;
      expect(Math.abs(product / printed - 1), `${thread.name} ${propertyClass}`).toBeLessThan(0.0051);
    }
  }
  expect(looked).toBeGreaterThan(30);
});

// A web note's worked example: M12 class 8.8 tightened to 70 % of proof is 34 kN.
against(
  {
    topic: "gland",
    check: "Preload of M12 class 8.8 at 70 % of proof",
    source: { source: "bolt-preload-example", at: "M12 class 8.8" },
    tolerance: "printed to two digits",
  },
  [
    {
      what: "preload",
      theirs: 34,
      ours: () => (0.7 * stud("M12").proofLoad) / 1000,
      unit: "kN",
      within: { absolute: 0.5 },
    },
  ],
);

// A chart gives 4940 lbf for 3/8-16 grade 5: three quarters of proof.
against(
  {
    topic: "gland",
    check: "Clamp load of 3/8-16 grade 5",
    source: { source: "bolt-torque-article", at: "torque chart" },
    tolerance: "printed to ten lbf; that it is 75 % of proof is inferred",
  },
  [
    {
      what: "clamp load",
      theirs: 4940,
      ours: () => 0.75 * inUnit("force", stud("3/8-16", "SAE 5").proofLoad, "lbf"),
      unit: "lbf",
      within: { absolute: 5 },
    },
  ],
);

test("a stud without a mark is reckoned as the lowest class, and that is said", () => {
  for (const propertyClass of [undefined, "", "unknown", "Ungraded"]) {
    const answer = bolt({ thread: "M12", ...(propertyClass === undefined ? {} : { propertyClass }) }, facts);
    expect(found(answer)).toMatchObject({ propertyClass: "4.6", proofLoad: 19000 });
    expect(warnings(answer, "gap")).toContain("stud-ungraded");
  }
  const stainless = bolt({ thread: "M12", propertyClass: "ungraded-stainless" }, facts);
  expect(found(stainless)).toMatchObject({ propertyClass: "A2-50", basis: "yield-in-place-of-proof" });
  expect(warnings(stainless)).toEqual(expect.arrayContaining(["stud-ungraded", "stud-yield-for-proof"]));
});

test("no known class is weaker than the one that stands for a stud without a mark, stainless aside", () => {
  const lowest = stud("M12", "unknown").proofStress;
  for (const { name, proof } of facts.classes.byKey.values()) {
    if (/^(?:A\d|B8)/u.test(name)) continue;
    for (const { stress } of proof) expect(stress, name).toBeGreaterThanOrEqual(lowest);
  }
});

test("stainless classes carry their 0.2 % stress in place of proof", () => {
  // ISO 3506-1: 210, 450 and 600 MPa.
  for (const [propertyClass, stress] of [
    ["A2-50", 210],
    ["A4-70", 450],
    ["a4 80", 600],
  ] as const) {
    const { proofStress, proofLoad, basis } = stud("M12", propertyClass);
    expect(inUnit("stress", proofStress, "MPa")).toBeCloseTo(stress, 9);
    expect(proofLoad).toBeCloseTo(84.3 * stress, 6);
    expect(basis).toBe("yield-in-place-of-proof");
  }
});

test("class 8.8 is 580 MPa to 16 mm and 600 MPa above, and a class beyond its sizes is flagged", () => {
  expect(inUnit("stress", stud("M16").proofStress, "MPa")).toBeCloseTo(580, 9);
  expect(inUnit("stress", stud("M18").proofStress, "MPa")).toBeCloseTo(600, 9);
  expect(warnings(bolt({ thread: "M16", propertyClass: "9.8" }, facts))).toEqual([]);
  expect(warnings(bolt({ thread: "M20", propertyClass: "9.8" }, facts), "outside-validity")).toEqual(["stud-class-size"]);
  expect(warnings(bolt({ thread: "1 1/8-7", propertyClass: "SAE 5" }, facts))).toEqual([]);
});

test("the reply says how the proof load was come by", () => {
  expect(stud("M12", "8.8").basis).toBe("printed");
  expect(stud("M22", "8.8").basis).toBe("area-times-stress");
  // 303 mm² as printed, 600 MPa.
  expect(stud("M22", "8.8").proofLoad).toBeCloseTo(303 * 600, 6);
  // No printed area for a fine thread: the area by its formula.
  const fine = stud("M12x1.25");
  expect(fine.basis).toBe("area-times-stress");
  expect(fine.proofLoad).toBeCloseTo(fine.stressArea * fine.proofStress, 9);
  expect(refusalOf(bolt({ thread: "M12,5", propertyClass: "8.8" }, facts))).toMatchObject({ kind: "not-known", input: "thread" });
});

test("a class nobody here knows is refused with the ones that are known", () => {
  const answer = bolt({ thread: "M12", propertyClass: "7.7" }, facts);
  expect(refusalOf(answer)).toMatchObject({ kind: "not-known", input: "propertyClass", given: "7.7" });
  expect(answer.ok ? [] : answer.refusal.allowed).toContain("8.8");
});
