import type { Force, Length, Power, Rotation, Speed, Stress, Torque, Viscosity } from "../units/index.ts";
import { type Answer, type Band, begin, outside, refuse } from "../workings/index.ts";
import { frictionBoreTaken, frictionRunningTaken, ratioTaken } from "./friction-assumptions.ts";
import { coulombRule, decayRule, dragRule, filmRule, highestRule, lowestRule, torqueRule } from "./friction-rules.ts";
import { surfaceSpeed } from "./surface-speed.ts";

/** Above this share of the shaft the gap is no longer a thin film. */
const thinFilm = 0.02;

/** (1 − exp(−x)) / x without loss of digits, 1 at x = 0. */
function meanOfDecay(x: number): number {
  return x === 0 ? 1 : -Math.expm1(-x) / x;
}

export interface FrictionPower {
  /** Coulomb torque of the packing on the shaft while it turns. */
  readonly torque: Torque;
  /** Friction power: from the film bound, where known, to the Coulomb bound. */
  readonly band: Band<Power>;
  readonly coulomb: Power;
  /** Only where clearance and viscosity are known. */
  readonly film?: Power;
  readonly frictionForce: Force;
  readonly speed: Speed;
}

/**
 * Torque and power that the packing takes from a turning shaft, between two
 * bounds: a full liquid film (Petroff) and dry rubbing (Coulomb). The torque is
 * the Coulomb torque. Shaft wall only; the shaft carries no axial friction
 * while it turns, so the stress decays along the bore alone.
 *
 *   b = 4 μ_o K D / (D² − d²);  F = μ_d K σ_g π d (1 − exp(−b L)) / b
 *   M = F d / 2;  P_C = F v;  P_f = η π d L v² / c
 *
 * Left out, the ratio, the friction on the bore and the running friction are
 * taken as 0.5 (0.3 to 0.9), 0.10 (0.05 to 0.25) and 0.02 (0.005 to 0.10), and
 * the band then spans those spreads. Without clearance and viscosity there is
 * no film bound and the band starts at the Coulomb power of a well wetted shaft.
 *
 * Units: lengths m, σ_g Pa, rotation rad/s, η Pa·s, torque N·m, power W.
 * Range: shaft 1 mm to 5 m; bore above the shaft; packed length 0.5 mm to 5 m; gland stress
 * 0 to 1 GPa; ratio 0 to 5, flagged above 1; friction 0 to 2; rotation 0 to 6000 rad/s;
 * clearance 1 nm to 50 mm, flagged above 2 % of the shaft; viscosity 1 µPa·s to 1 kPa·s. Refused outside.
 * Source: force balance, derived here; Petroff from memory.
 * @example frictionPower({ shaft, bore, packedLength, glandStress, ratio: 0.5, frictionBore: 0.1, frictionRunning: 0.05, rotation })
 */
export function frictionPower(given: {
  readonly shaft: Length;
  readonly bore: Length;
  readonly packedLength: Length;
  readonly glandStress: Stress;
  readonly ratio?: number;
  readonly frictionBore?: number;
  readonly frictionRunning?: number;
  readonly rotation: Rotation;
  readonly clearance?: Length;
  readonly viscosity?: Viscosity;
}): Answer<FrictionPower> {
  const { shaft: d, bore: D, packedLength: L, glandStress, rotation, clearance, viscosity } = given;
  const refused = outside([
    ["shaft", d, { min: 0.001, max: 5 }, "m"],
    ["bore", D, { min: 0.001, max: 6 }, "m"],
    ["packedLength", L, { min: 0.0005, max: 5 }, "m"],
    ["glandStress", glandStress, { min: 0, max: 1e9 }, "Pa"],
    ["ratio", given.ratio ?? 0, { min: 0, max: 5 }, "1"],
    ["frictionBore", given.frictionBore ?? 0, { min: 0, max: 2 }, "1"],
    ["frictionRunning", given.frictionRunning ?? 0, { min: 0, max: 2 }, "1"],
    ["rotation", rotation, { min: 0, max: 6000 }, "rad/s"],
    ["clearance", clearance ?? 1e-9, { min: 1e-9, max: 0.05 }, "m"],
    ["viscosity", viscosity ?? 1, { min: 1e-6, max: 1000 }, "Pa*s"],
  ]);
  if (refused) return refused;
  if (D <= d) {
    return refuse({
      kind: "impossible",
      input: "bore",
      given: D,
      allowed: { min: d, unit: "m" },
      says: { id: "heat-bore-not-larger", with: { shaft: { value: d, kind: "length" } } },
    });
  }
  const turning = surfaceSpeed({ shaft: d, rotation });
  if (!turning.ok) return turning;

  const work = begin();
  const { speed: v } = work.take(turning);
  const K = given.ratio ?? work.assume(ratioTaken, 0.5);
  const boreFriction = given.frictionBore ?? work.assume(frictionBoreTaken, 0.1);
  const running = given.frictionRunning ?? work.assume(frictionRunningTaken, 0.02);
  const decay = (mu: number, k: number) => (4 * mu * k * D) / (D * D - d * d);
  const force = (mu: number, k: number, b: number) => (mu * k * glandStress * Math.PI * d * L * meanOfDecay(b * L)) as Force;

  const b = work.step(decayRule, [boreFriction, K, D, d], decay(boreFriction, K));
  const frictionForce = work.step(dragRule, [running, K, glandStress, d, b, L], force(running, K, b));
  const torque = work.step(torqueRule, [frictionForce, d], ((frictionForce * d) / 2) as Torque);
  const coulomb = work.step(coulombRule, [frictionForce, v], (frictionForce * v) as Power);

  // Drag grows with the ratio and the running friction and falls with friction on the bore: the ends lie at the corners.
  const end = (at: "min" | "max"): Power => {
    const other = at === "min" ? "max" : "min";
    const k = given.ratio ?? ratioTaken.assumed?.[at] ?? K;
    const onBore = given.frictionBore ?? frictionBoreTaken.assumed?.[other] ?? boreFriction;
    // The low end is wanted only where no film bound is known: it stands for a shaft that is well wetted.
    const wetted = frictionRunningTaken.assumed?.min ?? running;
    const onShaft = at === "min" ? Math.min(running, wetted) : (given.frictionRunning ?? frictionRunningTaken.assumed?.max ?? running);
    const f = force(onShaft, k, decay(onBore, k));
    return work.step(at === "min" ? lowestRule : highestRule, [f, v], (f * v) as Power);
  };
  const anyTaken = given.ratio === undefined || given.frictionBore === undefined || given.frictionRunning === undefined;
  // Where the stress has died away before the bottom, the ratio cancels: an end then equals the usual value but for its last digit.
  const highest = anyTaken ? (Math.max(end("max"), coulomb) as Power) : coulomb;

  work.warn({ kind: "note", says: { id: "torque-is-coulomb" }, citation: { source: "azibert-2015" } });
  if (v === 0) work.warn({ kind: "note", input: "rotation", says: { id: "not-turning" } });

  if (clearance === undefined || viscosity === undefined) {
    work.warn({
      kind: "gap",
      input: clearance === undefined ? "clearance" : "viscosity",
      says: { id: "no-film-bound", with: { input: clearance === undefined ? "clearance" : "viscosity" } },
    });
    return work.found({ torque, band: { low: Math.min(end("min"), coulomb) as Power, high: highest }, coulomb, frictionForce, speed: v });
  }
  const film = work.step(filmRule, [viscosity, d, L, v, clearance], ((viscosity * Math.PI * d * L * v * v) / clearance) as Power);
  if (clearance > thinFilm * d) {
    work.warn({
      kind: "outside-validity",
      input: "clearance",
      given: clearance,
      says: { id: "film-not-thin" },
      citation: filmRule.citation,
    });
  }
  if (film > highest) work.warn({ kind: "note", input: "clearance", says: { id: "film-above-coulomb" } });
  const whole = { low: Math.min(film, coulomb) as Power, high: Math.max(film, highest) as Power };
  return work.found({ torque, band: whole, coulomb, film, frictionForce, speed: v });
}
