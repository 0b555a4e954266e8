import type { Fill, Shape } from "../shapes.ts";
import type { BoxFrame } from "./frame.ts";
import { halves, line, type Pieces, rectangle, region } from "./pieces.ts";

/** The lantern ring cut through one of its holes: an H lying on its side, two lands joined by a web. */
export function lantern({ lantern: at, shaft, bore, section }: BoxFrame): Pieces {
  if (!at) return { parts: [], shapes: [] };
  const { from, to, land } = at;
  const shapes: Shape[] = [];
  const play = 0.03 * section;
  const [low, high] = [shaft + play, bore - play];
  const middle = (low + high) / 2;
  const web = 0.15 * section;
  const hole = 0.34 * (to - from - 2 * land);
  const centre = (from + to) / 2;
  const fill: Fill = { kind: "hatch", lean: -45, spacing: 0.95, from };
  for (const { half, sign } of halves) {
    const side = (name: string, land0: number, land1: number, face: number) => {
      const [inner, outer] = face > 0 ? [land1, centre - hole / 2] : [land0, centre + hole / 2];
      const points =
        face > 0
          ? ([
              [land0, low],
              [inner, low],
              [inner, middle - web],
              [outer, middle - web],
              [outer, middle + web],
              [inner, middle + web],
              [inner, high],
              [land0, high],
            ] as const)
          : ([
              [inner, low],
              [land1, low],
              [land1, high],
              [inner, high],
              [inner, middle + web],
              [outer, middle + web],
              [outer, middle - web],
              [inner, middle - web],
            ] as const);
      return region(`lantern-${half}-${name}`, "lantern", points, sign, fill);
    };
    shapes.push(side("throat", from, from + land, 1), side("gland", to - land, to, -1));
    // The hole's rims and the ring's edges beyond the cut.
    for (const [name, y] of [
      ["inside", low],
      ["outside", high],
    ] as const) {
      shapes.push(
        line(
          `lantern-${half}-${name}`,
          "lantern",
          "thin",
          [
            [from + land, y],
            [to - land, y],
          ],
          sign,
        ),
      );
    }
    shapes.push({
      ...region(`lantern-${half}-hole`, "lantern", rectangle([centre - hole / 2, middle - web, centre + hole / 2, middle + web]), sign),
      layer: "thin",
    });
  }
  return { parts: [{ id: "lantern", called: { id: "drawing-part-lantern" } }], shapes };
}
