import type { Show } from "@ringwright/words";
import type { Drawing, Point, Rectangle } from "../shapes.ts";
import { placeBalloons } from "./balloons.ts";
import { meets, placeCallouts, placeInside, placeLeft } from "./callouts.ts";
import { keepClear } from "./clear.ts";
import { placeColumns } from "./columns.ts";
import { fillShapes } from "./fill.ts";
import { placeFlags } from "./flags.ts";
import { around } from "./hatch.ts";
import { placeFooter, placeHeading } from "./margins.ts";
import { bodyOf, paper } from "./paper.ts";
import { extentOf, nothing, type Placed, together } from "./placed.ts";
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
  /** Another state of the same thing, whose scale and page this one keeps, so that nothing jumps when a part moves. */
  readonly like?: Pick<Sheet, "scale" | "frame" | "shrunk">;
  /** Without hatching and weave. */
  readonly bare?: boolean;
  /** How the scale is written beside the scale bar, when paper millimetres are real. */
  readonly stated?: string;
}

/** A drawing on its page: everything placed, y still up, `frame` the page's edges. */
export interface Sheet {
  readonly placed: Placed;
  readonly frame: Rectangle;
  readonly scale: number;
  /** Less than 1 where the page or scale asked for is too small to read and the whole sheet has to shrink. */
  readonly shrunk: number;
}

/** Half the gap that stands for what is left out, in text sizes: a label has room in it. */
const leftOutGap = 1.75;
const margin = 0.9;
/** Narrower than so many text sizes, a page turns its diameters. */
const compactBelow = 45;
const narrowest = 24;

/**
 * Lays a drawing out so that nothing overlaps: at a given scale, or as large as
 * the width allows. What would be too small to read is laid out larger and
 * shrunk as a whole, so that it is still to the scale that was asked for.
 */
export function layOut(drawing: Drawing, page: Page): Sheet {
  const target = page.width ?? Number.POSITIVE_INFINITY;
  const style: Style = { size: page.size, show: page.show, compact: target < compactBelow * page.size, wide: target / page.size };
  const smallest = (drawing.legible.sizes * page.size) / drawing.legible.length;
  if (page.like) return sheetAt(drawing, page.like.scale, page, style);
  if (page.scale !== undefined) {
    const sheet = sheetAt(drawing, Math.max(page.scale, smallest), page, style);
    return { ...sheet, shrunk: page.scale / sheet.scale };
  }
  const [x0, , x1] = bodyOf(drawing);
  const widthAt = (scale: number) => {
    const { reach } = annotate(drawing, scale, style);
    return reach[2] - reach[0] + 2 * margin * page.size;
  };
  return sheetAt(drawing, largestScale(widthAt, target, smallest, x1 - x0), page, style);
}

/**
 * The largest scale at which a page is no wider than it may be. Width grows by
 * about the length of what is drawn, with small jumps where a text finds room,
 * so each try aims along that line and is kept between the last that fitted
 * and the last that did not.
 */
function largestScale(widthAt: (scale: number) => number, target: number, smallest: number, length: number): number {
  let [fits, scale] = [smallest, smallest];
  let tooLarge = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < 9; tries++) {
    const spare = target - widthAt(scale);
    if (spare < 0 && scale === smallest) return smallest;
    if (spare >= 0) fits = scale;
    else tooLarge = scale;
    if (spare >= 0 && spare < 1e-3) break;
    const aimed = scale + (spare - 5e-4) / length;
    scale = aimed > fits && aimed < tooLarge ? aimed : (fits + tooLarge) / 2;
    if (!Number.isFinite(scale)) break;
  }
  return fits;
}

/** Everything that is written round a drawing at a scale, and how far it all reaches. */
function annotate(drawing: Drawing, scale: number, style: Style) {
  const toPaper = paper(drawing, scale, leftOutGap * style.size);
  const [lowest, highest] = corners(bodyOf(drawing)).map(toPaper) as [Point, Point];
  const body: Rectangle = [...lowest, ...highest];
  const balloons = placeBalloons(drawing.balloons, toPaper, scale, body[1], style);
  const { placed: inside, homeless } = placeInside(drawing.labels, toPaper, style);
  const { placed: callouts, top, homeless: crowded } = placeCallouts(drawing.labels, toPaper, body[3], style);
  const below = Math.min(body[1], extentOf(balloons)?.[1] ?? body[1]);
  const above = placeRows(drawing.dimensions, "above", toPaper, top, style);
  const crowding = above.texts.some(({ box }) => callouts.texts.some((text) => meets(box, text.box, 0.4 * style.size)));
  const notes = together(
    balloons,
    inside,
    callouts,
    crowding ? placeRows(drawing.dimensions, "above", toPaper, extentOf(callouts)?.[3] ?? top, style) : above,
    placeRows(drawing.dimensions, "below", toPaper, below, style),
    placeColumns(drawing.dimensions, "left", toPaper, body[0], style),
    placeColumns(drawing.dimensions, "right", toPaper, body[2], style),
    placeLeft(drawing.labels, toPaper, body[0], style),
    placeFlags(drawing.labels, "over", toPaper, [body[0], body[2]], body[3], style),
    placeFlags(drawing.labels, "under", toPaper, [body[0], body[2]], body[1], style),
  );
  return { toPaper, notes, homeless: [...homeless, ...crowded], reach: around([...corners(body), ...corners(extentOf(notes) ?? body)]) };
}

function corners([x0, y0, x1, y1]: Rectangle): readonly [Point, Point] {
  return [
    [x0, y0],
    [x1, y1],
  ];
}

function sheetAt(drawing: Drawing, scale: number, page: Page, style: Style): Sheet {
  const { size } = style;
  const { toPaper, notes, homeless, reach } = annotate(drawing, scale, style);
  const [x0, y0, x1, y1] = reach;
  const edge = margin * size;
  const kept = page.like?.frame;
  const width = kept ? kept[2] - kept[0] - 2 * edge : Math.max(x1 - x0, (page.width ?? 0) - 2 * edge, narrowest * size);
  const left = kept ? kept[0] + edge : (x0 + x1 - width) / 2;
  const heading = page.heading ? placeHeading(drawing, left, y1, width, style) : nothing;
  const footer = placeFooter(drawing, homeless, scale, page.stated, [left, y0], width, style);
  const clear = keepClear(together(notes, footer, heading), size);
  const placed = together(fillShapes(drawing, toPaper, scale, clear, page.bare), clear);
  const [, bottom, , top] = extentOf(placed) ?? reach;
  const own: Rectangle = [left - edge, bottom - edge, left + width + edge, top + edge];
  if (page.like && kept) {
    const needed: Rectangle = [x0 - edge, own[1], x1 + edge, own[3]];
    return { placed, frame: around([...corners(kept), ...corners(needed)]), scale, shrunk: page.like.shrunk };
  }
  const wide = own[2] - own[0];
  return { placed, frame: own, scale, shrunk: page.width !== undefined && wide > page.width * (1 + 1e-6) ? page.width / wide : 1 };
}
