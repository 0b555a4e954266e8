import type { Drawing } from "../shapes.ts";
import { undrawn } from "../undrawn.ts";
import { describe, notes, sides } from "./describe.ts";
import { dimensions } from "./dimensions.ts";
import { faultsOf } from "./faults.ts";
import { follower } from "./follower.ts";
import { type BoxFrame, frameOf } from "./frame.ts";
import { housing } from "./housing.ts";
import type { BoxDrawing } from "./input.ts";
import { lantern } from "./lantern.ts";
import { port } from "./port.ts";
import { rings } from "./rings.ts";
import { shaft } from "./shaft.ts";
import { studs } from "./studs.ts";

/**
 * The section through a stuffing box, above and below the centre line, to
 * scale: throat on the left, gland on the right, the set with its lantern
 * ring, the follower with studs and nuts, and every dimension that was stated.
 * Moved on from finger-tight, the rings are squeezed and the lantern ring goes
 * along. A box that cannot be drawn gives a drawing that says why in its notes.
 * @example toSvg(drawBoxSection({ title: "Stock pump 2", shaft: { value, by: "measured" }, ... }))
 */
export function drawBoxSection(box: BoxDrawing): Drawing {
  const head = { name: "box-section", title: box.title, ...(box.subtitle === undefined ? {} : { subtitle: box.subtitle }) };
  const faults = faultsOf(box);
  if (faults.length > 0) return undrawn(head, faults);
  const frame = frameOf(box);
  const pieces = [
    housing(frame),
    shaft(box, frame),
    rings(box, frame),
    lantern(frame),
    follower(frame),
    port(box, frame),
    studs(box, frame),
  ];
  return {
    ...head,
    description: describe(box, frame),
    parts: pieces.flatMap(({ parts }) => parts),
    shapes: pieces.flatMap(({ shapes }) => shapes),
    dimensions: dimensions(box, frame),
    balloons: pieces.flatMap(({ balloons = [] }) => balloons),
    labels: [...pieces.flatMap(({ labels = [] }) => labels), ...sides(box, frame)],
    notes: notes(box, frame),
    ...(frame.leftOut > 0 ? { leftOut: { axis: "y" as const, from: -frame.leftOut, to: frame.leftOut } } : {}),
    toScale: true,
    legible: { length: usualRing(frame), sizes: 1 },
  };
}

/** The size of the ring that half of all rings do not come up to: its number has to be read. */
function usualRing({ parts, section }: BoxFrame): number {
  const sizes = parts.filter(({ part }) => part.number !== undefined).map(({ from, to }) => Math.min(section, to - from));
  return sizes.sort((a, b) => a - b)[Math.floor(sizes.length / 2)] ?? section;
}
