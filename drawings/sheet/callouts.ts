import type { Label, Point, Rectangle } from "../shapes.ts";
import { runsOf, runsWidth } from "../text/runs.ts";
import type { ToPaper } from "./paper.ts";
import { arrowhead, extentOf, nothing, type Placed, type PlacedPath, placeLine, placeText, together } from "./placed.ts";
import { type Style, words } from "./style.ts";

const lineHeight = 1.4;

/** Labels that stand above the drawing. One that would meet another is handed back for the notes under it. */
export function placeCallouts(
  labels: readonly Label[],
  toPaper: ToPaper,
  edge: number,
  style: Style,
): { placed: Placed; top: number; homeless: readonly Label[] } {
  let placed = nothing;
  let top = edge;
  const homeless: Label[] = [];
  const level = edge + 1.1 * style.size;
  for (const label of labels.filter(({ place }) => place === "above")) {
    const stack = stackOf(label, toPaper, level, style);
    if (stack.texts.some(({ box }) => placed.texts.some((other) => meets(box, other.box, 0.6 * style.size)))) {
      homeless.push(label);
      continue;
    }
    const arrow = label.arrow ? flowArrow(toPaper(label.at), extentOf(stack)?.[3] ?? level, label.arrow, style) : nothing;
    top = Math.max(top, extentOf(arrow)?.[3] ?? top);
    placed = together(placed, stack, arrow);
  }
  return { placed, top, homeless };
}

function stackOf({ id, lines, at, anchor, arrow }: Label, toPaper: ToPaper, level: number, style: Style): Placed {
  const { size } = style;
  const [x] = toPaper(at);
  const away = anchor === "end" ? -1 : anchor === "start" ? 1 : 0;
  const start = x + away * (arrow ? 1.1 : 0.5) * size;
  return together(
    ...lines.map(({ text, ink, bold }, i) => {
      const y = level + (lines.length - 1 - i) * lineHeight * size;
      const runs = runsOf(words(style, text), bold);
      const from = start + (ink === "attention" ? away * 0.7 * size : 0);
      const line = placeText({ id: lines.length > 1 ? `${id}-${i + 1}` : id, runs, at: [from, y], anchor, size, ink });
      return ink === "attention" ? together(line, chalkBar(line.texts[0]?.box, size)) : line;
    }),
  );
}

/** Red chalk has its bar, so that it is told by more than its colour. */
export function chalkBar(box: Rectangle | undefined, size: number): Placed {
  if (!box) return nothing;
  const [x0, y0, , y1] = box;
  const bar: readonly Point[] = [
    [x0 - 0.65 * size, y0],
    [x0 - 0.4 * size, y0],
    [x0 - 0.4 * size, y1],
    [x0 - 0.65 * size, y1],
  ];
  const path: PlacedPath = { layer: "chalk", ink: "attention", pieces: [bar], closed: true, filled: true, role: "shape" };
  return { ...nothing, paths: [path] };
}

function flowArrow(tip: Point, top: number, ink: NonNullable<Label["arrow"]>, { size }: Style): Placed {
  const head = 1.15 * size;
  const shaft = placeLine(
    "flow",
    ink,
    [
      [
        [tip[0], Math.max(top, tip[1] + 2 * head)],
        [tip[0], tip[1] + 0.8 * head],
      ],
    ],
    "flow",
  );
  return { ...nothing, paths: [shaft, { ...arrowhead(tip, [0, -1], head, ink), role: "flow" }] };
}

/** Labels on the drawing itself; those that have no room there are handed back for the notes under it. */
export function placeInside(labels: readonly Label[], toPaper: ToPaper, style: Style): { placed: Placed; homeless: readonly Label[] } {
  let placed = nothing;
  const homeless: Label[] = [];
  for (const label of labels) {
    if (label.place !== "inside" && label.place !== "here") continue;
    const { id, lines, at, anchor, room, offset = [0, 0] } = label;
    const point = toPaper(at);
    const [x, y] = [point[0] + offset[0] * style.size, point[1] + offset[1] * style.size];
    const rows = lines.map(({ text, bold }) => runsOf(words(style, text), bold));
    if (room) {
      const [far, high] = toPaper([at[0] + room[0], at[1] + room[1]]);
      const widest = Math.max(...rows.map((runs) => runsWidth(runs, style.size)));
      const tall = (1.6 + (lines.length - 1) * lineHeight) * style.size;
      if (Math.abs(far - x) < widest + 0.6 * style.size || high - y < tall) {
        homeless.push(label);
        continue;
      }
    }
    for (const [i, line] of lines.entries()) {
      const middle = y + (room ? 0.65 * style.size : 0) + (lines.length - 1 - i) * lineHeight * style.size;
      const name = lines.length > 1 ? `${id}-${i + 1}` : id;
      placed = together(placed, placeText({ id: name, runs: rows[i] ?? [], at: [x, middle], anchor, size: style.size, ink: line.ink }));
    }
  }
  return { placed, homeless };
}

/** Labels in a column left of the drawing, each level with its point or pushed down by the one above it, on a leader. */
export function placeLeft(labels: readonly Label[], toPaper: ToPaper, edge: number, style: Style): Placed {
  const { size } = style;
  let placed = nothing;
  let ceiling = Number.POSITIVE_INFINITY;
  const mine = labels.filter(({ place }) => place === "left").map((label) => ({ label, point: toPaper(label.at) }));
  for (const { label, point } of mine.sort((a, b) => b.point[1] - a.point[1])) {
    const y = Math.min(point[1], ceiling);
    const line = label.lines[0];
    if (!line) continue;
    const x = edge - 1.6 * size;
    const text = placeText({
      id: label.id,
      runs: runsOf(words(style, line.text), line.bold),
      at: [x, y],
      anchor: "end",
      size,
      ink: line.ink,
    });
    const leader = placeLine("leader", "quiet", [
      [
        [x + 0.3 * size, y],
        [edge - 0.5 * size, point[1]],
        [point[0] - 0.2 * size, point[1]],
      ],
    ]);
    placed = together(placed, text, { ...nothing, paths: [leader] });
    ceiling = y - lineHeight * size;
  }
  return placed;
}

/** Whether two rectangles come nearer than a margin. */
export function meets([ax0, ay0, ax1, ay1]: Rectangle, [bx0, by0, bx1, by1]: Rectangle, margin: number): boolean {
  return ax0 < bx1 + margin && bx0 < ax1 + margin && ay0 < by1 + margin && by0 < ay1 + margin;
}
