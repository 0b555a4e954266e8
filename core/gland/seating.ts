import type { Warning, Workings } from "../workings/index.ts";

/** How the rings were put in: each one tamped home alone, all pushed by the gland, or nobody knows. */
export const seatings = ["each-tamped", "rammed", "unknown"] as const;
export type Seating = (typeof seatings)[number];

/** Which way the follower last moved. */
export const movements = ["push", "slacken"] as const;
export type Movement = (typeof movements)[number];

const said = {
  reversed: { kind: "note", input: "movement", says: { id: "slackened-friction-reversed" } },
  "each-tamped": { kind: "note", input: "seating", says: { id: "seating-each-tamped" } },
  rammed: {
    kind: "note",
    input: "seating",
    says: { id: "seating-rammed" },
    citation: { source: "fsa-valve-compression-2016", at: "rings seated one by one against pushed together" },
  },
  unknown: { kind: "gap", input: "seating", says: { id: "seating-unknown" } },
} as const satisfies Readonly<Record<Seating | "reversed", Warning>>;

/** Says what the model does not know about this stack. */
export function warnOfSeating(work: Workings, seating: Seating = "unknown", movement: Movement = "push"): void {
  work.warn(movement === "slacken" ? said.reversed : said[seating]);
}
