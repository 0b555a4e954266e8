import type { Dimension, Point } from "../shapes.ts";
import { runsWidth } from "../text/runs.ts";
import type { ToPaper } from "./paper.ts";
import { arrowhead, nothing, type Placed, type PlacedPath, placeLine, placeText, together } from "./placed.ts";
import { arrowLength, dimensionRuns, rowPitch, type Style } from "./style.ts";

interface Member {
  readonly dimension: Dimension;
  readonly x1: number;
  readonly x2: number;
  /** A neighbour in the same row ends or begins here. */
  readonly left: boolean;
  readonly right: boolean;
}

/**
 * Dimensions along the axis, in rows above or below `edge`. A figure stands in
 * its line when there is room, else outside at the end of its row; a row of
 * which a middle figure has no room is left out when it may be.
 */
export function placeRows(dimensions: readonly Dimension[], side: "above" | "below", toPaper: ToPaper, edge: number, style: Style): Placed {
  const outwards = side === "above" ? 1 : -1;
  const mine = dimensions.filter((dimension) => dimension.side === side);
  const numbers = [...new Set(mine.map(({ row }) => row))].sort((a, b) => a - b);
  let placed = nothing;
  let level = edge + outwards * 1.7 * style.size;
  for (const number of numbers) {
    const members = inOrder(
      mine.filter(({ row }) => row === number),
      toPaper,
    );
    if (members.some((member) => member.dimension.optional && member.left && member.right && !fits(member, style))) continue;
    for (const member of members)
      placed = together(placed, placeMember(member, level, side, style), extensions(member, toPaper, level, outwards, style));
    level += outwards * rowPitch(style);
  }
  return placed;
}

function inOrder(dimensions: readonly Dimension[], toPaper: ToPaper): readonly Member[] {
  const spans = dimensions
    .map((dimension) => ({
      dimension,
      ends: [toPaper(dimension.from)[0], toPaper(dimension.to)[0]].sort((a, b) => a - b) as [number, number],
    }))
    .sort((a, b) => a.ends[0] - b.ends[0]);
  return spans.map(({ dimension, ends: [x1, x2] }, i) => ({ dimension, x1, x2, left: i > 0, right: i + 1 < spans.length }));
}

function textWidth({ dimension }: Member, style: Style): number {
  return runsWidth(dimensionRuns(style, dimension, true), style.size);
}

function fits(member: Member, style: Style): boolean {
  return member.x2 - member.x1 >= textWidth(member, style) + 2 * arrowLength(style) + 1.1 * style.size;
}

function placeMember(member: Member, y: number, side: "above" | "below", style: Style): Placed {
  const { dimension, x1, x2, left, right } = member;
  const { id, ink } = dimension;
  const { size } = style;
  const arrow = arrowLength(style);
  const width = textWidth(member, style);
  const text = (at: number, anchor: "start" | "middle" | "end") =>
    placeText({ id: `figure-${id}`, runs: dimensionRuns(style, dimension, true), at: [at, y], anchor, size, ink });
  const line = (...stretches: readonly (readonly [number, number])[]) =>
    placeLine(
      "dimension",
      ink,
      stretches.map(([a, b]): readonly Point[] => [
        [a, y],
        [b, y],
      ]),
    );
  const inward = [arrowhead([x1, y], [-1, 0], arrow, ink), arrowhead([x2, y], [1, 0], arrow, ink)];
  if (fits(member, style)) {
    const [a, b] = [(x1 + x2 - width) / 2 - 0.3 * size, (x1 + x2 + width) / 2 + 0.3 * size];
    return together(text((x1 + x2) / 2, "middle"), { ...nothing, paths: [line([x1, a], [b, x2]), ...inward] });
  }
  const toRight = side === "above" ? false : !right || left;
  const tail = arrow + 0.7 * size;
  const roomy = x2 - x1 >= 2 * arrow + 0.3 * size;
  const paths: PlacedPath[] = [];
  if (roomy) paths.push(line(toRight ? [x1, x2 + 0.7 * size] : [x1 - 0.7 * size, x2]), ...inward);
  else {
    // Arrows from outside; where a neighbour's arrow already points at the end, its own would lie on the neighbour's line.
    paths.push(line([left ? x1 : x1 - tail, right ? x2 : x2 + tail]));
    if (!left) paths.push(arrowhead([x1, y], [1, 0], arrow, ink));
    if (!right) paths.push(arrowhead([x2, y], [-1, 0], arrow, ink));
  }
  const out = (roomy ? 0.7 * size : tail) + 0.3 * size;
  return together(text(toRight ? x2 + out : x1 - out, toRight ? "start" : "end"), { ...nothing, paths });
}

function extensions({ dimension, x1, x2 }: Member, toPaper: ToPaper, level: number, outwards: number, { size }: Style): Placed {
  const starts = new Map([dimension.from, dimension.to].map((point) => toPaper(point)));
  const paths = [x1, x2].map((x) => {
    const start = starts.get(x) ?? level;
    return placeLine("extension", "quiet", [
      [
        [x, start + outwards * 0.25 * size],
        [x, level + outwards * 0.45 * size],
      ],
    ]);
  });
  return { ...nothing, paths };
}
