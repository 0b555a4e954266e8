import type { Balloon, Fill, Label, Layer, Part, Point, Rectangle, Shape } from "../shapes.ts";

/** What one part of the box adds to the drawing. */
export interface Pieces {
  readonly parts: readonly Part[];
  readonly shapes: readonly Shape[];
  readonly balloons?: readonly Balloon[];
  readonly labels?: readonly Label[];
}

/** Above and below the centre line. */
export const halves = [
  { half: "upper", sign: 1 },
  { half: "lower", sign: -1 },
] as const;

/** A closed region with radii given above the centre line, mirrored for the lower half; corners stay anticlockwise. */
export function region(id: string, part: string, points: readonly Point[], sign: 1 | -1, fill?: Fill, round?: number): Shape {
  const turned = sign === 1 ? points : points.map(([x, y]): Point => [x, -y]).reverse();
  return { id, part, layer: "outline", points: turned, closed: true, ...(fill ? { fill } : {}), ...(round === undefined ? {} : { round }) };
}

export function rectangle([x0, y0, x1, y1]: Rectangle): readonly Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

export function line(id: string, part: string, layer: Layer, points: readonly Point[], sign: 1 | -1 = 1): Shape {
  return { id, part, layer, points: points.map(([x, y]): Point => [x, sign * y]), closed: false };
}

/** A rectangle above the centre line, on the side that `sign` says. */
export function mirrored([x0, y0, x1, y1]: Rectangle, sign: 1 | -1): Rectangle {
  return sign === 1 ? [x0, y0, x1, y1] : [x0, -y1, x1, -y0];
}
