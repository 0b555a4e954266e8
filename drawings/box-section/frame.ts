import { inUnit, type Length, quantity } from "@ringwright/core/units";
import type { BoxDrawing, SetPart } from "./input.ts";

/** Where everything of a box lies, in millimetres; x from the throat shoulder towards the gland, y from the centre line. */
export interface BoxFrame {
  /** Radius the rings run on. */
  readonly shaft: number;
  /** Radius of the bare shaft; the same without a sleeve. */
  readonly bare: number;
  readonly bore: number;
  readonly section: number;
  readonly depth: number;
  readonly parts: readonly PlacedPart[];
  readonly lantern?: { readonly from: number; readonly to: number; readonly land: number };
  /** Where the follower's nose begins. */
  readonly setEnd: number;
  /** Where the follower's flange begins. */
  readonly flange: number;
  readonly flangeEnd: number;
  readonly followerInside: number;
  readonly followerOutside: number;
  readonly flangeRadius: number;
  /** Outside of the box wall. */
  readonly wall: number;
  /** Where the casing is broken off at the wet end, and where the shaft is at either end. */
  readonly wallFrom: number;
  readonly shaftFrom: number;
  readonly shaftTo: number;
  readonly sleeveFrom: number;
  readonly sleeveTo: number;
  readonly throat: number;
  readonly bush?: { readonly wall: number };
  readonly port?: { readonly at: number; readonly radius: number };
  readonly stud?: Stud;
  /** Half of what is left out of the shaft, 0 when nothing is. */
  readonly leftOut: number;
}

export interface PlacedPart {
  readonly part: SetPart;
  readonly from: number;
  readonly to: number;
  /** Length before it was squeezed. */
  readonly relaxed: number;
}

export interface Stud {
  readonly radius: number;
  /** Of its axis from the centre line. */
  readonly at: number;
  /** From its end in the box wall to its free end. */
  readonly from: number;
  readonly to: number;
  readonly nutFrom: number;
  readonly nutTo: number;
  /** Where its thread on the gland side begins. */
  readonly threadFrom: number;
}

export const mm = (length: Length): number => inUnit("length", length, "mm");

/** How far the lantern ring and the gland have moved, mm. */
export function movement(box: BoxDrawing): { readonly gland: number; readonly lantern: number } {
  const gland = box.moved ? mm(box.moved.gland) : 0;
  return { gland, lantern: box.lantern ? gland * (box.moved?.share ?? 0) : 0 };
}

/**
 * The set after the gland has moved on: the packing between throat and lantern
 * ring gives up what the lantern ring moves, the packing behind it the rest,
 * each ring in proportion to its length; metal parts keep theirs.
 */
function squeezed(box: BoxDrawing): readonly PlacedPart[] {
  const { gland, lantern } = movement(box);
  const parts = [...box.parts].sort((a, b) => a.from - b.from);
  const split = box.lantern?.from ?? Number.NEGATIVE_INFINITY;
  const gives = ({ kind }: SetPart) => kind === "ring" || kind === "end-ring";
  const before = parts.filter((part) => part.from < split);
  const after = parts.filter((part) => part.from >= split);
  const place = (some: readonly SetPart[], start: number, end: number): readonly PlacedPart[] => {
    const soft = some.filter(gives).reduce((sum, { from, to }) => sum + mm(to) - mm(from), 0);
    const give = soft > 0 ? (end - start) / soft : 0;
    let shift = start;
    return some.map((part) => {
      const [from, to] = [mm(part.from), mm(part.to)];
      const squeeze = gives(part) ? (to - from) * give : 0;
      const placed = { part, from: from - shift, to: to - shift - squeeze, relaxed: to - from };
      shift += squeeze;
      return placed;
    });
  };
  // What lies nearer the throat moves less: 0 at the shoulder, the lantern's share at the lantern, all at the nose.
  return [...place(before, 0, lantern), ...place(after, lantern, gland)];
}

/** Works out where everything lies. Sizes that were not given follow drawing habit and scale with the section. */
export function frameOf(box: BoxDrawing): BoxFrame {
  const shaft = mm(box.shaft.value) / 2;
  const bore = mm(box.bore.value) / 2;
  const section = bore - shaft;
  const depth = mm(box.depth.value);
  const { gland, lantern: carried } = movement(box);
  const parts = squeezed(box);
  const lantern = box.lantern && {
    from: mm(box.lantern.from) - carried,
    to: mm(box.lantern.to) - carried,
    land: (mm(box.lantern.to) - mm(box.lantern.from) - mm(box.lantern.window)) / 2,
  };
  const setEnd = Math.max(0, ...box.parts.map(({ to }) => mm(to)), ...(box.lantern ? [mm(box.lantern.to)] : [])) - gland;
  const thread = box.studs ? mm(box.studs.diameter) : undefined;
  const gap =
    (box.follower?.gap
      ? mm(box.follower.gap.value)
      : (gapFromNose(box, depth - setEnd - gland) ?? Math.max(1.2 * section, setEnd + gland - depth + 0.4 * section))) - gland;
  const flange = depth + gap;
  const flangeEnd = flange + (box.follower?.flange ? mm(box.follower.flange) : Math.max(0.9 * section, thread ?? 0));
  const wall = bore + Math.max(1.55 * section, 2.3 * (thread ?? 0));
  const stub = 1.1 * section;
  const studAt = bore + (wall - bore) * 0.56;
  const port = box.port && { at: mm(box.port.fromThroat.value), radius: mm(box.port.diameter.value) / 2 };
  const stud = thread === undefined ? undefined : studOf(box, thread, studAt, depth, flangeEnd, port ? port.at + port.radius : 0, gland);
  const wallFrom = -1.15 * section;
  const sleeveTo = flangeEnd + 0.7 * section;
  const shaftTo = Math.max(sleeveTo, stud?.to ?? flangeEnd) + stub;
  const shaftFrom = wallFrom - stub;
  const clearance = box.follower?.clearance ? mm(box.follower.clearance) : 0.05 * section;
  const flangeRadius = thread === undefined ? wall - 0.1 * section : Math.max(studAt + 1.15 * thread, bore + 0.5 * section);
  const bare = box.sleeve ? (box.sleeve.bore ? mm(box.sleeve.bore.value) / 2 : shaft - Math.min(0.28 * section, 0.35 * shaft)) : shaft;
  return {
    shaft,
    bare,
    bore,
    section,
    depth,
    parts,
    ...(lantern ? { lantern } : {}),
    setEnd,
    flange,
    flangeEnd,
    followerInside: shaft + clearance,
    followerOutside: bore - Math.min(clearance, 0.05 * section),
    flangeRadius,
    wall,
    wallFrom,
    shaftFrom,
    shaftTo,
    sleeveFrom: wallFrom - 0.35 * stub,
    sleeveTo,
    throat: shaft + (box.throat?.gap ? mm(box.throat.gap) : 0.07 * section),
    ...(box.throat?.bush ? { bush: { wall: mm(box.throat.bush.wall) } } : {}),
    ...(port ? { port } : {}),
    ...(stud ? { stud } : {}),
    leftOut: leftOut(bare, Math.max(wall, flangeRadius), shaftTo - shaftFrom),
  };
}

/** The gap follows from the nose when the nose was measured and the gap was not. */
function gapFromNose(box: BoxDrawing, entry: number): number | undefined {
  return box.follower?.nose ? mm(box.follower.nose.value) - entry : undefined;
}

function studOf(box: BoxDrawing, thread: number, at: number, depth: number, flangeEnd: number, portEnd: number, gland: number): Stud {
  // A stud seldom lies in the plane of the port; where it would meet the port it is drawn shorter.
  const grip = Math.max(0, Math.min(1.6 * thread, depth - portEnd - 0.4 * thread));
  const nut = 0.8 * thread;
  const left = box.studs?.left ? mm(box.studs.left.value) - gland : 2 * thread;
  return {
    radius: thread / 2,
    at,
    from: depth - grip,
    // The stud stands where it is: as the follower goes in, more of it shows behind the nut.
    to: flangeEnd + gland + nut + 0.9 * thread,
    nutFrom: flangeEnd,
    nutTo: flangeEnd + nut,
    threadFrom: Math.max(flangeEnd - left, depth),
  };
}

/** A shaft that is much larger than its box is long would make a drawing of nothing but shaft; its middle is left out. */
function leftOut(bare: number, outside: number, length: number): number {
  if (2 * outside <= 1.05 * length) return 0;
  return Math.max(0, Math.min(outside - 0.4 * length, bare - 0.12 * length));
}

/** How far the gland of a box can be drawn as moved from finger-tight: until its flange meets the box or the thread ends, as they are drawn. */
export function roomToMove(box: BoxDrawing): Length {
  const { moved: _, ...rest } = box;
  const { flange, depth } = frameOf(rest);
  return quantity(
    "length",
    Math.max(0, Math.min(flange - depth, box.studs?.left ? mm(box.studs.left.value) : Number.POSITIVE_INFINITY)),
    "mm",
  );
}

/** Every part of the set where it lies once the gland has moved on, from the throat, in metres. */
export function partsWhenMoved(
  box: BoxDrawing,
): readonly { readonly kind: SetPart["kind"] | "lantern"; readonly number?: number; readonly from: Length; readonly to: Length }[] {
  const { parts, lantern } = frameOf(box);
  const at = (millimetres: number) => quantity("length", millimetres, "mm");
  return [
    ...parts.map(({ part: { kind, number }, from, to }) => ({
      kind,
      ...(number === undefined ? {} : { number }),
      from: at(from),
      to: at(to),
    })),
    ...(lantern ? [{ kind: "lantern" as const, from: at(lantern.from), to: at(lantern.to) }] : []),
  ].sort((one, other) => one.from - other.from);
}
