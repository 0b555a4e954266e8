import type { Says } from "../workings/index.ts";
import type { Reason } from "./reason.ts";

/** Something about the service that was not said, or not measured. */
export type Unsaid = "fluids" | "sleeve" | "hardness";

/** What would clear a reason against a packing. */
export interface Clearing {
  readonly says: Says;
  /** What to find out first: the packing may then pass as it is. */
  readonly unsaid?: Unsaid;
}

const bySheet = "clear-by-sheet";
const byMake = "clear-by-asking-the-make";

/** What helps against each warning and each limit that is not known, by what was said. */
const clearings: Readonly<Record<string, string | readonly [id: string, unsaid: Unsaid]>> = {
  "chemistry-caution": "clear-by-chart-at-strength",
  "chemistry-depends-on-make": byMake,
  "chemistry-overridden": "clear-by-keeping-the-chart",
  "carrier-not-stated": byMake,
  "treatment-not-stated": byMake,
  "wire-not-stated": byMake,
  "lubricant-not-stated": byMake,
  "core-not-stated": byMake,
  "jacket-not-said": byMake,
  "rubber-not-said": byMake,
  "rubber-not-known": bySheet,
  "rubber-stops": "clear-by-other-rubber",
  "rubber-too-hot": "clear-by-other-rubber",
  "temperature-near-limit": "clear-by-cooler-or-sheet",
  "temperature-above-limit-in-air": ["clear-by-saying-fluids", "fluids"],
  "temperature-limit-unknown": bySheet,
  "cold-limit-unknown": bySheet,
  "ph-limit-unknown": bySheet,
  "speed-limit-unknown": bySheet,
  "pressure-limit-unknown": bySheet,
  "lubricant-wrong-ph": "clear-by-other-lubricant",
  "ph-near-end": "clear-by-sheet-for-ph",
  "speed-above-careful": "clear-by-sheet-for-speed",
  "pressure-above-careful": "clear-by-sheet-for-pressure",
  "index-ask-supplier": "clear-by-curve",
  "oxygen-lot-recorded": "clear-by-oxygen-lot",
  "listing-against-the-usual": "clear-by-listing",
  "sleeve-below-floor": "clear-by-harder-sleeve",
  "sleeve-hardness-unsure": ["clear-by-measuring-hardness", "hardness"],
  "harder-sleeve-preferred": "clear-by-hard-coat",
  "graphite-inhibited": "clear-by-dry-standstill",
  "graphite-part-may-eat-sleeve": "clear-by-inhibitor-or-sleeve",
  "stiff-on-a-worn-sleeve": "clear-by-new-sleeve",
  "end-ring-wanted-here": "clear-by-end-ring",
  "weak-in-grit": "clear-by-clean-flush",
  "gas-passes-the-braid": "clear-by-formed-rings",
};

/**
 * What would clear a reason against a packing: what the comparison itself
 * found, else what the kind of reason asks for. Nothing where only another
 * packing helps, and for what is no reason against it.
 *
 * Units: as in the reason.
 * Range: any reason; none is refused.
 * Source: own-proposal; each follows from the limit that the reason compares with.
 * @example clearing(candidate.because[0]) // { says: { id: "clear-by-end-ring" } }
 */
export function clearing({ kind, says, clears }: Reason): Clearing | undefined {
  if (kind === "holds" || kind === "note") return undefined;
  if (clears) return { says: clears };
  // Graphite on a steel that may pit: either the liquid's nature or the sleeve's material was not said.
  if (says.id === "graphite-may-eat-sleeve")
    return kind === "ask"
      ? { says: { id: "clear-by-saying-fluids" }, unsaid: "fluids" }
      : { says: { id: "clear-by-saying-sleeve" }, unsaid: "sleeve" };
  const found = clearings[says.id];
  if (found === undefined) return undefined;
  const [id, unsaid] = typeof found === "string" ? [found] : found;
  return { says: says.with ? { id, with: says.with } : { id }, ...(unsaid === undefined ? {} : { unsaid }) };
}
