import type { Drawing, Point, Shape } from "../shapes.ts";
import { braid } from "../weave/braid.ts";
import { blanksOf } from "./clear.ts";
import { outside, within } from "./clip.ts";
import { around, hatch } from "./hatch.ts";
import type { ToPaper } from "./paper.ts";
import { nothing, type Placed, type PlacedPath } from "./placed.ts";
import { rounded } from "./rounded.ts";

/** The shapes of a drawing on paper, with their hatching and weave kept clear of what is written; or bare, without either. */
export function fillShapes(drawing: Drawing, toPaper: ToPaper, scale: number, written: Placed, bare = false): Placed {
  const blanks = blanksOf(written, 0.25);
  const paths = drawing.shapes.flatMap((shape): readonly PlacedPath[] => {
    const corners = shape.points.map(toPaper);
    const points = shape.closed && shape.round !== undefined ? rounded(corners, shape.round * scale) : corners;
    const outline: PlacedPath = {
      id: shape.id,
      part: shape.part,
      layer: shape.layer,
      ink: shape.layer === "chalk" ? "attention" : shape.layer === "pencil" ? "measured" : "worked",
      pieces: [points],
      closed: shape.closed,
      filled: shape.fill?.kind === "solid",
      role: "shape",
    };
    const inside = bare ? [] : filling(shape, points, toPaper, blanks);
    const layer = shape.fill?.kind === "weave" ? "weave" : "hatch";
    const filled: readonly PlacedPath[] =
      inside.length === 0
        ? []
        : [{ id: `${shape.id}-fill`, part: shape.part, layer, ink: "worked", pieces: inside, closed: false, filled: false, role: "fill" }];
    return shape.layer === "none" ? filled : [...filled, outline];
  });
  return { ...nothing, paths };
}

/** Hatching or weave inside an outline, clear of what is written there. */
function filling(
  { fill }: Shape,
  points: readonly Point[],
  toPaper: ToPaper,
  blanks: ReturnType<typeof blanksOf>,
): readonly (readonly Point[])[] {
  if (fill?.kind !== "weave" && fill?.kind !== "hatch") return [];
  const box = around(points);
  const near = within(box, blanks);
  if (fill.kind === "weave") return braid(fill, box, points, near);
  const holes = (fill.around ?? []).map(([x0, y0, x1, y1]) => around([toPaper([x0, y0]), toPaper([x1, y1])]));
  const keep = { circles: near.circles, boxes: [...near.boxes, ...holes] };
  const [origin] = toPaper([fill.from ?? 0, 0]);
  return hatch(points, fill.lean, fill.spacing, origin).flatMap((segment) => outside(segment, keep));
}
