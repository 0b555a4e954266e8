import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import { type FrictionPower, frictionPower } from "./index.ts";

type Given = Parameters<typeof frictionPower>[0];

const pump: Given = {
  shaft: quantity("length", 50, "mm"),
  bore: quantity("length", 70, "mm"),
  packedLength: quantity("length", 50, "mm"),
  glandStress: quantity("stress", 0.5, "MPa"),
  ratio: 0.5,
  frictionBore: 0.1,
  frictionRunning: 0.05,
  rotation: quantity("rotation", 1450, "rpm"),
};
const film = { clearance: quantity("length", 8.607, "um"), viscosity: quantity("viscosity", 1.0016, "mPa*s") };

function work(given: Given): FrictionPower {
  const answer = frictionPower(given);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

// The reference lets the shaft rub along as well as round. With its wall friction put wholly on the bore
// (μ D = μ_s d + μ_h D) the stress decays alike, and the torque of the shaft wall must be the same.
against(
  {
    topic: "heat",
    check: "Friction torque on the shaft under decaying stress",
    source: { source: "python-scipy", at: "solve_ivp for the stress, quad for the torque; inputs invented" },
    tolerance: "closed form against quadrature",
  },
  [
    {
      what: "50/70 mm, 50 mm packed, 10 MPa, K 0.6, friction 0.08 on the shaft, 0.12 on the bore",
      theirs: 70.23824324529963,
      ours: () =>
        work({
          ...pump,
          glandStress: quantity("stress", 10, "MPa"),
          ratio: 0.6,
          frictionBore: (0.08 * 50 + 0.12 * 70) / 70,
          frictionRunning: 0.08,
        }).torque,
      unit: "N*m",
      within: { relative: 1e-12 },
    },
  ],
);

/** Torque, by adding up thin slices of packing: no closed form. */
function torqueBySlices(g: { d: number; D: number; L: number; sigma: number; K: number; bore: number; running: number }, slices: number) {
  let axial = g.sigma;
  let torque = 0;
  const dx = g.L / slices;
  const area = (Math.PI * (g.D ** 2 - g.d ** 2)) / 4;
  for (let i = 0; i < slices; i++) {
    const half = axial - (g.bore * g.K * axial * Math.PI * g.D * dx) / 2 / area;
    torque += (g.running * g.K * half * Math.PI * g.d * dx * g.d) / 2;
    axial -= (g.bore * g.K * half * Math.PI * g.D * dx) / area;
  }
  return torque;
}

test("the torque is what slices of packing add up to", () => {
  const bySlices = torqueBySlices({ d: 0.05, D: 0.07, L: 0.05, sigma: 5e5, K: 0.5, bore: 0.1, running: 0.05 }, 20000);
  expect(work(pump).torque / bySlices - 1).toBeCloseTo(0, 8);
});

test("a 50 mm pump at half a megapascal and 1450 rpm: 85 N, 2.1 N·m, 323 W dry and 13 W on a film", () => {
  const found = work({ ...pump, ...film });
  expect(found.frictionForce).toBeCloseTo(85.15, 1);
  expect(found.torque).toBeCloseTo(2.129, 3);
  expect(found.coulomb).toBeCloseTo(323.3, 0);
  expect(found.film).toBeCloseTo(13.17, 1);
  expect(found.band).toEqual({ low: found.film, high: found.coulomb });
});

describe("what is not measured", () => {
  test("is taken, said in the workings, and widens the band", () => {
    const { shaft, bore, packedLength, glandStress, rotation } = pump;
    const answer = frictionPower({ shaft, bore, packedLength, glandStress, rotation, ...film });
    if (!answer.ok) throw new Error("refused");
    const taken = answer.workings.filter(([rule]) => rule.assumed).map(([rule, , value]) => [rule.name, value]);
    expect(taken).toEqual([
      ["ratio", 0.5],
      ["frictionBore", 0.1],
      ["frictionRunning", 0.02],
    ]);
    expect(answer.value.band.high).toBeCloseTo(work({ ...pump, ratio: 0.9, frictionBore: 0.05, frictionRunning: 0.1 }).coulomb, 6);
    expect(answer.value.band.high).toBeGreaterThan(answer.value.coulomb * 5);
  });

  test("without a film the band still is a band, and the gap is named", () => {
    const answer = frictionPower(pump);
    if (!answer.ok) throw new Error("refused");
    expect(answer.value.film).toBeUndefined();
    expect(answer.value.band.low).toBeCloseTo(work({ ...pump, frictionRunning: 0.005 }).coulomb, 6);
    expect(answer.value.band.high).toBe(answer.value.coulomb);
    expect(answer.warnings.map(({ says }) => says.id)).toContain("no-film-bound");
  });
});

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => quantity("length", value, "mm"));
const boxes = fc.record({
  shaft: mm(10, 300),
  section: mm(3, 30),
  packedLength: mm(5, 400),
  glandStress: fc.double({ min: 1e4, max: 5e7, noNaN: true }),
  ratio: fc.double({ min: 0.01, max: 1, noNaN: true }),
  frictionBore: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
  frictionRunning: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
  rpm: fc.double({ min: 1, max: 6000, noNaN: true }),
});
const givenOf = ({ section, rpm, ...rest }: { shaft: number; section: number; rpm: number }): Given =>
  ({ ...rest, bore: rest.shaft + 2 * section, rotation: quantity("rotation", rpm, "rpm") }) as never;

property("torque times turns is power, and drag times surface speed is the same", [boxes], (box) => {
  const given = givenOf(box);
  const found = work(given);
  expect((found.torque * given.rotation) / found.coulomb).toBeCloseTo(1, 10);
  expect((found.frictionForce * found.speed) / found.coulomb).toBeCloseTo(1, 10);
});

property(
  "more gland stress, ratio, running friction or packed length is more drag; more friction on the bore is less",
  [boxes, fc.double({ min: 1.01, max: 2, noNaN: true })],
  (box, more) => {
    const given = givenOf(box);
    const drag = work(given).frictionForce;
    const changed = (name: keyof Given) => work({ ...given, [name]: (given[name] as number) * more } as Given).frictionForce;
    for (const name of ["glandStress", "frictionRunning"] as const) expect(changed(name) / drag).toBeCloseTo(more, 8);
    for (const name of ["ratio", "packedLength"] as const) expect(changed(name)).toBeGreaterThanOrEqual(drag * (1 - 1e-12));
    expect(changed("frictionBore")).toBeLessThanOrEqual(drag * (1 + 1e-12));
  },
);

property("with no friction on the bore, or next to no side pressure, the stress does not decay", [boxes], (box) => {
  const given = givenOf(box);
  const flat = (ratio: number) => (given.frictionRunning ?? 0) * ratio * given.glandStress * Math.PI * given.shaft * given.packedLength;
  expect(work({ ...given, frictionBore: 0 }).frictionForce / flat(given.ratio ?? 0)).toBeCloseTo(1, 12);
  expect(work({ ...given, ratio: 1e-9 }).frictionForce / flat(1e-9)).toBeCloseTo(1, 5);
  expect(work({ ...given, ratio: 0 }).frictionForce).toBe(0);
});

property(
  "the band runs from low to high whatever is known, and holds both bounds",
  [boxes, fc.constantFrom("ratio", "frictionBore", "frictionRunning", "none"), fc.boolean()],
  (box, unknown, withFilm) => {
    const { [unknown as "ratio"]: _, ...given } = givenOf(box);
    const found = work(withFilm ? { ...given, ...film } : given);
    expect(found.band.low).toBeLessThanOrEqual(found.band.high);
    expect(found.band.low).toBeLessThanOrEqual(found.coulomb);
    expect(found.band.high).toBeGreaterThanOrEqual(found.coulomb);
    expect(found.film ?? found.band.low).toBeGreaterThanOrEqual(found.band.low);
    expect(found.film ?? found.band.high).toBeLessThanOrEqual(found.band.high);
  },
);

test("where the stress dies away before the bottom, the ratio cancels and the band still holds the usual value", () => {
  const long = work({
    shaft: quantity("length", 10, "mm"),
    bore: quantity("length", 16, "mm"),
    packedLength: 0.3468439467429645 as never,
    glandStress: 306784.21286815684 as never,
    frictionBore: 0.49506933572524503,
    frictionRunning: 0.013809493194684247,
    rotation: quantity("rotation", 1, "rpm"),
  });
  expect(long.band.high).toBeGreaterThanOrEqual(long.coulomb);
  expect(long.band.low).toBeLessThanOrEqual(long.coulomb);
});

property("inches and millimetres, psi and megapascals give the same power", [mm(10, 200)], (shaft) => {
  const inch = (value: number) => quantity("length", inUnit("length", value as never, "in"), "in");
  const metric = work({ ...pump, shaft, bore: (shaft * 1.4) as never });
  const typedInInches = work({
    ...pump,
    shaft: inch(shaft),
    bore: inch(shaft * 1.4),
    glandStress: quantity("stress", inUnit("stress", pump.glandStress, "psi"), "psi"),
  });
  expect(typedInInches.coulomb / metric.coulomb).toBeCloseTo(1, 11);
});

describe("what cannot be", () => {
  test.each([
    ["shaft", 0],
    ["shaft", Number.NaN],
    ["bore", 1e308],
    ["packedLength", -0.05],
    ["glandStress", -1],
    ["ratio", Number.NaN],
    ["frictionRunning", 3],
    ["rotation", Infinity],
    ["clearance", 0],
    ["viscosity", -1],
  ] as const)("%s of %s is refused by name", (input, value) => {
    expect(frictionPower({ ...pump, ...film, [input]: value })).toMatchObject({ ok: false, refusal: { kind: "outside-range", input } });
  });

  test("a bore no larger than the shaft is impossible", () => {
    expect(frictionPower({ ...pump, bore: pump.shaft })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore" } });
  });

  test("a thick gap, a ratio above one and a film that outdoes rubbing are flagged, not hidden", () => {
    const ids = (more: Partial<Given>) => {
      const answer = frictionPower({ ...pump, ...film, ...more });
      return answer.ok ? answer.warnings.map(({ says }) => says.id) : [];
    };
    expect(ids({ clearance: quantity("length", 2, "mm") })).toContain("film-not-thin");
    expect(ids({ ratio: 1.2 })).toContain("outside-validity");
    expect(ids({ viscosity: quantity("viscosity", 1, "Pa*s") })).toContain("film-above-coulomb");
    expect(ids({ rotation: 0 as never })).toContain("not-turning");
    expect(ids({})).toEqual(["torque-is-coulomb"]);
  });
});
