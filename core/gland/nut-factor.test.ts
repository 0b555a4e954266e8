import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import tables from "../../data/tables/bolts.json" with { type: "json" };
import { against } from "../../testing/against.ts";
import { found, refusalOf, warnings } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { mm } from "../../testing/stacks.ts";
import type { Citation } from "../sources/index.ts";
import type { Length } from "../units/index.ts";
import { nutFactor, studLimit } from "./index.ts";

const facts = readAllFacts().gland;
const limit = (thread: string, frictionThread: number) =>
  found(studLimit({ thread, propertyClass: "8.8", frictionThread, useOfYield: 0.9 }, facts)).load;

against(
  {
    topic: "gland",
    check: "Most pull while tightening, fine threads of class 8.8 at 90 % of the 0.2 % stress",
    source: tables.vdi2230.citation as Citation,
    tolerance: "printed to three digits: 0.4 %",
  },
  tables.vdi2230.rows.map(({ thread, friction, load }) => ({
    what: `${thread}, friction ${friction}`,
    theirs: load,
    ours: () => limit(thread, friction) / 1000,
    unit: "kN",
    within: { relative: 0.004 },
  })),
);

against(
  {
    topic: "gland",
    check: "Torque at that pull, bolt face from the hexagon's least face and the medium hole",
    source: tables.vdi2230.citation as Citation,
    tolerance: "printed to two or three digits: 1.2 %",
  },
  tables.vdi2230.rows.map(({ thread, friction, face, hole, torque }) => ({
    what: `${thread}, friction ${friction}`,
    theirs: torque,
    ours: () => {
      const faceDiameter = mm((face + hole) / 2);
      const { torquePerLoad } = found(nutFactor({ thread, frictionThread: friction, frictionFace: friction, faceDiameter }, facts));
      return limit(thread, friction) * torquePerLoad;
    },
    unit: "N·m",
    within: { relative: 0.012 },
  })),
);

// 0.159 P + 0.577 μ d2 + 0.5 μ D with D = 14.2 mm, by hand.
against(
  {
    topic: "gland",
    check: "Nut factor of M12 by the friction under thread and face",
    source: { source: "din-946", at: "the long formula with its unrounded coefficients, by hand" },
    tolerance: "the standard's rounded 0.16 and 0.58 against 0.159 and 0.577: 0.6 %",
  },
  (
    [
      [0.12, 0.157],
      [0.14, 0.179],
      [0.2, 0.246],
    ] as const
  ).map(([friction, theirs]) => ({
    what: `friction ${friction}`,
    theirs,
    ours: () =>
      found(nutFactor({ thread: "M12", frictionThread: friction, frictionFace: friction, faceDiameter: mm(14.2) }, facts)).nutFactor,
    unit: "1",
    within: { relative: 0.006 },
  })),
);

property(
  "more friction is more torque for the same pull, and less pull for the stud",
  [
    fc.constantFrom("M8", "M12", "M16x1.5", "M24", "5/8-11"),
    fc.double({ min: 0.04, max: 0.3, noNaN: true }),
    fc.double({ min: 1.01, max: 1.2, noNaN: true }),
  ],
  (thread, friction, times) => {
    const factor = (mu: number) =>
      found(nutFactor({ thread, frictionThread: mu, frictionFace: mu, faceDiameter: mm(30) }, facts)).nutFactor;
    expect(factor(friction * times)).toBeGreaterThan(factor(friction));
    expect(limit(thread, friction * times)).toBeLessThan(limit(thread, friction));
  },
);

test("friction, face and share of yield that cannot be are refused by name", () => {
  const given = { thread: "M12", frictionThread: 0.12, frictionFace: 0.12, faceDiameter: mm(14.2) };
  for (const [change, input] of [
    [{ frictionThread: -0.1 }, "frictionThread"],
    [{ frictionFace: 1.5 }, "frictionFace"],
    [{ faceDiameter: mm(11) }, "faceDiameter"],
    [{ faceDiameter: Number.NaN as Length }, "faceDiameter"],
  ] as const) {
    expect(refusalOf(nutFactor({ ...given, ...change }, facts))).toMatchObject({ kind: "outside-range", input });
  }
  const stud = { thread: "M12", propertyClass: "8.8", frictionThread: 0.12, useOfYield: 0.9 };
  for (const [change, input] of [
    [{ frictionThread: Number.NaN }, "frictionThread"],
    [{ useOfYield: 0 }, "useOfYield"],
    [{ useOfYield: 1.1 }, "useOfYield"],
  ] as const) {
    expect(refusalOf(studLimit({ ...stud, ...change }, facts))).toMatchObject({ kind: "outside-range", input });
  }
  expect(warnings(studLimit({ ...stud, propertyClass: "unknown" }, facts))).toContain("stud-ungraded");
  expect(refusalOf(nutFactor({ ...given, thread: "?" }, facts))).toMatchObject({ kind: "not-known", input: "thread" });
});
