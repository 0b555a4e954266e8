import { type Length, quantity } from "@ringwright/core/units";
import type { Dimension, Ink, Point } from "../shapes.ts";
import type { BoxFrame } from "./frame.ts";
import { mm, movement } from "./frame.ts";
import type { BoxDrawing, Stated } from "./input.ts";

const metres = (millimetres: number): Length => quantity("length", millimetres, "mm");

interface Along {
  readonly id: string;
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly ink: Ink;
  readonly called?: string;
  readonly chain?: string;
  readonly optional?: boolean;
}

/** The dimensions of a box: diameters beside it, lengths under it in chains, the port above it. */
export function dimensions(box: BoxDrawing, frame: BoxFrame): readonly Dimension[] {
  return [...diameters(box, frame), ...lengths(box, frame), ...portDimension(box, frame)];
}

function diameters(box: BoxDrawing, frame: BoxFrame): readonly Dimension[] {
  const across = (id: string, side: "left" | "right", row: number, x: number, radius: number, { value, by }: Stated): Dimension => ({
    id,
    side,
    row,
    from: [x, -radius],
    to: [x, radius],
    states: value,
    ink: by,
    diameter: true,
    called: { id: `drawing-${id}` },
  });
  const bore = across("bore", "left", 0, 0, frame.bore, box.bore);
  if (!box.sleeve)
    return [bore, across(box.wetEnd === "product-side" ? "stem" : "shaft", "right", 0, frame.shaftTo, frame.shaft, box.shaft)];
  const sleeve = across("sleeve", "right", 1, frame.sleeveTo, frame.shaft, box.shaft);
  return box.sleeve.bore
    ? [bore, across("shaft", "right", 0, frame.shaftTo, frame.bare, box.sleeve.bore), sleeve]
    : [bore, { ...sleeve, row: 0 }];
}

function lengths(box: BoxDrawing, frame: BoxFrame): readonly Dimension[] {
  const { setEnd, depth, flange } = frame;
  const moved = movement(box).gland > 0;
  const along: Along[] = [...groups(box, frame)];
  if (setEnd > 0 && setEnd < depth) {
    along.push({ id: "set", row: 1, from: 0, to: setEnd, ink: "worked", called: "drawing-set", chain: "depth" });
    along.push({ id: "entry", row: 1, from: setEnd, to: depth, ink: "worked", called: "drawing-entry", chain: "depth" });
  } else if (setEnd > 0) {
    along.push({ id: "set", row: 1, from: 0, to: setEnd, ink: "worked", called: "drawing-set" });
    if (setEnd > depth) along.push({ id: "stands-out", row: 3, from: depth, to: setEnd, ink: "attention", called: "drawing-stands-out" });
  }
  along.push({ id: "depth", row: 2, from: 0, to: depth, ink: box.depth.by, called: "drawing-depth" });
  const gap = box.follower?.gap;
  const nose = box.follower?.nose;
  // Once the gland has moved on from where it was measured, what is shown has been worked out.
  if (gap || nose)
    along.push({
      id: "gland-gap",
      row: 2,
      from: depth,
      to: flange,
      ink: moved ? "worked" : (gap?.by ?? "worked"),
      called: "drawing-gland-gap",
    });
  if (nose)
    along.push({
      id: "nose",
      row: 3,
      from: setEnd,
      to: flange,
      ink: noseDiffers(box, frame) > 0.05 ? "worked" : nose.by,
      called: "drawing-nose",
    });
  return along.filter(({ from, to }) => to > from).map((one) => below(one, frame));
}

/** The set in its groups: rings before the lantern ring, the lantern ring, rings behind it. */
function groups(box: BoxDrawing, frame: BoxFrame): readonly Along[] {
  const { lantern, setEnd } = frame;
  if (!box.lantern || !lantern) return [];
  const row = { row: 0, ink: "worked", chain: "set", optional: true } as const;
  return [
    { id: "before-lantern", ...row, from: 0, to: lantern.from },
    { id: "lantern-width", ...row, from: lantern.from, to: lantern.to },
    { id: "behind-lantern", ...row, from: lantern.to, to: setEnd },
  ];
}

function below({ id, row, from, to, ink, called, chain, optional }: Along, frame: BoxFrame): Dimension {
  const at = (x: number): Point => [x, x <= frame.depth ? -frame.wall : -frame.flangeRadius];
  return {
    id,
    side: "below",
    row,
    from: at(from),
    to: at(to),
    states: metres(to - from),
    ink,
    ...(called === undefined ? {} : { called: { id: called } }),
    ...(chain === undefined ? {} : { chain }),
    ...(optional === undefined ? {} : { optional }),
  };
}

function portDimension({ port }: BoxDrawing, frame: BoxFrame): readonly Dimension[] {
  if (!port || !frame.port) return [];
  const { at } = frame.port;
  return [
    {
      id: "port-at",
      side: "above",
      row: 0,
      from: [0, frame.wall],
      to: [at, frame.wall],
      states: port.fromThroat.value,
      ink: port.fromThroat.by,
    },
  ];
}

/** By how many millimetres the nose as measured is another length than entry and gap leave for it. */
export function noseDiffers(box: BoxDrawing, { flange, setEnd }: BoxFrame): number {
  const nose = box.follower?.nose;
  return nose === undefined ? 0 : Math.abs(mm(nose.value) - (flange - setEnd));
}
