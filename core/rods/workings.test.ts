import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { type Again, stepsHold } from "../../testing/found.ts";
import { MPa, mm } from "../../testing/stacks.ts";
import { quantity } from "../units/index.ts";
import { rodSet } from "./index.ts";

const facts = readAllFacts().rods;
const { PI, exp, min } = Math;

/** Written from the printed expressions alone, in the order of each rule's inputs. The gland's own rules are checked with the gland. */
const again: Readonly<Record<string, Again>> = {
  "rod-section": (D = 0, d = 0) => (D - d) / 2,
  "rod-stack-height": (n = 0, h = 0, lantern = 0) => n * h + lantern,
  "stack-in-sections": (H = 0, s = 0) => H / s,
  "stack-over-stroke": (H = 0, S = 0) => H / S,
  "rod-undersize": (d = 0, worn = 0) => d - worn,
  "gas-rod-undersize-limit": (perDiameter = 0, d = 0, cap = 0) => min(perDiameter * d, cap),
  "plunger-undersize-limit": () => (3 / 32) * 0.0254,
  "rod-box-warmth": () => 50 / 1.8,
  "rod-friction": (d = 0, L = 0, mu = 0, K = 0, s = 0) => PI * d * L * mu * K * s,
  "wall-friction-decay": (K = 0, s = 0, d = 0, b = 0, D = 0) => (4 * K * (s * d + b * D)) / (D ** 2 - d ** 2),
  "axial-after-part": (s = 0, b = 0, h = 0) => s * exp(-b * h),
  "mean-axial-stress": (sum = 0, L = 0) => sum / L,
  "share-at-bottom": (bottom = 0, g = 0) => bottom / g,
};

test("every step of a rod answer, worked out again from what it prints, gives the figure it prints", () => {
  const seen = new Set<string>();
  for (const service of ["liquid", "gas"] as const) {
    const answer = rodSet(
      {
        rod: mm(60),
        rodSmallest: mm(59.8),
        bore: mm(80),
        stroke: mm(120),
        rings: 4,
        lanternHeight: mm(15),
        lubricated: true,
        service,
        pressure: quantity("pressure", 40, "bar"),
        glandStress: MPa(2),
        ratio: 0.5,
        frictionRunning: 0.05,
        frictionBore: 0.1,
      },
      facts,
    );
    stepsHold(answer, again, seen);
  }
  expect(Object.keys(again).filter((id) => !seen.has(id))).toEqual([]);
});
