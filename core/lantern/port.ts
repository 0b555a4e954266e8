import type { Length } from "../units/index.ts";
import { notWithin, type Range, type Refused, refuse, rule, type Workings } from "../workings/index.ts";

/** A lantern ring in its set, and the flush port that it should stay under. Distances run from the throat towards the gland. */
export interface LanternAndPort {
  readonly ringsThroatSide: number;
  readonly ringsGlandSide: number;
  /** Height of one ring, seated, at finger-tight. */
  readonly ringHeight: Length;
  readonly lanternWidth: Length;
  /** Opening of the lantern ring between its two lands. */
  readonly window: Length;
  /** From the throat to the middle of the port. */
  readonly portFromThroat: Length;
  readonly portDiameter: Length;
  /** Bush or spacer between the throat and ring 1; none when left out. */
  readonly belowRings?: Length;
}

const offsetRule = rule({
  id: "lantern-offset",
  symbol: "o",
  expression: "b + n_t · h + w / 2 − x",
  unit: "m",
  inputs: [
    { symbol: "b", name: "belowRings", unit: "m" },
    { symbol: "n_t", name: "ringsThroatSide", unit: "1" },
    { symbol: "h", name: "ringHeight", unit: "m" },
    { symbol: "w", name: "lanternWidth", unit: "m" },
    { symbol: "x", name: "portFromThroat", unit: "m" },
  ],
  citation: { source: "geometry", at: "middle of the lantern ring less middle of the port; positive towards the gland" },
});

const openReachRule = rule({
  id: "lantern-open-reach",
  symbol: "a",
  expression: "(j − p) / 2",
  unit: "m",
  inputs: [
    { symbol: "j", name: "window", unit: "m" },
    { symbol: "p", name: "portDiameter", unit: "m" },
  ],
  citation: { source: "geometry", at: "a port of width p lies wholly in a window of width j" },
});

const shutReachRule = rule({
  id: "lantern-shut-reach",
  symbol: "c",
  expression: "(j + p) / 2",
  unit: "m",
  inputs: openReachRule.inputs,
  citation: { source: "geometry", at: "a port of width p lies wholly beside a window of width j" },
});

/** How far the lantern ring may be off the port, and how far off it is at finger-tight. */
export interface Reach {
  readonly offset: Length;
  /** The port is open while the offset is no more than this either way; negative when the port is wider than the window. */
  readonly open: Length;
  /** The port is shut from this offset on. */
  readonly shut: Length;
}

const counts: Range = { min: 0, max: 100 };
const sizes: Range = { min: Number.MIN_VALUE, max: 1 };
const depths: Range = { min: 0, max: 10 };

export function refusePort(given: LanternAndPort): Refused | undefined {
  return (
    notWithin("ringsThroatSide", given.ringsThroatSide, counts, "1") ??
    notWithin("ringsGlandSide", given.ringsGlandSide, counts, "1") ??
    notWithin("ringHeight", given.ringHeight, sizes, "m") ??
    notWithin("lanternWidth", given.lanternWidth, sizes, "m") ??
    notWithin("window", given.window, sizes, "m") ??
    notWithin("portFromThroat", given.portFromThroat, depths, "m") ??
    notWithin("portDiameter", given.portDiameter, sizes, "m") ??
    notWithin("belowRings", given.belowRings ?? 0, depths, "m") ??
    refuseWindow(given)
  );
}

function refuseWindow({ window, lanternWidth }: LanternAndPort): Refused | undefined {
  if (window <= lanternWidth) return undefined;
  return refuse({
    kind: "impossible",
    input: "window",
    given: window,
    allowed: { min: 0, max: lanternWidth, unit: "m" },
    says: { id: "lantern-window-wider-than-ring", with: { window: length(window), width: length(lanternWidth) } },
  });
}

/** The offset without workings, for comparing places. */
export function offsetOf(
  given: Pick<LanternAndPort, "ringsThroatSide" | "ringHeight" | "lanternWidth" | "portFromThroat" | "belowRings">,
): Length {
  return ((given.belowRings ?? 0) + given.ringsThroatSide * given.ringHeight + given.lanternWidth / 2 - given.portFromThroat) as Length;
}

export function stepOffset(work: Workings, given: LanternAndPort): Length {
  const { ringsThroatSide, ringHeight, lanternWidth, portFromThroat, belowRings = 0 } = given;
  return work.step(offsetRule, [belowRings, ringsThroatSide, ringHeight, lanternWidth, portFromThroat], offsetOf(given));
}

/** How far off the port the lantern ring may be, without workings. */
export function reachOf({ window, portDiameter }: Pick<LanternAndPort, "window" | "portDiameter">): Pick<Reach, "open" | "shut"> {
  return { open: ((window - portDiameter) / 2) as Length, shut: ((window + portDiameter) / 2) as Length };
}

export function reach(work: Workings, given: LanternAndPort): Reach {
  const { window, portDiameter } = given;
  const { open, shut } = reachOf(given);
  return {
    offset: stepOffset(work, given),
    open: work.step(openReachRule, [window, portDiameter], open),
    shut: work.step(shutReachRule, [window, portDiameter], shut),
  };
}

/** Whether a port is open, part closed or shut at some offset of the lantern ring. */
export const openings = ["open", "part-closed", "shut"] as const;
export type Opening = (typeof openings)[number];

export function openingAt(offset: number, { open, shut }: Pick<Reach, "open" | "shut">): Opening {
  const off = Math.abs(offset);
  if (off <= open) return "open";
  return off < shut ? "part-closed" : "shut";
}

/** A length as a sentence shows it, in millimetres to one decimal. */
export function length(value: number): { value: number; kind: string; decimals: number } {
  return { value, kind: "length", decimals: 1 };
}
