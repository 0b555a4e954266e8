import { families } from "@ringwright/core/materials";
import { type Length, quantity } from "@ringwright/core/units";
import fc, { type Arbitrary } from "fast-check";
import type { BoxDrawing, PortState, SetPart, Stated } from "../index.ts";

const states: readonly PortState[] = ["open", "part-closed", "shut"];

const mm = (value: number): Length => quantity("length", value, "mm");
const between = (min: number, max: number): Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Half of the sizes as a caliper reads them, half with every digit. */
const size = (min: number, max: number): Arbitrary<number> =>
  fc.oneof(
    between(min, max),
    between(min, max).map((value) => Math.max(min, Math.round(value * 10) / 10)),
  );
const stated = (value: number, measured: boolean): Stated => ({ value: mm(value), by: measured ? "measured" : "worked" });

/** Boxes over the whole range that a fitter meets: shaft 8 to 400 mm, section 3 to 25 mm, 2 to 12 rings, with and without everything else. */
export const randomBox: Arbitrary<BoxDrawing> = fc
  .record({
    shaft: size(8, 400),
    section: size(3, 25),
    heights: fc.array(between(0.8, 1.1), { minLength: 2, maxLength: 12 }),
    before: fc.nat(11),
    ends: fc.constantFrom("rings", "end-rings", "spacer", "bush"),
    lantern: fc.option(fc.record({ width: between(0.8, 2.2), window: between(0.3, 0.85) })),
    port: fc.option(
      fc.record({
        offset: between(-0.3, 0.3),
        diameter: between(0.2, 0.6),
        flush: fc.option(between(0, 25e5)),
        state: fc.option(fc.constantFrom(...states)),
      }),
    ),
    sleeve: fc.constantFrom("none", "bare", "measured"),
    entry: between(0.4, 2),
    gap: between(0.4, 2.5),
    nose: fc.boolean(),
    thread: fc.option(between(0.4, 1.6)),
    left: fc.boolean(),
    bush: fc.boolean(),
    family: fc.constantFrom(...families),
    wetEnd: fc.constantFrom("pump-side" as const, "product-side" as const),
    moved: fc.option(between(0, 0.9)),
    measured: fc.boolean(),
    title: fc.constantFrom(
      "Pump",
      "Stock pump 2, coupling-side box",
      "Condensate extraction pump 1017-B, drive end, upper floor of the boiler house",
    ),
  })
  .map(({ section, heights, measured, ...wish }): BoxDrawing => {
    const parts: SetPart[] = [];
    let at = 0;
    const add = (kind: SetPart["kind"], height: number, number?: number) => {
      parts.push({ kind, from: mm(at), to: mm(at + height), ...(number === undefined ? {} : { number }) });
      at += height;
    };
    if (wish.ends === "spacer" || wish.ends === "bush") add(wish.ends, 0.7 * section);
    let lantern: BoxDrawing["lantern"];
    const behind = wish.before % heights.length;
    for (const [i, height] of heights.entries()) {
      const end = wish.ends === "end-rings" && (i === 0 || i + 1 === heights.length);
      add(end ? "end-ring" : "ring", (end ? 0.35 : height) * section, i + 1);
      if (wish.lantern && i === behind && i + 1 < heights.length) {
        const width = wish.lantern.width * section;
        lantern = { from: mm(at), to: mm(at + width), window: mm(width * wish.lantern.window) };
        at += width;
      }
    }
    const depth = at + wish.entry * section;
    const gap = wish.gap * section;
    const soft = parts.filter(({ kind }) => kind.endsWith("ring")).reduce((sum, { from, to }) => sum + (to - from) * 1000, 0);
    const softBefore = lantern
      ? parts
          .filter(({ kind, from }) => kind.endsWith("ring") && from < (lantern?.from ?? 0))
          .reduce((sum, { from, to }) => sum + (to - from) * 1000, 0)
      : 0;
    const centre = lantern ? (lantern.from + lantern.to) * 500 : depth / 2;
    const port = wish.port && {
      fromThroat: stated(Math.min(depth - 0.4 * section, Math.max(0.4 * section, centre + wish.port.offset * section)), measured),
      diameter: stated(wish.port.diameter * section, true),
      ...(wish.port.flush === null ? {} : { flush: { value: quantity("pressure", wish.port.flush, "Pa"), by: "measured" as const } }),
      ...(wish.port.state === null ? {} : { state: wish.port.state }),
    };
    return {
      title: wish.title,
      subtitle: "invented",
      wetEnd: wish.wetEnd,
      shaft: stated(wish.shaft, measured),
      ...(wish.sleeve === "none" ? {} : { sleeve: wish.sleeve === "bare" ? {} : { bore: stated(0.85 * wish.shaft, true) } }),
      bore: stated(wish.shaft + 2 * section, true),
      depth: stated(depth, measured),
      family: wish.family,
      parts,
      ...(lantern ? { lantern } : {}),
      ...(port ? { port } : {}),
      ...(wish.bush ? { throat: { bush: { wall: mm(0.3 * section) } } } : {}),
      follower: wish.nose ? { nose: stated(gap + wish.entry * section, true), gap: stated(gap, false) } : { gap: stated(gap, measured) },
      ...(wish.thread === null
        ? {}
        : {
            studs: {
              diameter: mm(wish.thread * section),
              count: 2,
              ...(wish.left ? { left: stated(2 * wish.thread * section, true) } : {}),
            },
          }),
      ...(wish.moved === null
        ? {}
        : {
            moved: {
              gland: mm(Math.min(gap, 0.4 * soft, wish.thread !== null && wish.left ? 2 * wish.thread * section : gap) * wish.moved),
              share: soft > 0 ? softBefore / soft : 0,
            },
          }),
    };
  });
