import type { Point } from "../shapes.ts";
import { type Blanks, grown, outside } from "./clip.ts";
import type { Placed, PlacedPath } from "./placed.ts";

/** What lines have to keep clear of: texts, numbers in circles, and arrows of flow. */
export function blanksOf({ texts, circles, paths }: Placed, margin: number): Blanks {
  const flows = paths.filter(({ role }) => role === "flow").flatMap(({ pieces }) => pieces);
  return {
    boxes: [
      ...texts.map(({ box }) => grown(box, margin)),
      ...flows.map((points) => {
        const xs = points.map(([x]) => x);
        const ys = points.map(([, y]) => y);
        return grown([Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)], margin);
      }),
    ],
    circles,
  };
}

/** Extension lines are broken where a text stands; the text never gives way. */
export function keepClear(placed: Placed, size: number): Placed {
  const blanks = blanksOf(placed, 0.2 * size);
  const paths = placed.paths.map((path): PlacedPath => (path.role === "extension" ? { ...path, pieces: broken(path, blanks) } : path));
  return { ...placed, paths };
}

function broken({ pieces }: PlacedPath, blanks: Blanks): readonly (readonly Point[])[] {
  return pieces.flatMap((piece) => piece.slice(1).flatMap((point, i) => outside([piece[i] as Point, point], blanks)));
}
