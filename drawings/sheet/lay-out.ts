import type { Show } from "@ringwright/words";
import type { Drawing, Rectangle } from "../shapes.ts";
import { placeBalloons, smallestBalloon } from "./balloons.ts";
import { meets, placeCallouts, placeInside } from "./callouts.ts";
import { keepClear } from "./clear.ts";
import { placeColumns } from "./columns.ts";
import { fillShapes } from "./fill.ts";
import { placeFooter, placeHeading } from "./margins.ts";
import { bodyOf, paper } from "./paper.ts";
import { extentOf, type Placed, together } from "./placed.ts";
import { placeRows } from "./rows.ts";
import type { Style } from "./style.ts";

export interface Page {
  /** Millimetres of paper to fill; the scale follows. */
  readonly width?: number;
  /** Millimetres of paper for one of the real thing, instead of a width. */
  readonly scale?: number;
  readonly size: number;
  readonly show: Show;
  readonly heading: boolean;
  /** How the scale is written beside the scale bar, when paper millimetres are real. */
  readonly stated?: string;
}

/** A drawing on its page: everything placed, y still up, `frame` the page's edges. */
export interface Sheet {
  readonly placed: Placed;
  readonly frame: Rectangle;
  readonly scale: number;
  /** Less than 1 where the page asked for is too narrow to read and the whole sheet has to shrink. */
  readonly shrunk: number;
}

/** Half the gap that stands for what is left out, in text sizes: a label has room in it. */
const leftOutGap = 1.75;
const margin = 0.9;
/** Narrower than so many text sizes, a page turns its diameters. */
const compactBelow = 45;
const narrowest = 24;

/** Lays a drawing out so that nothing overlaps: at a given scale, or as large as the width allows. */
export function layOut(drawing: Drawing, page: Page): Sheet {
  const target = page.width ?? Number.POSITIVE_INFINITY;
  const style: Style = { size: page.size, show: page.show, compact: target < compactBelow * page.size };
  if (page.scale !== undefined) return sheetAt(drawing, page.scale, page, style);
  const smallest = legibleScale(drawing, page.size);
  const [x0, , x1] = bodyOf(drawing, (point) => point);
  const widthAt = (scale: number) => {
    const [left, , right] = extentOf(annotated(drawing, scale, style).all) ?? [0, 0, 0, 0];
    return right - left + 2 * margin * page.size;
  };
  let [low, high] = [smallest, Math.max(smallest, (target - 2 * margin * page.size) / Math.max(x1 - x0, 1e-9))];
  if (widthAt(low) < target) {
    for (let i = 0; i < 22; i++) {
      const middle = Math.sqrt(low * high);
      if (widthAt(middle) <= target) low = middle;
      else high = middle;
    }
  }
  return sheetAt(drawing, low, page, style);
}

/** The scale below which the numbers in the parts could no longer be read. */
function legibleScale({ balloons, shapes }: Drawing, size: number): number {
  const rooms = balloons.map(({ room }) => room).sort((a, b) => a - b);
  const usual = rooms[Math.floor(rooms.length / 2)];
  if (usual !== undefined && usual > 0) return (smallestBalloon * size) / usual;
  const xs = shapes.flatMap(({ points }) => points.map(([x]) => x));
  return (6 * size) / Math.max(1e-9, Math.max(...xs) - Math.min(...xs));
}

function annotated(drawing: Drawing, scale: number, style: Style) {
  const toPaper = paper(drawing, scale, leftOutGap * style.size);
  const body = bodyOf(drawing, toPaper);
  const balloons = placeBalloons(drawing.balloons, toPaper, scale, body[1], style);
  const { placed: inside, homeless } = placeInside(drawing.labels, toPaper, style);
  const { placed: callouts, top, homeless: crowded } = placeCallouts(drawing.labels, toPaper, body[3], style);
  const below = Math.min(body[1], extentOf(balloons)?.[1] ?? body[1]);
  const above = placeRows(drawing.dimensions, "above", toPaper, top, style);
  const crowding = above.texts.some(({ box }) => callouts.texts.some((text) => meets(box, text.box, 0.4 * style.size)));
  const dimensions = together(
    crowding ? placeRows(drawing.dimensions, "above", toPaper, extentOf(callouts)?.[3] ?? top, style) : above,
    placeRows(drawing.dimensions, "below", toPaper, below, style),
    placeColumns(drawing.dimensions, "left", toPaper, body[0], style),
    placeColumns(drawing.dimensions, "right", toPaper, body[2], style),
  );
  const notes = together(balloons, inside, callouts, dimensions);
  const edges = { x0: body[0], y0: body[1], x1: body[2], y1: body[3] };
  const reach = extentOf(notes) ?? body;
  const all: Placed = {
    ...notes,
    paths: [
      ...notes.paths,
      // The body itself takes room too.
      {
        layer: "thin",
        ink: "quiet",
        pieces: [
          [
            [edges.x0, edges.y0],
            [edges.x1, edges.y1],
          ],
        ],
        closed: false,
        filled: false,
        role: "shape",
      },
    ],
  };
  return { toPaper, notes, homeless: [...homeless, ...crowded], all, reach };
}

function sheetAt(drawing: Drawing, scale: number, page: Page, style: Style): Sheet {
  const { size } = style;
  const { toPaper, notes, homeless, all } = annotated(drawing, scale, style);
  const [x0, y0, x1, y1] = extentOf(all) ?? [0, 0, 0, 0];
  const width = Math.max(x1 - x0, Math.min(page.width ?? 0, 1e6) - 2 * margin * size, narrowest * size);
  const left = (x0 + x1 - width) / 2;
  const heading = page.heading ? placeHeading(drawing, left, y1, width, style) : undefined;
  const footer = placeFooter(drawing, homeless, scale, page.stated, [left, y0], width, style);
  const clear = keepClear(together(notes, footer, ...(heading ? [heading] : [])), size);
  const placed = together(fillShapes(drawing, toPaper, scale, clear), clear);
  const [, bottom, , top] = extentOf(placed) ?? [0, 0, 0, 0];
  const frame: Rectangle = [left - margin * size, bottom - margin * size, left + width + margin * size, top + margin * size];
  const wide = frame[2] - frame[0];
  return { placed, frame, scale, shrunk: page.width !== undefined && wide > page.width * (1 + 1e-6) ? page.width / wide : 1 };
}
