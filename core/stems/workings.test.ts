import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { type Again, stepsHold } from "../../testing/found.ts";
import { mm } from "../../testing/stacks.ts";
import { quantity } from "../units/index.ts";
import { stemLoad } from "./index.ts";

const { stems, gland } = readAllFacts();
const { PI, exp, max } = Math;

/** Written from the printed expressions alone, in the order of each rule's inputs. The gland's own rules are checked with the gland. */
const again: Readonly<Record<string, Again>> = {
  "stem-floor-stress": () => 3800 * 6894.757293168361,
  "stem-times-pressure": () => 1.5,
  "stem-gland-stress": (floor = 0, times = 0, p = 0) => max(floor, times * p),
  "stem-stress-ratio": () => 0.5,
  "stem-friction": (d = 0, H = 0, s = 0, mu = 0, Y = 0) => PI * d * H * s * mu * Y,
  "stem-friction-decayed": (d = 0, H = 0, s = 0, mu = 0, Y = 0) => PI * d * H * s * mu * Y,
  "stem-rejection-load": (p = 0, d = 0) => (p * PI * d ** 2) / 4,
  "stud-use": (F = 0, proof = 0) => F / proof,
  "load-left-low": (s = 0, k = 0) => k * s,
  "load-left-high": (s = 0, k = 0) => k * s,
  "thread-pitch": () => 0.002,
  "packing-area": (D = 0, d = 0) => (PI / 4) * (D ** 2 - d ** 2),
  "gland-force": (s = 0, A = 0) => s * A,
  "load-per-nut": (g = 0, o = 0, z = 0) => (g + o) / z,
  "nut-torque": (K = 0, F = 0, d = 0) => K * F * d,
  "torque-scatter": () => 0.3,
  "nut-load-low": (F = 0, s = 0) => F * (1 - s),
  "nut-load-high": (F = 0, s = 0) => F * (1 + s),
  "advance-per-flat": (P = 0) => P / 6,
  "wall-friction-decay": (K = 0, s = 0, d = 0, b = 0, D = 0) => (4 * K * (s * d + b * D)) / (D ** 2 - d ** 2),
  "axial-after-part": (s = 0, b = 0, h = 0) => s * exp(-b * h),
  "mean-axial-stress": (sum = 0, L = 0) => sum / L,
  "share-at-bottom": (bottom = 0, g = 0) => bottom / g,
  "pitch-diameter": (d = 0, P = 0) => d - 0.649519052838 * P,
  "thread-root-diameter": (d = 0, P = 0) => d - 1.22686932204 * P,
  "stress-area-iso": (d2 = 0, d3 = 0) => (PI / 4) * ((d2 + d3) / 2) ** 2,
  "proof-stress": () => 580e6,
  "proof-load-printed": () => 91_000,
};

test("every step of a stem answer, worked out again from what it prints, gives the figure it prints", () => {
  const seen = new Set<string>();
  const answer = stemLoad(
    {
      stem: mm(25),
      bore: mm(38),
      pressure: quantity("pressure", 40, "bar"),
      set: "formed-graphite",
      nuts: 2,
      thread: "M16",
      nutFactor: 0.2,
      propertyClass: "8.8",
      packedLength: mm(33),
      friction: 0.1,
    },
    stems,
    gland,
  );
  stepsHold(answer, again, seen);
  expect(Object.keys(again).filter((id) => !seen.has(id))).toEqual([]);
});
