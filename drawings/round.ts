import type { Point, Shape } from "./shapes.ts";

/** A circle as a closed shape, fine enough to look round on any page. */
export function circle(id: string, part: string, radius: number): Shape {
  return { id, part, layer: "outline", points: arc(radius, 0, 2 * Math.PI, 144).slice(0, -1), closed: true };
}

/** Points along an arc round the origin, angles anticlockwise from +x. */
export function arc(radius: number, from: number, to: number, steps: number): readonly Point[] {
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = from + ((to - from) * i) / steps;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}
