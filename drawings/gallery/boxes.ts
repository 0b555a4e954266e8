import type { Family } from "@ringwright/core/materials";
import { type Length, quantity } from "@ringwright/core/units";
import type { BoxDrawing, SetPart, Stated } from "../index.ts";

const mm = (value: number): Length => quantity("length", value, "mm");
const measured = (value: number): Stated => ({ value: mm(value), by: "measured" });
const worked = (value: number): Stated => ({ value: mm(value), by: "worked" });

/** Parts one after the other from a place, rings numbered on from `first`. */
function stack(first: number, from: number, ...heights: readonly (number | readonly [SetPart["kind"], number])[]): readonly SetPart[] {
  let at = from;
  let number = first;
  return heights.map((one): SetPart => {
    const [kind, height] = typeof one === "number" ? (["ring", one] as const) : one;
    const span = { kind, from: mm(at), to: mm(at + height) };
    at += height;
    return kind === "ring" || kind === "end-ring" ? { ...span, number: number++ } : span;
  });
}

/** A stock pump of an invented board mill: five rings, the lantern ring after the second. */
export const stockPump: BoxDrawing = {
  title: "Stock pump 2, coupling-side box",
  subtitle: "Sallowmere board mill, invented",
  shaft: measured(50),
  sleeve: { bore: measured(43) },
  bore: measured(75),
  depth: measured(92),
  family: "graphite",
  parts: [...stack(1, 0, 12.5, 12.5), ...stack(3, 41, 12.5, 12.5, 12.5)],
  lantern: { from: mm(25), to: mm(41), window: mm(11) },
  port: {
    fromThroat: measured(31),
    diameter: measured(6),
    flush: { value: quantity("pressure", 2.4, "bar"), by: "measured" },
    state: "open",
  },
  follower: { gap: worked(16.5), nose: measured(30) },
  studs: { diameter: mm(12), count: 2, left: measured(25) },
};

/** The same box after the gland has moved on: the lantern ring has left the port. */
export const stockPumpMoved: BoxDrawing = {
  ...stockPump,
  moved: { gland: mm(12), share: 0.4 },
  port: { ...(stockPump.port as NonNullable<BoxDrawing["port"]>), state: "part-closed" },
};

/** A valve stem: small, no sleeve, no flush, end rings of another family. */
export const valveStem: BoxDrawing = {
  title: "Steam isolating valve 14",
  subtitle: "Sallowmere board mill, invented",
  wetEnd: "product-side",
  shaft: measured(16),
  bore: measured(28),
  depth: measured(38),
  family: "graphite",
  parts: stack(1, 0, ["end-ring", 6], 6, 6, 6, ["end-ring", 6]).map((part) =>
    part.kind === "end-ring" ? { ...part, family: "acrylic" } : part,
  ),
  follower: { gap: measured(12), nose: worked(20), clearance: mm(0.3) },
  studs: { diameter: mm(10), count: 2 },
};

/** A large shaft with a small section, whose middle is left out; bush in the throat and spacer under the set. */
export const largeShaft: BoxDrawing = {
  title: "Agitator 3, vat side",
  shaft: worked(160),
  sleeve: {},
  bore: measured(192),
  depth: measured(140),
  family: "aramid",
  parts: stack(1, 0, ["spacer", 18], 16, 16, 16, 16, 16),
  throat: { gap: mm(0.8), bush: { wall: mm(6) } },
  follower: { gap: measured(30) },
  studs: { diameter: mm(16), count: 4, left: measured(30) },
};

/** One box in each family's weave. */
export const family = (of: Family): BoxDrawing => ({
  ...stockPump,
  title: `Weave: ${of}`,
  subtitle: "Sallowmere board mill, invented",
  family: of,
});
