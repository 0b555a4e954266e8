import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { type Again, stepsHold } from "../../testing/found.ts";
import { MPa, mm, ring } from "../../testing/stacks.ts";
import { quantity, type Torque } from "../units/index.ts";
import {
  bolt,
  glandLoad,
  moreRings,
  nutFactor,
  sealStress,
  shortening,
  stressAlongBox,
  stressFromTorque,
  stressRatio,
  studLimit,
} from "./index.ts";

const facts = readAllFacts().gland;
const { PI, exp, sqrt } = Math;

/** Written from the printed expressions alone, symbol by symbol, in the order of each rule's inputs. */
const again: Readonly<Record<string, Again>> = {
  "wall-friction-decay": (K = 0, s = 0, d = 0, b = 0, D = 0) => (4 * K * (s * d + b * D)) / (D ** 2 - d ** 2),
  "axial-after-part": (s = 0, b = 0, h = 0) => s * exp(-b * h),
  "axial-after-part-slackened": (s = 0, b = 0, h = 0) => s * exp(b * h),
  "mean-axial-stress": (sum = 0, L = 0) => sum / L,
  "share-at-bottom": (bottom = 0, gland = 0) => bottom / gland,
  "radial-stress": (K = 0, s = 0) => K * s,
  "share-after-rings": (b = 0, n = 0, h = 0) => exp(-b * n * h),
  "gland-stress-for-same-bottom": (n = 0, m = 0) => n / m,
  "seal-stress-lower": (p = 0, K = 0, B = 0) => (p / K) * exp(B),
  "seal-stress-upper": (p = 0, K = 0, B = 0) => (p / K) * exp(B),
  "part-shortening": (s = 0, b = 0, h = 0, E = 0) => (s * (1 - exp(-b * h))) / (b * E),
  "stack-shortening": (...each) => each.reduce((sum, one) => sum + one, 0),
  "packing-area": (D = 0, d = 0) => (PI / 4) * (D ** 2 - d ** 2),
  "gland-force": (s = 0, A = 0) => s * A,
  "push-out-force": (p = 0, A = 0) => p * A,
  "load-per-nut": (g = 0, o = 0, z = 0) => (g + o) / z,
  "nut-torque": (K = 0, F = 0, d = 0) => K * F * d,
  "nut-load-low": (F = 0, s = 0) => F * (1 - s),
  "nut-load-high": (F = 0, s = 0) => F * (1 + s),
  "torque-scatter": () => 0.3,
  "nut-factor-oiled": () => 0.15,
  "advance-per-flat": (P = 0) => P / 6,
  "share-per-flat": (a = 0, L = 0) => a / L,
  "nut-pull": (T = 0, K = 0, d = 0) => T / (K * d),
  "stress-from-pull": (z = 0, F = 0, A = 0, p = 0) => (z * F) / A - p,
  "thread-pitch": (d = 0) => ({ 12: 0.00175, 13: 0.0254 / 13 })[d === 0.012 ? 12 : 13] ?? Number.NaN,
  "pitch-diameter": (d = 0, P = 0) => d - 0.649519052838 * P,
  "thread-root-diameter": (d = 0, P = 0) => d - 1.22686932204 * P,
  "stress-area-iso": (d2 = 0, d3 = 0) => (PI / 4) * ((d2 + d3) / 2) ** 2,
  "stress-area-unified": (d = 0, P = 0) => (PI / 4) * (d - 0.9743 * P) ** 2,
  "stress-area-printed": (d = 0) => (d === 0.012 ? 84.3e-6 : Number.NaN),
  "proof-stress": (d = 0) => (d === 0.012 ? 580e6 : Number.NaN),
  "yield-for-proof-stress": (d = 0) => (d === 0.012 ? 450e6 : Number.NaN),
  "yield-stress": (d = 0) => (d === 0.012 ? 640e6 : Number.NaN),
  "proof-load": (A = 0, S = 0) => A * S,
  "proof-load-printed": (d = 0) => (d === 0.012 ? 48_900 : Number.NaN),
  "torque-per-load": (P = 0, t = 0, d2 = 0, f = 0, D = 0) => 0.16 * P + 0.58 * t * d2 + (f * D) / 2,
  "nut-factor": (lever = 0, d = 0) => lever / d,
  "twist-to-pull": (d2 = 0, d3 = 0, P = 0, t = 0) => 1.5 * (d2 / ((d2 + d3) / 2)) * (P / (PI * d2) + 1.155 * t),
  "tightening-limit": (n = 0, R = 0, A = 0, t = 0) => (n * R * A) / sqrt(1 + 3 * t ** 2),
  "stress-ratio": (n = 0) => n / (1 - n),
};

test("every step of the workings, worked out again from what it prints, gives the figure it prints", () => {
  const rings = [ring(10, 0.5, 0.1, 0.12), ring(9, 0.6, 0.05, 0.12), ring(12, 0, 0, 0), ring(10, 0.6, 0.05, 0.12)];
  const box = { shaft: mm(50), bore: mm(70), glandStress: MPa(0.5), parts: rings };
  const soft = rings.map((part) => (part.ratio === 0 ? part : { ...part, modulus: MPa(20) }));
  const nuts = { shaft: mm(50), bore: mm(70), nuts: 2 };
  const boxPressure = quantity("pressure", 2, "bar");
  const seen = new Set<string>();
  for (const answer of [
    stressAlongBox({ ...box, radial: true }),
    stressAlongBox({ ...box, turning: true }),
    stressAlongBox({ ...box, movement: "slacken", glandStressBefore: MPa(0.6) }),
    moreRings({ shaft: mm(50), bore: mm(70), rings: 5, ringHeight: mm(10), ratio: 0.5, frictionShaft: 0.1, frictionBore: 0.1 }),
    sealStress({ ...box, pressure: boxPressure, motion: "turning" }),
    shortening({ ...box, parts: soft }),
    glandLoad({ ...nuts, glandStress: MPa(0.5), thread: "M12", nutFactor: 0.2, boxPressure, ringsHeight: mm(40) }, facts),
    stressFromTorque({ ...nuts, thread: "1/2-13", torque: 20 as Torque, nutCondition: "oiled", boxPressure }, facts),
    bolt({ thread: "M12", propertyClass: "8.8" }, facts),
    bolt({ thread: "M12", propertyClass: "A2-70" }, facts),
    nutFactor({ thread: "M12", frictionThread: 0.12, frictionFace: 0.1, faceDiameter: mm(15) }, facts),
    studLimit({ thread: "M12", propertyClass: "8.8", frictionThread: 0.12, useOfYield: 0.9 }, facts),
    studLimit({ thread: "M12", propertyClass: "8.8", frictionThread: 0.1, useOfYield: 0.7 }, facts),
    stressRatio({ poissonRatio: 0.4 }),
  ]) {
    stepsHold(answer, again, seen);
  }
  stepsHold({ ...bolt({ thread: "1/2-13", propertyClass: "8.8" }, facts) }, { ...again, "proof-stress": () => 580e6 }, seen);
  expect([...Object.keys(again)].filter((id) => !seen.has(id))).toEqual([]);
});
