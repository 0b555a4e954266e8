import type { Citation } from "../sources/index.ts";
import type { Fact, Origin } from "./facts.ts";

/** What stands behind a limit that nobody was found to print. */
export const noFigure: Citation = { source: "own-proposal", at: "no figure was found; a missing limit never passes in silence" };

function asCitation({ source, says, seen }: Origin): Citation {
  return { source, ...(says === undefined ? {} : { at: says }), ...(seen === undefined ? {} : { seen }) };
}

const cited = new WeakMap<object, Citation>();

/** The origin that bears a fact out best: one that was read where the fact was seen, else memory. Looked for once a fact. */
export function citeFact(fact: Pick<Fact, "origin" | "seen">): Citation {
  const kept = cited.get(fact);
  if (kept) return kept;
  const found = bestOf(fact);
  cited.set(fact, found);
  return found;
}

function bestOf({ origin, seen }: Pick<Fact, "origin" | "seen">): Citation {
  const bearing = origin.filter((entry) => entry.supports !== false);
  const remembered = ({ source, seen: how }: Origin) => source === "memory" || how === "memory";
  const best = bearing.find((entry) => remembered(entry) !== seen) ?? bearing[0];
  return best ? asCitation(best) : noFigure;
}
