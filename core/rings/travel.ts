import type { Length } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import { length } from "./ring-section.ts";
import type { RingSetQuestion } from "./survey.ts";

/** What can stop the gland: the flange meets the box, the nose is used up, the thread ends, the port closes. */
export const bindings = ["gland-gap", "nose", "thread", "lantern"] as const;
export type Binding = (typeof bindings)[number];

export interface TravelLimit {
  readonly by: Binding;
  readonly travel: Length;
}

const noseRule = rule({
  id: "nose-travel",
  symbol: "y_n",
  expression: "max(0, N − E)",
  unit: "m",
  inputs: [
    { symbol: "N", name: "noseLength", unit: "m" },
    { symbol: "E", name: "entry", unit: "m" },
  ],
  citation: { source: "common-practice", at: "travel left is nose less entry" },
});

const travelRules = {
  "gland-gap": leastOf("gland-gap", "g", "glandGap"),
  nose: leastOf("nose", "y_n", "nose-travel"),
  thread: leastOf("thread", "y_t", "threadLeft"),
  lantern: leastOf("lantern", "y_l", "lantern-travel"),
} as const satisfies Readonly<Record<Binding, unknown>>;

function leastOf(by: Binding, symbol: string, name: string) {
  return rule({
    id: `travel-by-${by}`,
    symbol: "y",
    name: "travel",
    expression: `${symbol}, the least of gland gap, nose, thread and lantern limit`,
    unit: "m",
    inputs: [{ symbol, name, unit: "m" }],
    citation: { source: "mil-hdbk-1164", at: "renew the set when no take-up is left" },
  });
}

/** What limits the gland before the lantern ring is looked at. */
export function gapLimits(work: Workings, given: RingSetQuestion, entry: Length | undefined): TravelLimit[] {
  const { noseLength, glandGap, threadLeft } = given;
  const limits: TravelLimit[] = [];
  if (glandGap !== undefined) limits.push({ by: "gland-gap", travel: glandGap });
  if (noseLength !== undefined && entry !== undefined) {
    const travel = work.step(noseRule, [noseLength, entry], Math.max(0, noseLength - entry) as Length);
    limits.push({ by: "nose", travel });
    warnNose(work, noseLength, entry, glandGap);
  }
  if (threadLeft !== undefined) limits.push({ by: "thread", travel: threadLeft });
  if (glandGap === undefined && noseLength === undefined) work.warn({ kind: "gap", input: "noseLength", says: { id: "rings-gap-nose" } });
  if (threadLeft === undefined) work.warn({ kind: "gap", input: "threadLeft", says: { id: "rings-gap-thread" } });
  return limits;
}

function warnNose(work: Workings, nose: Length, entry: Length, glandGap: Length | undefined): void {
  if (nose <= entry) {
    work.warn({
      kind: "limit",
      input: "noseLength",
      given: nose,
      says: { id: "rings-nose-too-short", with: { nose: length(nose), entry: length(entry) } },
    });
  } else if (glandGap !== undefined && Math.abs(nose - entry - glandGap) > 0.005) {
    work.warn({
      kind: "slip",
      input: "glandGap",
      given: glandGap,
      suggestion: nose - entry,
      says: { id: "rings-gap-and-nose-differ", with: { gap: length(glandGap), reckoned: length(nose - entry) } },
    });
  }
}

/** The least of the limits, and which one it is; undefined when none is known. */
export function leastLimit(work: Workings, limits: readonly TravelLimit[]): TravelLimit | undefined {
  let least: TravelLimit | undefined;
  for (const limit of limits) if (least === undefined || limit.travel < least.travel) least = limit;
  if (least) work.step(travelRules[least.by], [least.travel], least.travel);
  return least;
}
