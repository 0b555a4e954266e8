import { type Citation, cite } from "../sources/index.ts";
import { citeFact } from "./cite-fact.ts";
import type { FluidRow, Rating, RatingFact, Style } from "./facts.ts";
import type { Reason } from "./reason.ts";

/** What one style makes of one fluid: the worst of its parts. */
export interface Meeting {
  /** Whether the deciding cell rests on a source that was read. */
  readonly seen: boolean;
  /** Made once: it says the same for every question. */
  readonly reason: Reason;
}

interface Worst {
  readonly rating: Rating;
  readonly chemistry: string;
  readonly seen: boolean;
  readonly citation: Citation;
  /** Whether it hangs on which of several chemistries the part is of. */
  readonly depends: boolean;
}

const rank: Readonly<Record<Rating, number>> = { S: 0, C: 1, N: 2 };

/** A part that may be one of several is as good as the best of them, and a caution where they differ. */
function ofPart(alternatives: readonly string[], cells: FluidRow["cells"]): Worst | undefined {
  let best: { chemistry: string; cell: RatingFact } | undefined;
  let depends = false;
  for (const chemistry of alternatives) {
    const cell = cells[chemistry];
    if (!cell) continue;
    if (best && cell.rating !== best.cell.rating) depends = true;
    if (!best || rank[cell.rating] < rank[best.cell.rating]) best = { chemistry, cell };
  }
  if (!best) return undefined;
  const { chemistry, cell } = best;
  return { rating: depends && cell.rating === "S" ? "C" : cell.rating, chemistry, seen: cell.seen, citation: citeFact(cell), depends };
}

function saysOf({ rating, depends }: Worst): string {
  if (rating === "N") return "chemistry-stops";
  if (rating === "S") return "chemistry-holds";
  return depends ? "chemistry-depends-on-make" : "chemistry-caution";
}

const kindOf = { S: "holds", C: "warn", N: "stop" } as const satisfies Record<Rating, Reason["kind"]>;

/** The worst that any part of a style makes of a fluid. Of equals, the one that rests on a source that was read. */
export function meet(style: Style, fluid: FluidRow): Meeting {
  let worst: Worst | undefined;
  for (const alternatives of style.made.parts) {
    const part = ofPart(alternatives, fluid.cells);
    if (!part) continue;
    const heavier = !worst || rank[part.rating] > rank[worst.rating] || (part.rating === worst.rating && part.seen && !worst.seen);
    if (heavier) worst = part;
  }
  worst ??= { rating: "S", chemistry: style.family, seen: false, citation: cite("memory"), depends: false };
  const { rating, chemistry, seen, citation } = worst;
  const says = { id: saysOf(worst), with: { fluid: fluid.id, chemistry } };
  const clears = rating === "N" && !seen ? { clears: { id: "clear-by-own-chart", with: { fluid: fluid.id } } } : {};
  return { seen, reason: { kind: kindOf[rating], constraint: "chemistry", says, citation, ...clears } };
}
