import type { Length } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { EndRings } from "./survey.ts";

export const partKinds = ["throat-bush", "spacer", "ring", "end-ring", "lantern"] as const;
export type PartKind = (typeof partKinds)[number];

/** One part of the set. Distances run from the throat shoulder towards the gland. */
export interface Part {
  readonly kind: PartKind;
  /** Rings are numbered from the throat. */
  readonly number?: number | undefined;
  readonly from: Length;
  readonly to: Length;
  readonly height: Length;
  /** Box face to the gland side of this part, as a depth gauge finds it once the part is home. */
  readonly depthLeft?: Length | undefined;
  /** Clock hour of its joint. */
  readonly joint?: number | undefined;
}

export interface Stack {
  readonly throatBush: Length;
  readonly spacer: Length;
  readonly rings: number;
  readonly ringHeight: Length;
  readonly lantern?: { readonly width: Length; readonly afterRing: number } | undefined;
  readonly endRings: EndRings;
  readonly joints: readonly number[];
  readonly depth?: Length | undefined;
}

const topRule = rule({
  id: "part-top",
  symbol: "z",
  expression: "z_below + h",
  unit: "m",
  inputs: [
    { symbol: "z_below", name: "part-from", unit: "m" },
    { symbol: "h", name: "part-height", unit: "m" },
  ],
  citation: { source: "geometry", at: "parts stand on one another, from the throat" },
});

const depthLeftRule = rule({
  id: "depth-left",
  symbol: "g_z",
  expression: "B − z",
  unit: "m",
  inputs: [
    { symbol: "B", name: "depth", unit: "m" },
    { symbol: "z", name: "part-top", unit: "m" },
  ],
  citation: { source: "geometry", at: "box face to the part" },
});

/** The parts from the throat to the gland, each standing on the one below. */
export function stackUp(work: Workings, stack: Stack): readonly Part[] {
  const { throatBush, spacer, rings, ringHeight, lantern, endRings, joints, depth } = stack;
  const parts: Part[] = [];
  let from = 0 as Length;
  const put = (kind: PartKind, height: Length, number?: number) => {
    const to = work.step(topRule, [from, height], (from + height) as Length);
    const depthLeft = depth === undefined ? undefined : work.step(depthLeftRule, [depth, to], (depth - to) as Length);
    parts.push({ kind, number, from, to, height, depthLeft, joint: number === undefined ? undefined : joints[number - 1] });
    from = to;
  };
  if (throatBush > 0) put("throat-bush", throatBush);
  if (spacer > 0) put("spacer", spacer);
  if (lantern?.afterRing === 0) put("lantern", lantern.width);
  for (let number = 1; number <= rings; number++) {
    put(isEndRing(number, rings, endRings) ? "end-ring" : "ring", ringHeight, number);
    if (lantern?.afterRing === number) put("lantern", lantern.width);
  }
  return parts;
}

function isEndRing(number: number, rings: number, where: EndRings): boolean {
  return (number === 1 && (where === "throat" || where === "both")) || (number === rings && (where === "gland" || where === "both"));
}
