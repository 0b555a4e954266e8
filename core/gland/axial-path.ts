import type { Length, Stress } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { Stack } from "./part.ts";
import type { Movement, Seating } from "./seating.ts";
import { meanOver } from "./wall-friction.ts";

export interface Push extends Stack {
  /** Axial stress under the follower after the movement. */
  readonly glandStress: Stress;
  readonly movement?: Movement;
  /** For slackening: the axial stress under the follower before it. */
  readonly glandStressBefore?: Stress;
  readonly seating?: Seating;
  /** Whether the stress on the walls is wanted too. */
  readonly radial?: boolean;
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
  /** Where in the profile each part ends; left out where each part has one point. */
  readonly ends?: readonly number[];
  /** ∫σ dx over the whole stack. */
  readonly sum: number;
}

/** Falling from the follower inward. */
export function pushPath(work: Workings, { parts, glandStress }: Push, rates: readonly number[]): Path {
  let axial = glandStress;
  let depth = 0;
  let sum = 0;
  const profile: ProfilePoint[] = [{ depth: depth as Length, axial }];
  // Rings of one set are alike as a rule: what one leaves of the stress is worked out once.
  let decay = 0;
  let mean = 1;
  let left = 1;
  for (let i = 0; i < parts.length; i++) {
    const height = parts[i]?.height ?? 0;
    const rate = rates[i] ?? 0;
    const here = rate * height;
    if (here > 0 && here !== decay) {
      decay = here;
      mean = meanOver(-here);
      left = Math.exp(-here);
    }
    sum += here > 0 ? axial * height * mean : axial * height;
    axial = work.step(pushedRule, [axial, rate, height], here > 0 ? ((axial * left) as Stress) : axial);
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
  const ends: number[] = [];
  const go = (rate: number, height: number, held: boolean) => {
    const sign = held ? 1 : -1;
    sum += axial * height * meanOver(sign * rate * height);
    axial = work.step(held ? slackenedRule : pushedRule, [axial, rate, height], (axial * Math.exp(sign * rate * height)) as Stress);
    depth += height;
    profile.push({ depth: depth as Length, axial });
  };
  for (let i = 0; i < parts.length; i++) {
    const height = parts[i]?.height ?? 0;
    const rate = rates[i] ?? 0;
    const held = heldPart(height, rate === 0 ? height : left / rate);
    if (held > 0) go(rate, held, true);
    if (held < height) go(rate, height - held, false);
    left = Math.max(0, left - rate * height);
    ends.push(profile.length - 1);
  }
  if (glandStressBefore === undefined) work.warn({ kind: "note", input: "movement", says: { id: "slackened-at-most" } });
  return { profile, ends, sum };
}

/** How much of a part is still held in; a sliver at either face, thinner than anyone can measure, counts as nothing. */
function heldPart(height: number, held: number): number {
  const sliver = 1e-9 * height;
  if (held < sliver) return 0;
  return held > height - sliver ? height : held;
}
