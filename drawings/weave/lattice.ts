import type { Point } from "../shapes.ts";

/** Lines in strand widths, from the lower left corner of a ring: `along` the axis, `across` the section. */
export type Pattern = (along: number, across: number) => readonly (readonly Point[])[];

/**
 * A plait at 45 degrees: diamonds that tile the section, each showing the
 * strand that lies on top there; the direction changes from row to row.
 * `strand` draws one, lengthwise along +x, in a square of side 1 round the origin.
 */
export function plaited(strand: readonly (readonly Point[])[]): Pattern {
  return (along, across) => {
    const lines: (readonly Point[])[] = [];
    for (let j = -1; j <= 2 * across + 1; j++) {
      const lean = j % 2 === 0 ? 1 : -1;
      for (let i = -1 - Math.abs((j + 1) % 2); i <= 2 * along + 1; i += 2) {
        for (const line of strand) {
          // Turned by 45 degrees and shrunk from the side of a diamond to its half diagonal.
          lines.push(line.map(([x, y]): Point => [i / 2 + (x - lean * y) / 2, j / 2 + (lean * x + y) / 2]));
        }
      }
    }
    return lines;
  };
}

/** A plain weave, upright: squares in which the strand on top runs along and across in turn. */
export function woven(strand: readonly (readonly Point[])[]): Pattern {
  return (along, across) => {
    const lines: (readonly Point[])[] = [];
    for (let j = 0; j < across; j++) {
      for (let i = 0; i < along; i++) {
        for (const line of strand) {
          lines.push(line.map(([x, y]): Point => ((i + j) % 2 === 0 ? [i + 0.5 + x, j + 0.5 + y] : [i + 0.5 - y, j + 0.5 + x])));
        }
      }
    }
    return lines;
  };
}

/** A curve through so many points of a formula. */
export function curve(points: number, at: (t: number) => Point): readonly Point[] {
  return Array.from({ length: points }, (_, i) => at(i / (points - 1)));
}
