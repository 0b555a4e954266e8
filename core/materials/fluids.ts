import { type Answer, begin } from "../workings/index.ts";
import type { MaterialsFacts, RatingFact } from "./facts.ts";

/** One row of the fluid matrix, to find its id by. */
export interface FluidListed {
  readonly id: string;
  /** Id of its note in words/. */
  readonly note?: string;
  /** Id of its name in words/. */
  readonly name: string;
  readonly phase?: "liquid" | "gas";
  readonly cells: readonly { readonly chemistry: string; readonly cell: RatingFact }[];
}

/**
 * The fluids that the matrix knows, each with what it does to every chemistry:
 * S suitable, C look first, N no. A packing takes the worst of all it is made
 * of; an impregnation protects a fibre but does not raise its rating.
 *
 * Units: none.
 * Range: all rows; with `find`, those whose id contains it (an empty list when none does).
 * Source: each cell carries its own; most are memory and say so.
 * @example fluidsList({ find: "sulfuric" }, facts).value.fluids // sulfuric-concentrated-above-70, oleum-fuming-sulfuric
 */
export function fluidsList(
  question: { readonly find?: string },
  facts: MaterialsFacts,
): Answer<{ readonly fluids: readonly FluidListed[] }> {
  const wanted = question.find
    ?.trim()
    .toLowerCase()
    .replace(/[_\s]+/gu, "-");
  const rows = facts.fluids.filter(({ id }) => wanted === undefined || id.includes(wanted));
  return begin().found({
    fluids: rows.map(({ id, note, nature, cells }) => ({
      id,
      ...(note === undefined ? {} : { note }),
      name: id,
      ...(nature.phase === null ? {} : { phase: nature.phase }),
      cells: facts.chemistries.flatMap((chemistry) => {
        const cell = cells[chemistry];
        return cell ? [{ chemistry, cell }] : [];
      }),
    })),
  });
}
