import type { Dimension, Point } from "../shapes.ts";
import { runsOf, runsWidth } from "../text/runs.ts";
import type { ToPaper } from "./paper.ts";
import { arrowhead, nothing, type Placed, placeLine, placeText, together } from "./placed.ts";
import { arrowLength, dimensionRuns, type Style, words } from "./style.ts";

/**
 * Dimensions across the axis, in columns left or right of `edge`, the nearest
 * first. On a narrow page the text turns along its line where that is long
 * enough; else it stands upright in the line, or beside it when the diameter
 * is smaller than the text.
 */
export function placeColumns(
  dimensions: readonly Dimension[],
  side: "left" | "right",
  toPaper: ToPaper,
  edge: number,
  style: Style,
): Placed {
  const outwards = side === "right" ? 1 : -1;
  const { size } = style;
  let placed = nothing;
  let cursor = edge + outwards * 1.1 * size;
  for (const dimension of dimensions.filter((one) => one.side === side).sort((a, b) => a.row - b.row)) {
    const { column, outer } = placeColumn(dimension, toPaper, cursor, outwards, style);
    placed = together(placed, column);
    cursor = outer + outwards * 0.7 * size;
  }
  return placed;
}

interface Text {
  readonly placed: (x: number) => Placed;
  /** Room on either side of the dimension line, and how much of the line is kept free for it. */
  readonly half: number;
  readonly free: number;
  /** Room outside the line, for a text that stands beside it. */
  readonly beside: number;
}

/** How the figure stands: turned in its line or along it, upright in it under its name, in it, or beside it. */
function textOf(dimension: Dimension, height: number, middle: number, outwards: number, style: Style): Text {
  const { ink, called } = dimension;
  const id = `figure-${dimension.id}`;
  const { size } = style;
  const room = height - 2 * arrowLength(style);
  const [value, full] = [dimensionRuns(style, dimension, false), dimensionRuns(style, dimension, true)];
  const widths = { value: runsWidth(value, size), full: runsWidth(full, size) };
  if (style.compact && room >= widths.value + 1.1 * size) {
    const runs = room >= widths.full + 1.1 * size ? full : value;
    const place = (x: number) => placeText({ id, runs, at: [x, middle], anchor: "middle", size, ink, turned: true });
    return { placed: place, half: 0.55 * size, free: runsWidth(runs, size) / 2 + 0.35 * size, beside: 0 };
  }
  if (style.compact && height >= widths.value + 0.6 * size) {
    const runs = height >= widths.full + 0.6 * size ? full : value;
    const along = (x: number) =>
      placeText({ id, runs, at: [x + outwards * 0.85 * size, middle], anchor: "middle", size, ink, turned: true });
    return { placed: along, half: 0.3 * size, free: 0, beside: 1.4 * size };
  }
  if (!style.compact && called !== undefined && room >= 3.4 * size) {
    const name = runsOf(words(style, called));
    const lines = (x: number) =>
      together(
        placeText({
          id: `${id}-name`,
          runs: name,
          at: [x, middle + 0.62 * size],
          anchor: "middle",
          size,
          ink: ink === "measured" ? "quiet" : ink,
        }),
        placeText({ id, runs: value, at: [x, middle - 0.62 * size], anchor: "middle", size, ink }),
      );
    return { placed: lines, half: Math.max(widths.value, runsWidth(name, size)) / 2, free: 1.4 * size, beside: 0 };
  }
  const runs = style.compact ? value : full;
  const width = runsWidth(runs, size);
  if (room >= 2.2 * size) {
    const level = (x: number) => placeText({ id, runs, at: [x, middle], anchor: "middle", size, ink });
    return { placed: level, half: width / 2, free: 0.75 * size, beside: 0 };
  }
  const anchor = outwards > 0 ? "start" : "end";
  const next = (x: number) => placeText({ id, runs, at: [x + outwards * 0.5 * size, middle], anchor, size, ink });
  return { placed: next, half: 0.3 * size, free: 0, beside: 0.5 * size + width };
}

function placeColumn(
  dimension: Dimension,
  toPaper: ToPaper,
  cursor: number,
  outwards: number,
  style: Style,
): { column: Placed; outer: number } {
  const { ink, from, to } = dimension;
  const { size } = style;
  const arrow = arrowLength(style);
  const ends = [toPaper(from), toPaper(to)].sort((p, q) => p[1] - q[1]) as [Point, Point];
  const [low, high] = [ends[0][1], ends[1][1]];
  const middle = (low + high) / 2;
  const { placed, half, free, beside } = textOf(dimension, high - low, middle, outwards, style);
  const x = cursor + outwards * half;
  const inside = free > 0 || high - low >= 2 * arrow + 0.3 * size;
  const tail = inside ? 0 : arrow + 0.7 * size;
  const line: readonly (readonly Point[])[] =
    free > 0
      ? [
          [
            [x, low],
            [x, middle - free],
          ],
          [
            [x, middle + free],
            [x, high],
          ],
        ]
      : [
          [
            [x, low - tail],
            [x, high + tail],
          ],
        ];
  const heads = [arrowhead([x, low], [0, inside ? -1 : 1], arrow, ink), arrowhead([x, high], [0, inside ? 1 : -1], arrow, ink)];
  const extensions = ends.map(([start, y]) =>
    placeLine("extension", "quiet", [
      [
        [start + outwards * 0.25 * size, y],
        [x + outwards * 0.45 * size, y],
      ],
    ]),
  );
  const column = together(placed(x), { ...nothing, paths: [placeLine("dimension", ink, line), ...heads, ...extensions] });
  return { column, outer: x + outwards * Math.max(half, beside, 0.45 * size) };
}
