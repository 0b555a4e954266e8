import type { Family } from "@ringwright/core/materials";
import type { Point } from "../shapes.ts";
import { curve, type Pattern, plaited, woven } from "./lattice.ts";

const straight = (offset: number, half = 0.5): readonly Point[] => [
  [-half, offset],
  [half, offset],
];

/** Yarn laid up like rope: long S strokes, each row set off by half a strand. */
const laid: Pattern = (along, across) => {
  const lines: (readonly Point[])[] = [];
  for (let j = 0; j < across; j++) {
    for (let i = -1; i <= along; i++) {
      const x = i + (j % 2 === 0 ? 0 : 0.5);
      for (const [shift, from, to] of [
        [0, 0, 1],
        [0.34, 0.2, 0.8],
      ] as const) {
        lines.push(
          curve(7, (t) => {
            const s = from + (to - from) * t;
            return [x + shift + 0.95 * (s - 0.5) + 0.5 - 0.16 * Math.sin(2 * Math.PI * s), j + 0.06 + 0.88 * s];
          }),
        );
      }
    }
  }
  return lines;
};

/** Long pointed grains along the axis, each row set off by half a grain. */
const grains: Pattern = (along, across) => {
  const lines: (readonly Point[])[] = [];
  for (let j = 0; 0.625 * j <= across; j++) {
    for (let i = -1; i <= along; i++) {
      const x = i + (j % 2 === 0 ? 0 : 0.5);
      for (const side of [0.5, -0.5]) lines.push(curve(5, (t) => [x + t, 0.625 * j + side * Math.sin(Math.PI * t) ** 1.2]));
    }
  }
  return lines;
};

/** Foil wrapped round and round: crinkled turns, one inside the other. */
const wrapped: Pattern = (along, across) => {
  const lines: (readonly Point[])[] = [];
  for (let inset = 0.45; inset < Math.min(along, across) / 2; inset += 0.72) {
    const [x0, y0, x1, y1] = [inset, inset, along - inset, across - inset];
    const corners: readonly Point[] = [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
      [x0, y0],
    ];
    const turn: Point[] = [];
    for (let side = 0; side < 4; side++) {
      const [[ax, ay], [bx, by]] = [corners[side] as Point, corners[side + 1] as Point];
      const length = Math.hypot(bx - ax, by - ay);
      const crinkles = Math.max(2, Math.round(length / 0.35));
      for (let k = 0; k < crinkles; k++) {
        const t = k / crinkles;
        const out = k === 0 ? 0 : k % 2 === 0 ? 0.1 : -0.1;
        turn.push([ax + (bx - ax) * t + (out * (by - ay)) / length, ay + (by - ay) * t - (out * (bx - ax)) / length]);
      }
    }
    lines.push([...turn, turn[0] as Point]);
  }
  return lines;
};

/** Close plait, every strand with its ribs: the darkest. */
const close = plaited([straight(-0.34, 0.4), straight(-0.12), straight(0.12), straight(0.34, 0.4)]);

/** Plain weave: man-made fibre, and whatever is not known. */
export const plain = woven([straight(-0.24, 0.46), straight(0.24, 0.46)]);

/** A weave for each family, so that a set can be told by its look even in black and white. */
export const weaves: Readonly<Record<Family, Pattern>> = {
  graphite: close,
  carbon: close,
  // Smooth filaments: pointed grains, laid like bricks.
  ptfe: grains,
  // Open plait: strands with their two edges and daylight between.
  aramid: plaited([straight(-0.3, 0.8), straight(0.3, 0.8)]),
  novoloid: plain,
  acrylic: plain,
  glass: plain,
  "vegetable-fibre": laid,
  melamine: plain,
  metal: wrapped,
  injectable: plain,
  "elastomer-core": plain,
};
