import { isStem } from "../box/index.ts";
import type { Length } from "../units/index.ts";
import { type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import { length } from "./ring-section.ts";
import type { RingSetQuestion } from "./survey.ts";

/** A lantern ring to be placed, with what had to be taken for granted filled in. */
export interface LanternToPlace {
  readonly width: Length;
  readonly window: Length;
  readonly port?: { readonly fromThroat: Length; readonly diameter: Length } | undefined;
}

const widthTaken = rule({
  id: "lantern-width-taken",
  symbol: "w",
  name: "lanternWidth",
  expression: "max(1.5 · s, j · 4 / 3)",
  unit: "m",
  inputs: [
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "j", name: "window", unit: "m" },
  ],
  citation: { source: "own-proposal", at: "1.25 to 2 sections; Neale's 7 sections with lantern ring less 5 without leave 2" },
});

const landTaken = rule({
  id: "lantern-land-taken",
  symbol: "l",
  name: "land",
  expression: "w / 8",
  unit: "m",
  inputs: [{ symbol: "w", name: "lanternWidth", unit: "m" }],
  citation: { source: "own-proposal", at: "each land" },
});

const windowRule = rule({
  id: "lantern-window",
  symbol: "j",
  name: "window",
  expression: "w − 2 · l",
  unit: "m",
  inputs: [
    { symbol: "w", name: "lanternWidth", unit: "m" },
    { symbol: "l", name: "land", unit: "m" },
  ],
  citation: { source: "geometry", at: "width less both lands" },
});

const portRule = rule({
  id: "port-from-throat",
  symbol: "x",
  name: "portFromThroat",
  expression: "B − x_f",
  unit: "m",
  inputs: [
    { symbol: "B", name: "depth", unit: "m" },
    { symbol: "x_f", name: "portFromFace", unit: "m" },
  ],
  citation: { source: "geometry", at: "box face to throat less box face to port" },
});

const portDiameterTaken = rule({
  id: "port-diameter-taken",
  symbol: "p",
  name: "portDiameter",
  expression: "",
  unit: "m",
  inputs: [],
  citation: { source: "own-proposal", at: "port not measured" },
  assumed: { min: 0.004, max: 0.012 },
});

/** Whether the set gets a lantern ring: as wished; else with one at hand or a port found, but not on a stem. */
export function wantsLantern({ motion, lantern, portFromThroat, portFromFace, portDiameter }: RingSetQuestion): boolean {
  if (lantern?.wanted !== undefined) return lantern.wanted;
  if (lantern?.width !== undefined) return true;
  return (
    !isStem(motion) && (lantern !== undefined || portFromThroat !== undefined || portFromFace !== undefined || portDiameter !== undefined)
  );
}

/** Refuses a lantern ring whose parts do not add up, and a port outside the box. */
export function refuseLantern({ lantern, depth, portFromFace, portFromThroat }: RingSetQuestion): Refused | undefined {
  const { width, window, land } = lantern ?? {};
  if (width !== undefined && (window ?? 0) > width) {
    return refuse({
      kind: "impossible",
      input: "lantern.window",
      given: window ?? 0,
      allowed: { max: width, unit: "m" },
      says: { id: "lantern-window-wider-than-ring", with: { window: length(window ?? 0), width: length(width) } },
    });
  }
  if (width !== undefined && window === undefined && land !== undefined && 2 * land >= width) {
    return refuse({
      kind: "impossible",
      input: "lantern.land",
      given: land,
      allowed: { max: width / 2, unit: "m" },
      says: { id: "rings-lands-fill-lantern", with: { land: length(land), width: length(width) } },
    });
  }
  const outsideBox = (
    [
      ["portFromFace", portFromFace],
      ["portFromThroat", portFromThroat],
    ] as const
  ).find(([, place]) => depth !== undefined && place !== undefined && place > depth);
  if (!outsideBox || depth === undefined) return undefined;
  return refuse({
    kind: "impossible",
    input: outsideBox[0],
    given: outsideBox[1] ?? 0,
    allowed: { min: 0, max: depth, unit: "m" },
    says: { id: "rings-port-outside-box", with: { depth: length(depth) } },
  });
}

/** The lantern ring and its port, measured or taken; what is taken is named. */
export function surveyLantern(work: Workings, given: RingSetQuestion, section: Length): LanternToPlace | undefined {
  if (!wantsLantern(given)) return undefined;
  const { lantern = {} } = given;
  const seen = lantern.window ?? 0;
  const width = lantern.width ?? work.step(widthTaken, [section, seen], Math.max(1.5 * section, (seen * 4) / 3) as Length);
  if (lantern.width === undefined) {
    work.warn({ kind: "gap", input: "lantern.width", says: { id: "rings-gap-lantern-width", with: { width: length(width) } } });
  }
  return { width, window: windowOf(work, given, width), port: portOf(work, given) };
}

function windowOf(work: Workings, { lantern = {} }: RingSetQuestion, width: Length): Length {
  if (lantern.window !== undefined) return lantern.window;
  const land = lantern.land ?? work.step(landTaken, [width], (width / 8) as Length);
  if (lantern.land === undefined) {
    work.warn({ kind: "gap", input: "lantern.window", says: { id: "rings-gap-lantern-window", with: { land: length(land) } } });
  }
  return work.step(windowRule, [width, land], Math.max(0, width - 2 * land) as Length);
}

function portOf(work: Workings, given: RingSetQuestion): LanternToPlace["port"] {
  const { depth, portFromFace, portFromThroat } = given;
  const seen = portFromFace === undefined || depth === undefined ? undefined : ((depth - portFromFace) as Length);
  const fromThroat = portFromThroat ?? (seen === undefined ? undefined : work.step(portRule, [depth ?? 0, portFromFace ?? 0], seen));
  if (fromThroat === undefined) {
    work.warn({ kind: "gap", input: "portFromThroat", says: { id: "rings-gap-port" } });
    return undefined;
  }
  if (portFromThroat !== undefined && seen !== undefined && Math.abs(portFromThroat - seen) > 0.002) {
    work.warn({
      kind: "slip",
      input: "portFromThroat",
      given: portFromThroat,
      suggestion: seen,
      says: { id: "rings-port-two-places", with: { throat: length(portFromThroat), face: length(seen) } },
    });
  }
  const diameter = given.portDiameter ?? work.assume(portDiameterTaken, 0.006 as Length);
  if (given.portDiameter === undefined) {
    work.warn({ kind: "gap", input: "portDiameter", says: { id: "rings-gap-port-diameter", with: { diameter: length(diameter) } } });
  }
  return { fromThroat, diameter };
}
