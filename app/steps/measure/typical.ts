import type { Motion } from "@ringwright/core/box";
import { isStem } from "@ringwright/core/box";
import { type Length, quantity } from "@ringwright/core/units";
import type { BoxDrawing, SetPart } from "@ringwright/drawings";

/** What is known of the box that a typical one stands in for. */
export interface KnownSizes {
  readonly shaft?: Length | undefined;
  readonly bore?: Length | undefined;
  readonly depth?: Length | undefined;
}

const pump = { shaft: 50, bore: 75, depth: 92, rings: [0, 12.5, 41, 53.5, 66], ring: 12.5, gap: 16.5, nose: 30, stud: 12 };
const valve = { shaft: 16, bore: 28, depth: 38, rings: [0, 6, 12, 18, 24], ring: 6, gap: 12, nose: 20, stud: 8 };

/**
 * A box like many, to point at parts of one that is not measured yet. It is as
 * large as the first size that is known makes it; what is known is marked so.
 */
export function typicalBox(motion: Motion, known: KnownSizes): BoxDrawing {
  const stem = isStem(motion);
  const like = stem ? valve : pump;
  const scale = factor(known, like);
  const length = (mm: number): Length => quantity("length", mm * scale, "mm");
  const sized = (name: keyof KnownSizes) => {
    const value = known[name];
    return value === undefined ? { value: length(like[name]), by: "worked" as const } : { value, by: "measured" as const };
  };
  const parts = like.rings.map(
    (from, index): SetPart => ({ kind: "ring", number: index + 1, from: length(from), to: length(from + like.ring) }),
  );
  const worked = (mm: number) => ({ value: length(mm), by: "worked" as const });
  return {
    title: { id: "measure-typical" },
    wetEnd: stem ? "product-side" : "pump-side",
    shaft: sized("shaft"),
    bore: sized("bore"),
    depth: sized("depth"),
    parts,
    ...(stem
      ? {}
      : {
          lantern: { from: length(25), to: length(41), window: length(11) },
          port: { fromThroat: worked(31), diameter: worked(6) },
        }),
    follower: { gap: worked(like.gap), nose: worked(like.nose) },
    studs: { diameter: length(like.stud), count: 2, left: worked(like.nose) },
  };
}

/** How much larger than the typical box: by the first size that is known, as long as the others then fit. */
function factor({ shaft, bore, depth }: KnownSizes, like: typeof pump): number {
  const mm = (value: Length | undefined, typical: number) =>
    value === undefined || value <= 0 ? undefined : value / quantity("length", typical, "mm");
  return mm(shaft, like.shaft) ?? mm(bore, like.bore) ?? mm(depth, like.depth) ?? 1;
}
