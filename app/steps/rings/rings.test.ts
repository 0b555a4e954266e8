import { type Plan, plan } from "@ringwright/core/plan";
import { type Length, quantity } from "@ringwright/core/units";
import { readAllFacts } from "@ringwright/data";
import { boxOfPlan, drawBoxSection, sheetOf } from "@ringwright/drawings";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { property } from "../../../testing/property.ts";
import { fieldOfFigure } from "./figure-field.ts";
import { reaching } from "./reaches.ts";
import { angleAs, countsOf, lengthAs, lengthStepped, ringsChanged } from "./set-choices.ts";
import { flatsOf, glided, keyed, onWay, type Way, wayOf } from "./travel.ts";
import { needsHand, warningsOf } from "./warnings.ts";

const mm = (value: number) => quantity("length", value, "mm");
const way: Way = { end: mm(10), by: "nose", step: mm(0.25), flat: mm(0.25) };

const found = plan(
  {
    motion: "turning",
    shaft: { readings: [mm(50)] },
    bore: { readings: [mm(75)] },
    depth: { readings: [mm(92)] },
    lantern: { wanted: true, width: mm(16), window: mm(12), ringsThroatSide: 2 },
    port: { fromFace: mm(61), diameter: mm(6) },
    follower: { nose: mm(30) },
    studs: { count: 2, thread: "M12", threadLeft: mm(25) },
    set: { rings: 5 },
  },
  readAllFacts(),
);
if (!found.ok) throw new Error("the box of these tests can't be planned");

const drawnWay = (of: Plan) => {
  const drawn = boxOfPlan(of, "Stock pump 2");
  return drawn && wayOf(of, drawn, "metric");
};

describe("the way of the gland", () => {
  test("one press is one flat of the nut: a sixth of the pitch of M12, 1.75 mm (ISO 261)", () => {
    expect(drawnWay(found.value)?.step).toBeCloseTo(0.00175 / 6, 12);
  });

  test("where nothing was measured that ends it, it ends where the drawing does, and says so", () => {
    const { follower: _, ...survey } = found.value.survey;
    const bare = plan(survey, readAllFacts());
    const end = bare.ok ? drawnWay(bare.value) : undefined;
    expect(end?.by).toBe("drawn");
    expect(drawnWay(found.value)?.by).toBe("nose");
  });

  test("it ends at both ends, whatever is pressed", () => {
    expect([onWay(way, -1), onWay(way, 1)]).toEqual([0, way.end]);
    expect(keyed(way, mm(9.9), "ArrowRight")).toBe(way.end);
    expect(keyed(way, mm(0.1), "PageDown")).toBe(0);
    expect([keyed(way, mm(3), "Home"), keyed(way, mm(3), "End")]).toEqual([0, way.end]);
    expect(keyed(way, mm(3), "toString")).toBeUndefined();
  });

  test("flats are counted to the tenth; without a thread there are none", () => {
    expect(flatsOf(way, mm(3.2))).toBe(12.8);
    const { flat: _, ...bare } = way;
    expect(flatsOf(bare, mm(3.2))).toBeUndefined();
  });

  property("a glide begins and ends where it should and never runs back", [fc.double({ min: 0, max: 1, noNaN: true })], (time) => {
    expect(glided(mm(2), mm(8), 0)).toBe(mm(2));
    expect(glided(mm(2), mm(8), 1.3)).toBe(mm(8));
    expect(glided(mm(2), mm(8), time)).toBeLessThanOrEqual(glided(mm(2), mm(8), Math.min(1, time + 0.05)) + 1e-12);
  });
});

describe("choosing another set", () => {
  const counts = countsOf(found.value);
  if (!counts) throw new Error("no set");

  test("a ring more on one side settles both counts, so that it comes where it was asked for", () => {
    expect(counts).toEqual({ below: 2, above: 3, lantern: true });
    expect(ringsChanged(counts, { below: 1 })).toEqual([
      { field: "set.rings", value: 6 },
      { field: "lantern.ringsThroatSide", value: 3 },
    ]);
    expect(ringsChanged(counts, { above: -1 })).toEqual([
      { field: "set.rings", value: 4 },
      { field: "lantern.ringsThroatSide", value: 2 },
    ]);
    expect(ringsChanged({ below: 0, above: 5, lantern: false }, { above: 1 })).toEqual([{ field: "set.rings", value: 6 }]);
  });

  test("the last ring stays, and nothing goes below none", () => {
    expect(ringsChanged({ below: 0, above: 1, lantern: false }, { above: -1 })).toEqual([]);
    expect(ringsChanged({ below: 0, above: 3, lantern: true }, { below: -1 })).toEqual([]);
    expect(ringsChanged({ below: 20, above: 20, lantern: true }, { below: 1 })).toEqual([]);
  });

  test("lengths go by whole millimetres or sixteenths of an inch, and are written as a person writes them", () => {
    expect(lengthStepped(mm(12.4), 1, "metric")).toMatchObject({ typed: "13 mm" });
    expect(lengthStepped(mm(12.4), -1, "metric")).toMatchObject({ typed: "12 mm" });
    expect(lengthStepped(undefined, -1, "metric")).toMatchObject({ typed: "0 mm", value: 0 });
    expect(lengthStepped(quantity("length", 0.5, "in"), 1, "inch").typed).toBe("9/16 in");
    expect(lengthAs(quantity("length", 1.5, "in"), "inch").typed).toBe("1 1/2 in");
    expect(lengthAs(0, "inch").typed).toBe("0 in");
    expect(angleAs(45)).toMatchObject({ value: Math.PI / 4, unit: "rad", typed: "45°" });
  });

  property("what is written is what is meant", [fc.nat(200)], (count) => {
    const { typed, value } = lengthAs(quantity("length", count / 16, "in"), "inch");
    const [whole = "0", part] = typed.replace(" in", "").includes("/")
      ? [typed.includes(" ") && /^\d+ \d/u.test(typed) ? typed.split(" ")[0] : "0", /(\d+)\/(\d+)/u.exec(typed)]
      : [typed.split(" ")[0], null];
    const inches = Number(whole) + (part ? Number(part[1]) / Number(part[2]) : 0);
    expect(inches * 0.0254).toBeCloseTo(value, 12);
  });
});

test("what reaches a ring is read off the curve at the ring's middle", () => {
  const points = [0, 10, 20].map((at) => ({ fromThroat: mm(at) as Length, share: 0.5 + at / 40 }));
  expect(reaching({ motion: "turning", points }, mm(4), mm(8))).toBeCloseTo(0.65, 12);
  expect(reaching({ motion: "turning", points: [...points].reverse() }, mm(18), mm(40))).toBe(1);
  expect(reaching(undefined, 0, 1)).toBeUndefined();
});

test("every figure in blue on the drawing leads to its question, and nothing else does", () => {
  const box = boxOfPlan(found.value, "Stock pump 2");
  if (!box) throw new Error("nothing to draw");
  const { texts } = sheetOf(drawBoxSection(box), { width: 200 }).placed;
  const blue = texts.filter(({ ink, id }) => ink === "measured" && id !== "key-measured");
  expect(blue.length).toBeGreaterThan(4);
  expect(blue.filter(({ id }) => fieldOfFigure(id, box) === undefined).map(({ id }) => id)).toEqual([]);
  expect(fieldOfFigure("figure-set", box)).toBeUndefined();
  // The port's label has a line more where a flush is set.
  const flushed = { port: box.port && { ...box.port, flush: { value: quantity("pressure", 2, "bar"), by: "measured" as const } } };
  expect(fieldOfFigure("port-label-1", { ...(flushed.port ? { port: flushed.port } : {}) })).toBe("flush.set");
  expect(fieldOfFigure("port-label-1", box)).toBe("port.diameter");
});

test("what is said about a set is said once, limits before notes before gaps; the drill shank has its own place", () => {
  const warnings = warningsOf(found.value);
  const texts = warnings.map(({ says }) => JSON.stringify(says));
  expect(new Set(texts).size).toBe(texts.length);
  expect(warnings.map(({ says }) => says.id).filter((id) => id.startsWith("lantern-repack"))).toEqual([]);
  const hands = warnings.map(needsHand);
  expect([...hands].sort((one, other) => Number(other) - Number(one))).toEqual(hands);
  const gaps = warnings.map(({ kind }) => kind === "gap");
  expect([...gaps].sort((one, other) => Number(one) - Number(other))).toEqual(gaps);
});

test("a flush port in a set without a lantern ring needs a hand", () => {
  const { survey } = found.value;
  const without = plan({ ...survey, lantern: { wanted: false } }, readAllFacts());
  expect(
    without.ok &&
      warningsOf(without.value)
        .filter(needsHand)
        .map(({ says }) => says.id),
  ).toContain("rings-port-without-lantern");
});
