import type { Length, Stress } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { Stack } from "./part.ts";
import type { Movement, Seating } from "./seating.ts";

export interface Push extends Stack {
  /** Axial stress under the follower after the movement. */
  readonly glandStress: Stress;
  readonly movement?: Movement;
  /** For slackening: the axial stress under the follower before it. */
  readonly glandStressBefore?: Stress;
  readonly seating?: Seating;
}

export interface ProfilePoint {
  /** From the follower's face. */
  readonly depth: Length;
  readonly axial: Stress;
}

const partInputs = [
  { symbol: "σ_1", name: "axial-stress-gland-side", unit: "Pa" },
  { symbol: "b", name: "wall-friction-decay", unit: "1/m" },
  { symbol: "h", name: "part-height", unit: "m" },
] as const;

const mechanics = { source: "mechanics", at: "the decay law taken over one part" } as const;

const pushedRule = rule({
  id: "axial-after-part",
  symbol: "σ_2",
  expression: "σ_1 · e^(−b h)",
  unit: "Pa",
  inputs: partInputs,
  citation: mechanics,
});

const slackenedRule = rule({
  id: "axial-after-part-slackened",
  symbol: "σ_2",
  expression: "σ_1 · e^(+b h)",
  unit: "Pa",
  inputs: partInputs,
  citation: { source: "mechanics", at: "wall friction reversed: the set is held in while the follower backs off" },
});

export interface Path {
  readonly profile: ProfilePoint[];
  /** ∫σ dx over the whole stack. */
  readonly sum: number;
}

/** ∫ σ e^(∓b x) dx over one part; without wall friction the stress passes through unchanged. */
function over(axial: number, rate: number, height: number, sign: 1 | -1): number {
  return rate === 0 ? axial * height : (sign * axial * Math.expm1(sign * rate * height)) / rate;
}

/** Falling from the follower inward. */
export function pushPath(work: Workings, { parts, glandStress }: Push, rates: readonly number[]): Path {
  let axial = glandStress;
  let depth = 0;
  let sum = 0;
  const profile: ProfilePoint[] = [{ depth: depth as Length, axial }];
  for (let i = 0; i < parts.length; i++) {
    const height = parts[i]?.height ?? 0;
    const rate = rates[i] ?? 0;
    sum += over(axial, rate, height, -1);
    axial = work.step(pushedRule, [axial, rate, height], (axial * Math.exp(-rate * height)) as Stress);
    depth += height;
    profile.push({ depth: depth as Length, axial });
  }
  return { profile, sum };
}

/** Rising inward from the slackened gland until it meets what the earlier push had left there, falling from then on. */
export function slackenPath(work: Workings, given: Push, rates: readonly number[]): Path {
  const { parts, glandStress, glandStressBefore } = given;
  const before = glandStressBefore ?? Number.POSITIVE_INFINITY;
  // σ_g e^B = σ_before e^(−B) at B = ½ ln(σ_before / σ_g).
  let left = glandStress === 0 ? Number.POSITIVE_INFINITY : Math.log(before / glandStress) / 2;
  let axial = glandStress;
  let depth = 0;
  let sum = 0;
  const profile: ProfilePoint[] = [{ depth: depth as Length, axial }];
  const go = (rate: number, height: number, held: boolean) => {
    const sign = held ? 1 : -1;
    sum += over(axial, rate, height, sign);
    axial = work.step(held ? slackenedRule : pushedRule, [axial, rate, height], (axial * Math.exp(sign * rate * height)) as Stress);
    depth += height;
    profile.push({ depth: depth as Length, axial });
  };
  for (let i = 0; i < parts.length; i++) {
    const height = parts[i]?.height ?? 0;
    const rate = rates[i] ?? 0;
    const held = rate === 0 ? height : Math.min(height, left / rate);
    if (held > 0) go(rate, held, true);
    if (held < height) go(rate, height - held, false);
    left = Math.max(0, left - rate * height);
  }
  if (glandStressBefore === undefined) work.warn({ kind: "note", input: "movement", says: { id: "slackened-at-most" } });
  return { profile, sum };
}
