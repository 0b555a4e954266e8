import type { Length, Stress } from "../units/index.ts";
import { type Answer, begin, notWithin, type Range, type Refused, refuse, rule, type Warning, type Workings } from "../workings/index.ts";
import { noAnnulus } from "./annulus.ts";
import { type Path, type ProfilePoint, type Push, pushPath, slackenPath } from "./axial-path.ts";
import { noStack } from "./part.ts";
import { warnOfSeating } from "./seating.ts";
import { decayOf } from "./wall-friction.ts";

const meanRule = rule({
  id: "mean-axial-stress",
  symbol: "σ_m",
  expression: "∫σ dx / L",
  unit: "Pa",
  inputs: [
    { symbol: "∫σ dx", name: "axial-stress-sum", unit: "N/m" },
    { symbol: "L", name: "stack-height", unit: "m" },
  ],
  citation: { source: "mechanics", at: "length-weighted over all parts, lantern ring and spacers included" },
});

const shareRule = rule({
  id: "share-at-bottom",
  symbol: "r",
  expression: "σ_bottom / σ_g",
  unit: "1",
  inputs: [
    { symbol: "σ_bottom", name: "axial-stress-bottom", unit: "Pa" },
    { symbol: "σ_g", name: "gland-stress", unit: "Pa" },
  ],
  citation: { source: "definition" },
});

const radialRule = rule({
  id: "radial-stress",
  symbol: "q",
  expression: "K · σ",
  unit: "Pa",
  inputs: [
    { symbol: "K", name: "stress-ratio", unit: "1" },
    { symbol: "σ", name: "axial-stress", unit: "Pa" },
  ],
  citation: { source: "definition" },
});

/** Stress on shaft and bore at the two faces of a ring. */
export interface RadialStress {
  /** Which part, counted from the gland; the first is 0. */
  readonly part: number;
  readonly from: Length;
  readonly to: Length;
  readonly glandSide: Stress;
  readonly throatSide: Stress;
}

export interface StressAlongBox {
  /** At the follower and after each part. */
  readonly profile: readonly ProfilePoint[];
  readonly atBottom: Stress;
  /** What reaches the bottom, as a share of the gland stress; left out without any gland stress. */
  readonly share?: number;
  readonly mean: Stress;
  /** Of every ring, when asked for. */
  readonly radial?: readonly RadialStress[];
}

/**
 * Axial stress along the box for one further push on a loose stack, or after
 * the follower has been backed off.
 *
 *   push:    σ_2 = σ_1 e^(−b h),   b = 4 K (μ_s d + μ_b D) / (D² − d²)
 *   slacken: σ_2 = σ_1 e^(+b h), never above what the earlier push had left there
 *
 * It knows nothing of the load that rings keep from being tamped one by one,
 * of relaxation, or of growth when warm. While the shaft turns, its friction
 * points around: μ_s counts as 0.
 *
 * Units: stress Pa, length m, K and friction plain numbers.
 * Range: 0 < shaft < bore ≤ 6 m, 1 to 100 parts, height to 2 m, K and friction 0 to 1, stress 0 to 1 GPa; refused outside.
 * K outside 0.3 to 0.9 and friction above 0.25 are flagged. Slackening to more stress than before is `impossible`.
 * Source: force balance on a slice; same form in Ochonski 1988 and Diany and Bouzid 2009, from memory.
 * @example stressAlongBox({ shaft, bore, glandStress, parts: [ring, ring, lantern, ring, ring, ring], turning: false })
 */
export function stressAlongBox(given: Push): Answer<StressAlongBox> {
  const refused = noPush(given);
  if (refused) return refused;
  const work = begin();
  const rates = decayOf(work, given);
  const path = given.movement === "slacken" ? slackenPath(work, given, rates) : pushPath(work, given, rates);
  const { profile, sum } = path;
  const bottom = profile[profile.length - 1];
  const depth = bottom?.depth ?? 0;
  const atBottom = bottom?.axial ?? given.glandStress;
  const mean = work.step(meanRule, [sum, depth], (sum / depth) as Stress);
  warnOfSeating(work, given.seating, given.movement);
  if (given.turning) work.warn(frictionAround);
  const radial = given.radial ? { radial: radialOf(work, given, path) } : undefined;
  if (given.glandStress === 0) return work.found({ profile, atBottom, mean, ...radial });
  const share = work.step(shareRule, [atBottom, given.glandStress], atBottom / given.glandStress);
  return work.found(radial ? { profile, atBottom, share, mean, ...radial } : { profile, atBottom, share, mean });
}

const frictionAround: Warning = { kind: "note", input: "turning", says: { id: "turning-friction-around" } };

function radialOf(work: Workings, { parts }: Push, { profile, ends }: Path): readonly RadialStress[] {
  const endOf = (part: number) => (ends ? (ends[part] ?? 0) : part + 1);
  const radial: RadialStress[] = [];
  for (let part = 0; part < parts.length; part++) {
    const ratio = parts[part]?.ratio ?? 0;
    const from = profile[part === 0 ? 0 : endOf(part - 1)];
    const to = profile[endOf(part)];
    if (ratio === 0 || !from || !to) continue;
    const press = (axial: Stress) => work.step(radialRule, [ratio, axial], (ratio * axial) as Stress);
    radial.push({ part, from: from.depth, to: to.depth, glandSide: press(from.axial), throatSide: press(to.axial) });
  }
  return radial;
}

const stresses: Range = { min: 0, max: 1e9 };

function noPush({ shaft, bore, parts, glandStress, glandStressBefore, movement }: Push): Refused | undefined {
  const refused =
    noAnnulus(shaft, bore) ??
    noStack(parts) ??
    notWithin("glandStress", glandStress, stresses, "Pa") ??
    notWithin("glandStressBefore", glandStressBefore ?? 0, stresses, "Pa");
  if (refused) return refused;
  if (movement !== "slacken" || glandStressBefore === undefined || glandStressBefore >= glandStress) return undefined;
  return refuse({
    kind: "impossible",
    input: "glandStressBefore",
    given: glandStressBefore,
    allowed: { min: glandStress, unit: "Pa" },
    says: {
      id: "slacken-raises",
      with: { before: { value: glandStressBefore, kind: "stress" }, now: { value: glandStress, kind: "stress" } },
    },
  });
}
