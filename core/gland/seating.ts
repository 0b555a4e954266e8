import type { Workings } from "../workings/index.ts";

/** How the rings were put in: each one tamped home alone, all pushed by the gland, or nobody knows. */
export const seatings = ["each-tamped", "rammed", "unknown"] as const;
export type Seating = (typeof seatings)[number];

/** Which way the follower last moved. */
export const movements = ["push", "slacken"] as const;
export type Movement = (typeof movements)[number];

/** Says what the model does not know about this stack. */
export function warnOfSeating(work: Workings, seating: Seating = "unknown", movement: Movement = "push"): void {
  if (movement === "slacken") {
    work.warn({ kind: "note", input: "movement", says: { id: "slackened-friction-reversed" } });
    return;
  }
  if (seating === "each-tamped") work.warn({ kind: "note", input: "seating", says: { id: "seating-each-tamped" } });
  else if (seating === "rammed") {
    const citation = { source: "fsa-valve-compression-2016", at: "rings seated one by one against pushed together" } as const;
    work.warn({ kind: "note", input: "seating", says: { id: "seating-rammed" }, citation });
  } else work.warn({ kind: "gap", input: "seating", says: { id: "seating-unknown" } });
}
