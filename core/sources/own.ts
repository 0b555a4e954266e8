import type { Source } from "./source.ts";

/** What stands behind a value when no outside document does. */
export const own = {
  "common-practice": {
    title: "Common practice, no source",
    seen: "practice",
    what: "Held in the trade; no document was found to cite",
  },
  memory: {
    title: "From memory, source not opened",
    seen: "memory",
    what: "Recalled; the place it is believed to stand is named beside the value",
  },
  definition: {
    title: "Definition",
    seen: "derived",
    what: "Needs no source",
  },
  geometry: {
    title: "Geometry or algebra, derived here",
    seen: "derived",
    what: "Follows from the stated formula; no document is cited",
  },
  mechanics: {
    title: "Force, torque or heat balance, derived here",
    seen: "derived",
    what: "Follows from the stated balance; no document is cited",
  },
  "own-proposal": {
    title: "Ringwright's own proposal, no source",
    seen: "derived",
    what: "Put forward here; to be judged as such",
  },
} as const satisfies Record<string, Source>;
