import type { Drawing, Shape } from "../shapes.ts";
import { around } from "../sheet/hatch.ts";
import type { LaidOut } from "../sheet/sheet-of.ts";

/**
 * How the hatching and weave of a drawing that is on the page already have to
 * be moved along the axis to lie in the parts of another state of the same
 * thing: by id of the path, as an SVG transform. A part's lines go with it and
 * are squeezed with it, so that only outlines and figures have to be drawn
 * anew while a hand moves it (`toSvg` with `bare`).
 * @example fillsMoved(laid, drawBoxSection({ ...box, moved })) // Map { "ring-3-upper-fill" => "matrix(0.97 0 0 1 -1.2 0)" }
 */
export function fillsMoved({ drawing: before, frame, scale }: LaidOut, after: Drawing): ReadonlyMap<string, string> {
  const now = new Map(after.shapes.map((shape) => [shape.id, shape]));
  const moved = new Map<string, string>();
  for (const shape of before.shapes) {
    const other = now.get(shape.id);
    if (!shape.fill || !other) continue;
    const [from, to] = span(shape);
    const [nowFrom, nowTo] = span(other);
    const squeeze = (nowTo - nowFrom) / (to - from);
    // Millimetres of the thing, from its own origin, to millimetres of paper from the page's left edge.
    const shift = (nowFrom - squeeze * from) * scale + (squeeze - 1) * frame[0];
    moved.set(`${shape.id}-fill`, `matrix(${squeeze} 0 0 1 ${shift} 0)`);
  }
  return moved;
}

function span({ points }: Shape): readonly [number, number] {
  const [x0, , x1] = around(points);
  return [x0, x1];
}
