import { readAllFacts } from "@ringwright/data";
import { describe, expect, test } from "vitest";
import type { Json } from "./field.ts";
import { ask, findAnswer } from "./reply.ts";

/*
 * The names that others rely on, asked from outside: each question in its fixed
 * fields only, with figures worked out by hand from the formula beside them.
 */

const facts = readAllFacts();

type Group = { readonly [name: string]: Json };

function found(name: string, question: Json): { answer: Group; workings: readonly Group[]; warnings: readonly Group[] } {
  const reply = ask(name, question, facts);
  if (!reply.ok) throw new Error(`${name}: ${reply.refusal.kind} ${reply.refusal.input}: ${reply.refusal.why}`);
  return { answer: reply.answer as Group, workings: reply.workings as readonly Group[], warnings: reply.warnings as readonly Group[] };
}

/** The number at a path of an answer: `torque`, `band.low`, `profile.2.axial`. */
function at(answer: Json, path: string): number {
  let here: Json = answer;
  for (const part of path.split(".")) here = (here as Group)[part] ?? null;
  const value = typeof here === "object" && here !== null && !Array.isArray(here) ? (here as Group).value : here;
  if (typeof value !== "number") throw new Error(`no number at ${path}`);
  return value;
}

const mm = (value: number) => ({ value, unit: "mm" });
const ring = { height: "10 mm", ratio: 0.5, frictionShaft: 0.1, frictionBore: 0.1 };
const lantern = { height: "16 mm", ratio: 0, frictionShaft: 0.1, frictionBore: 0.1 };
const gap = { diameter: "50 mm", length: "50 mm", pressureDrop: "3 bar", viscosity: "1.0016 mPa*s" };

interface Row {
  readonly name: string;
  /** Every field that has a fixed name; those that may be left out end in `?`. */
  readonly fields: string;
  readonly question: Group;
  /** Members that the answer must have. */
  readonly members: string;
  readonly figures: Readonly<Record<string, number>>;
  readonly by: string;
}

const rows: readonly Row[] = [
  {
    name: "quantity",
    fields: "text kind",
    question: { text: "1 3/4 in", kind: "length" },
    members: "value unit",
    figures: { value: 1.75 * 0.0254 },
    by: "inch of 25.4 mm, NIST SP 811 appendix B",
  },
  {
    name: "measured",
    fields: "readings resolution how?",
    question: { readings: [mm(50.01), "50.02 mm", "4.998 cm"], resolution: "0.01 mm" },
    members: "mean standardUncertainty spread",
    figures: { mean: 0.05000333333333333, standardUncertainty: 1.2360330811827613e-5, spread: 4e-5 },
    by: "JCGM 100:2008, 4.2.3 and F.2.2.1: root sum of squares of s/√n and step/√12",
  },
  {
    name: "measured",
    fields: "readings resolution how?",
    question: { readings: ["50 mm"], resolution: "0.01 mm" },
    members: "mean standardUncertainty spread",
    figures: { mean: 0.05, standardUncertainty: 2.886751345948129e-6, spread: 0 },
    by: "JCGM 100:2008, F.2.2.1: of one reading only step/√12 is known",
  },
  {
    name: "section",
    fields: "shaft bore shaftReadings? boreReadings? resolution? series?",
    question: { shaft: "2 in", bore: "4 in", series: "inch" },
    members: "section stock",
    figures: { section: 0.0254 },
    by: "Mobley, Root Cause Failure Analysis, p. 226",
  },
  {
    name: "ring-cut",
    fields: "shaft section? bore? cut angle?",
    question: { shaft: mm(50), section: "10 mm", cut: "skive", angle: "30 deg" },
    members: "length cutLength mandrel",
    figures: { length: 0.18849555921538758, cutLength: 0.20581606729107635, mandrel: 0.05 },
    by: "geometry: π (d + s), and s / tan 30° more from tip to tip",
  },
  {
    name: "ring-cut",
    fields: "shaft section? bore? cut angle?",
    question: { shaft: mm(50), bore: "70 mm", cut: "skive", angle: "90 deg" },
    members: "length cutLength mandrel",
    figures: { length: 0.18849555921538758, cutLength: 0.18849555921538758, mandrel: 0.05 },
    by: "geometry: a cut at 90° to the strip is square",
  },
  {
    name: "coil",
    fields: "shaft section? bore? cut angle? rings trim?",
    question: { shaft: "50 mm", section: "10 mm", cut: "skive", angle: "30 deg", rings: 5, trim: "5 mm" },
    members: "length",
    figures: { length: 0.9847983041526266 },
    by: "geometry: parallel slant cuts share one bevel, 5 (π (d + s) + trim) + s / tan 30°",
  },
  {
    name: "lantern-track",
    fields: "ringsThroatSide ringsGlandSide ringHeight lanternWidth window portFromThroat portDiameter gapTravel",
    question: {
      ringsThroatSide: 2,
      ringsGlandSide: 3,
      ringHeight: "12.5 mm",
      lanternWidth: "16 mm",
      window: "12 mm",
      portFromThroat: "31 mm",
      portDiameter: "6 mm",
      gapTravel: "15 mm",
    },
    members: "offsetAtStart share opensUntil shutAt",
    figures: { offsetAtStart: 0.002, share: 0.4, opensUntil: 0.0125, shutAt: 0.0275 },
    by: "geometry: 25 + 8 − 31 = 2 mm; open to −3 mm, shut at −9 mm, at 2/5 of the gland's movement",
  },
  {
    name: "stress-along-box",
    fields: "shaft bore glandStress parts turning",
    question: { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", parts: [ring, lantern, ring, ring], turning: false },
    members: "profile atBottom mean",
    figures: { atBottom: 370409.11034085887, mean: 439082.3545696041 },
    by: "exponential decay, β = 4 (μ K d + μ K D) / (D² − d²) = 10 / m in rings, 0 in the lantern ring; mean over all 46 mm",
  },
  {
    name: "stress-along-box",
    fields: "shaft bore glandStress parts turning",
    question: { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", parts: [ring, ring, ring, ring, ring], turning: true },
    members: "profile atBottom mean",
    figures: { atBottom: 373508.75015521626, mean: 433684.28518211556 },
    by: "the same without the shaft's term: on a turning shaft friction goes round, not along",
  },
  {
    name: "seal-stress",
    fields: "shaft bore pressure parts turning motion",
    question: {
      shaft: "50 mm",
      bore: "70 mm",
      pressure: "10 bar",
      parts: [ring, ring, ring, ring, ring],
      turning: false,
      motion: "turning",
    },
    members: "lower upper",
    figures: { lower: 2e6, upper: 3297442.5414002566 },
    by: "radial stress K σ equal to the pressure at the gland and at the bottom: p / K and p / K · e^(β L)",
  },
  {
    name: "gland-load",
    fields: "shaft bore glandStress nuts thread nutFactor boxPressure?",
    question: { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", nuts: 2, thread: "M12", nutFactor: 0.2, boxPressure: "3 bar" },
    members: "force perNut torque advancePerFlat pushOut",
    figures: {
      force: 942.477796076938,
      pushOut: 565.4866776461628,
      perNut: 753.9822368615504,
      torque: 1.8095573684677213,
      advancePerFlat: 0.00175 / 6,
    },
    by: "force balance on π/4 (D² − d²); T = K F d; pitch of M12 1.75 mm by ISO 261",
  },
  {
    name: "stem-load",
    fields: "stem bore pressure floorStress timesPressure nuts thread nutFactor propertyClass packedLength friction",
    question: {
      stem: "1 in",
      bore: "1 1/2 in",
      pressure: "600 psi",
      floorStress: "3800 psi",
      timesPressure: 1.5,
      nuts: 2,
      thread: "5/8-11",
      nutFactor: 0.2,
      propertyClass: "8.8",
      packedLength: "1 in",
      friction: 0.1,
    },
    members: "glandStress force torque stemFriction studUse",
    figures: { glandStress: 26200077.714039773, force: 16594.719163299527, torque: 26.344116671738, stemFriction: 2655.155066127925 },
    by: "packing maker's valve torque sheet of 1996; friction π d H σ μ Y with Y = 0.5, PVS2017-3518",
  },
  {
    name: "bolt",
    fields: "thread propertyClass?",
    question: { thread: "M12", propertyClass: "8.8" },
    members: "stressArea proofLoad pitch",
    figures: { stressArea: 84.266533027733e-6, proofLoad: 48900, pitch: 0.00175 },
    by: "ISO 898-1: π/4 ((d₂ + d₃) / 2)², d₂ = d − 3/4 H, d₃ = d − 17/12 H, and the printed proof load",
  },
  {
    name: "box-pressure",
    fields: "suction discharge design",
    question: { suction: "10 psi", discharge: "200 psi", design: "balance holes" },
    members: "band typical",
    figures: { typical: 265448.15578698186 },
    by: "Buck, Estimating the Pressure in Pump Seal Chambers: 38.5 psi",
  },
  {
    name: "annular-leak",
    fields: "diameter clearance length pressureDrop viscosity eccentricity",
    question: { ...gap, clearance: "10 um", eccentricity: 0.5 },
    members: "flow reynolds",
    figures: { flow: 1.0781973588972557e-7 },
    by: "laminar flow in a narrow annulus, π d c³ Δp (1 + 1.5 e²) / (12 η L)",
  },
  {
    name: "clearance-from-leak",
    fields: "diameter flow length pressureDrop viscosity eccentricity",
    question: { ...gap, flow: { value: 1.0781973588972557e-7, unit: "m3/s" }, eccentricity: 0.5 },
    members: "clearance",
    figures: { clearance: 1e-5 },
    by: "the same the other way round",
  },
  {
    name: "friction-power",
    fields: "shaft bore packedLength glandStress ratio? frictionBore? frictionRunning? rotation clearance? viscosity?",
    question: {
      shaft: "50 mm",
      bore: "70 mm",
      packedLength: "50 mm",
      glandStress: "0.5 MPa",
      ratio: 0.5,
      frictionBore: 0.1,
      frictionRunning: 0.05,
      rotation: "1450 rpm",
      clearance: "8.607 um",
      viscosity: "1.0016 mPa*s",
    },
    members: "torque band coulomb film",
    figures: { torque: 2.128842756727305, coulomb: 323.2512436504799, film: 13.170602786790731 },
    by: "μ K σ π d (1 − e^(−βL)) / β with the shaft's axial friction nought; Petroff η π d L v² / c",
  },
  {
    name: "surface-speed",
    fields: "shaft rotation",
    question: { shaft: "50 mm", rotation: "1450 rpm" },
    members: "speed",
    figures: { speed: 3.796091123087667 },
    by: "π d n / 60",
  },
  {
    name: "water",
    fields: "temperature pressure",
    question: { temperature: "300 K", pressure: "3 MPa" },
    members: "density viscosity heatCapacity saturationPressure",
    figures: { density: 1 / 0.00100215168, heatCapacity: 4173.01218, saturationPressure: 3536.58941 },
    by: "IAPWS R7-97, tables 5 and 35",
  },
  {
    name: "drops",
    fields: "rate dropVolume?",
    question: { rate: 60, dropVolume: "0.05 mL" },
    members: "flow",
    figures: { flow: 5e-8 },
    by: "60 drops of 1/20 mL a minute",
  },
];

for (const [number, row] of rows.entries()) {
  test(`${number + 1}. ${row.name} answers in its fixed names: ${row.by}`, () => {
    const { answer } = found(row.name, row.question);
    for (const member of row.members.split(" ")) expect(answer, member).toHaveProperty(member);
    for (const [path, figure] of Object.entries(row.figures)) {
      expect(Math.abs(at(answer, path) - figure), path).toBeLessThanOrEqual(Math.abs(figure) * 1e-8);
    }
  });
}

test("flush-flow carries the heat away at the rise asked for", () => {
  // ρ 998.206 kg/m³ and c_p 4184.8 J/(kg·K) at 20 °C, IAPWS R7-97; to the density of the mean temperature at most 1 %.
  const { answer } = found("flush-flow", { power: "323.3 W", rise: "20 K", temperature: "20 degC" });
  expect(Math.abs(at(answer, "flow") / (323.3 / (998.206 * 4184.8 * 20)) - 1)).toBeLessThan(0.001);
});

test("ring-set names its rings from the bottom to the gland, and nothing beyond a motion and the sizes is needed", () => {
  const { answer } = found("ring-set", { motion: "turning", shaft: "50 mm", bore: "70 mm", depth: "80 mm" });
  for (const member of ["rings", "entry", "joints"]) expect(answer).toHaveProperty(member);
  const rings = answer.rings as readonly Group[];
  expect(rings.map((one) => one.number)).toEqual(rings.map((_, index) => index + 1));
  expect((answer.joints as readonly number[]).slice(0, 5)).toEqual([12, 3, 6, 9, 12]);
});

test("materials ranks and rejects, each with what binds it", () => {
  const { answer } = found("materials", {
    motion: "turning",
    fluids: ["cold_industrial_water"],
    temperature: "40 degC",
    pressure: "5 bar",
    speed: "8 m/s",
    pH: 7,
    solids: "none",
    sleeve: "13Cr_hardened",
    phase: "liquid",
    condition: "good",
    release: "allowed",
    use: "none",
  });
  const all = [...(answer.ranked as readonly Group[]), ...(answer.rejected as readonly Group[])];
  expect(all).toHaveLength(25);
  for (const one of all) {
    expect(one).toHaveProperty("binding");
    expect((one.because as readonly Json[]).length).toBeGreaterThan(0);
  }
});

describe("nothing beyond the fixed fields is required", () => {
  for (const { name, fields } of rows) {
    test(name, () => {
      const schema = findAnswer(name)?.question.schema as { required: readonly string[]; properties: Group };
      const fixed = fields.split(" ").map((field) => field.replace("?", ""));
      expect(Object.keys(schema.properties)).toEqual(expect.arrayContaining(fixed));
      const needed = fields.split(" ").filter((field) => !field.endsWith("?"));
      expect(schema.required.filter((field) => !needed.includes(field))).toEqual([]);
    });
  }
});

test("a default taken for a field left out stands in the workings with its spread", () => {
  const left: readonly (readonly [string, Group, number])[] = [
    ["friction-power", { shaft: "50 mm", bore: "70 mm", packedLength: "50 mm", glandStress: "0.5 MPa", rotation: "1450 rpm" }, 3],
    ["gland-load", { shaft: "50 mm", bore: "70 mm", glandStress: "0.5 MPa", nuts: 2, thread: "M12" }, 1],
    ["drops", { rate: 60 }, 1],
    ["coil", { shaft: "50 mm", bore: "70 mm", cut: "skive", rings: 5 }, 2],
    ["ring-cut", { shaft: "50 mm", bore: "70 mm", cut: "skive" }, 1],
    ["section", { shaft: "50 mm", bore: "70 mm" }, 1],
    ["flush-flow", { power: "300 W", rise: "10 K", temperature: "20 degC" }, 1],
  ];
  for (const [name, question, least] of left) {
    const { workings } = found(name, question);
    expect(workings.filter((step) => step.assumed !== undefined).length, name).toBeGreaterThanOrEqual(least);
  }
});

test("how hard a stem's set is pressed has no hidden default", () => {
  const stem = rows.find((row) => row.name === "stem-load")?.question ?? {};
  for (const field of ["floorStress", "timesPressure"]) {
    const { [field]: _, ...left } = stem;
    expect(ask("stem-load", left, facts), field).toMatchObject({ ok: false, refusal: { input: field } });
  }
});

test("a stud that bears no mark counts as the lowest class, and that is said", () => {
  const { answer, warnings } = found("bolt", { thread: "M12", propertyClass: "ungraded" });
  expect(at(answer, "proofLoad")).toBe(19000); // ISO 898-1, class 4.6
  expect(warnings).toContainEqual(expect.objectContaining({ kind: "gap", input: "propertyClass" }));
});

test("a seal stress on a turning shaft is said to be for standstill, no setting", () => {
  const question = rows.find((row) => row.name === "seal-stress")?.question ?? {};
  expect(found("seal-stress", question).warnings).toContainEqual(expect.objectContaining({ input: "motion", given: "turning" }));
  expect(found("seal-stress", { ...question, motion: "rising-stem" }).warnings).not.toContainEqual(
    expect.objectContaining({ input: "motion" }),
  );
});

test("gauge and absolute pressures are never taken for one another, and what is wanted is said", () => {
  const why = (name: string, question: Json) => {
    const reply = ask(name, question, facts);
    return reply.ok ? "ok" : `${reply.refusal.kind} ${reply.refusal.input}: ${reply.refusal.why}`;
  };
  expect(why("water", { temperature: "20 degC", pressure: "1 barg" })).toMatch(/^wrong-unit pressure: .*vacuum/u);
  expect(why("box-pressure", { suction: "1 bara", discharge: "5 bar", design: "unknown" })).toMatch(/^wrong-unit suction: .*atmosphere/u);
});

test("a temperature below the lowest is no quantity", () => {
  for (const text of ["-300 °C", "-1 K", "-500 F"]) {
    expect(ask("quantity", { text, kind: "temperature" }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "impossible", input: "text", given: text },
    });
  }
});
