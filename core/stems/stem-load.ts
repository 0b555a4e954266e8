import { bolt, type GlandFacts, glandLoad, type NutCondition, type Seating } from "../gland/index.ts";
import type { Force, Length, Stress, Torque } from "../units/index.ts";
import { type Answer, type Band, begin, outside, rule, type Workings } from "../workings/index.ts";
import { loadLeft } from "./load-left.ts";
import type { StemFacts } from "./stem-facts.ts";
import { stemFriction } from "./stem-friction.ts";
import { type StemGovernor, type StemStressGiven, stemGlandStress } from "./stem-gland-stress.ts";

const rejectionRule = rule({
  id: "stem-rejection-load",
  symbol: "F_r",
  expression: "p · π d² / 4",
  unit: "N",
  inputs: [
    { symbol: "p", name: "pressure", unit: "Pa" },
    { symbol: "d", name: "stem", unit: "m" },
  ],
  citation: { source: "nrc-in-92-41", at: "that the load exists; its size is pressure times stem area" },
});

const studUseRule = rule({
  id: "stud-use",
  symbol: "u",
  expression: "F / F_p",
  unit: "1",
  inputs: [
    { symbol: "F", name: "load-per-nut", unit: "N" },
    { symbol: "F_p", name: "proof-load", unit: "N" },
  ],
  citation: { source: "definition" },
});

export interface StemLoadGiven extends StemStressGiven {
  readonly stem: Length;
  readonly bore: Length;
  readonly nuts: number;
  readonly thread: string;
  readonly nutFactor?: number;
  readonly nutCondition?: NutCondition;
  readonly propertyClass?: string;
  readonly packedLength: Length;
  readonly friction: number;
  readonly ratio?: number;
  readonly seating?: Seating;
}

export interface StemLoad {
  readonly glandStress: Stress;
  readonly governs: StemGovernor;
  readonly force: Force;
  readonly perNut: Force;
  readonly perNutBand: Band<Force>;
  readonly torque: Torque;
  readonly advancePerFlat: Length;
  readonly stemFriction: Force;
  readonly frictionBand: Band<Force>;
  /** Force by which the pressure drives the stem out; it comes on top of the friction. */
  readonly rejectionLoad: Force;
  readonly proofLoad: Force;
  /** Load over proof load of one stud, at the torque's aim. */
  readonly studUse: number;
  /** The same where the torque gives its most. */
  readonly studUseHigh: number;
  /** Gland stress after a hundred strokes without tightening again. */
  readonly loadLeft: Band<Stress>;
}

/**
 * What a valve stem set asks: gland stress, torque per nut, stem friction and
 * how much of the stud that uses.
 *
 *   σ_g = max(σ_0, m p),   T = K_n σ_g A d / z,   F_s = π d H σ_g μ Y
 *
 * A stud without a mark counts as the lowest class, with a warning. Gland
 * flange, eyebolts and pins are not checked. A stem is meant to be tight:
 * there is no drip to set.
 *
 * Units: lengths m, pressure (gauge) and stress Pa, force N, torque N*m.
 * Range: as `glandLoad` and `stemFriction`; pressure 0 to 100 MPa, floor stress 0 to 500 MPa, multiple 0 to 10; refused outside.
 * Without floor stress and multiple, given or by `set`: `not-known`. A stud above its proof load is flagged as a limit.
 * Source: packing maker's valve torque sheet of 1996 (load rule, torque), Drago and Evans 2017 (friction), ISO 898-1 (studs).
 * @example stemLoad({ stem, bore, pressure, set: "formed-graphite", nuts: 2, thread: "5/8-11", nutFactor: 0.2, propertyClass: "B7", packedLength, friction: 0.1 }, stems, gland)
 */
export function stemLoad(given: StemLoadGiven, facts: StemFacts, gland: GlandFacts): Answer<StemLoad> {
  const { stem, bore, pressure, nuts, thread, packedLength, friction, ratio, seating = "unknown" } = given;
  const refused = outside([["stem", stem, { min: Number.MIN_VALUE, max: 6 }, "m"]]);
  if (refused) return refused;
  const work = begin();
  work.warn({ kind: "caution", says: { id: "stem-under-pressure" } });
  const wanted = stemGlandStress(work, given, facts);
  if (!wanted.ok) return wanted;
  const { glandStress, governs } = wanted;
  const load = glandLoad({ shaft: stem, bore, glandStress, nuts, thread, motion: "rising-stem", ...nutFactorGiven(given) }, gland);
  if (!load.ok) return load;
  const slides = stemFriction({ stem, bore, packedLength, glandStress, friction, seating, ...(ratio === undefined ? {} : { ratio }) });
  if (!slides.ok) return slides;
  const stud = bolt({ thread, ...(given.propertyClass === undefined ? {} : { propertyClass: given.propertyClass }) }, gland);
  if (!stud.ok) return stud;

  const { force, perNut, perNutBand, torque, advancePerFlat } = work.take(load);
  const { stemFriction: most, frictionBand } = work.take(slides);
  const rejectionLoad = work.step(rejectionRule, [pressure, stem], ((pressure * Math.PI * stem * stem) / 4) as Force);
  const { proofLoad } = work.take(stud);
  const use = (pull: Force) => work.step(studUseRule, [pull, proofLoad], pull / proofLoad);
  const studUse = use(perNut);
  const studUseHigh = use(perNutBand.high);
  warnOfStem(work, studUse, studUseHigh);
  return work.found({
    glandStress,
    governs,
    force,
    perNut,
    perNutBand,
    torque,
    advancePerFlat,
    stemFriction: most,
    frictionBand,
    rejectionLoad,
    proofLoad,
    studUse,
    studUseHigh,
    loadLeft: loadLeft(work, glandStress, seating, facts.loadLoss),
  });
}

function nutFactorGiven({ nutFactor, nutCondition }: StemLoadGiven) {
  return { ...(nutFactor === undefined ? {} : { nutFactor }), ...(nutCondition === undefined ? {} : { nutCondition }) };
}

function warnOfStem(work: Workings, studUse: number, studUseHigh: number): void {
  if (studUse > 1) work.warn({ kind: "limit", input: "propertyClass", says: { id: "stud-over-proof", with: { share: percent(studUse) } } });
  else if (studUseHigh > 1) {
    work.warn({ kind: "limit", input: "nutFactor", says: { id: "stud-may-pass-proof", with: { share: percent(studUseHigh) } } });
  }
  work.warn({ kind: "gap", says: { id: "stem-parts-unchecked" } });
  work.warn({ kind: "note", says: { id: "stem-no-drip" } });
  work.warn({ kind: "note", input: "friction", says: { id: "stem-may-stick" }, citation: { source: "fsa-valve-leak-2016" } });
}

const percent = (share: number): number => Math.round(100 * share);
