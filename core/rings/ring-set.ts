import type { LanternLimit } from "../lantern/index.ts";
import type { Length } from "../units/index.ts";
import { type Answer, type Band, begin, type Refused, refuse, rule, type Uncertain, uncertain, type Workings } from "../workings/index.ts";
import { entryOf, judgeEntry, noseGap, stepEntry } from "./entry.ts";
import type { Opinion, RingFacts } from "./facts.ts";
import { jointHours, usualStep } from "./joints.ts";
import { type LanternPlaced, placeLantern, type SetAround, spacerToPort } from "./lantern-in-set.ts";
import { refuseLantern, surveyLantern } from "./lantern-survey.ts";
import { isMissed, warnMotion } from "./motion-notes.ts";
import { countRings } from "./ring-count.ts";
import { type RingHeight, refuseLosses, ringHeight } from "./ring-height.ts";
import { length } from "./ring-section.ts";
import { type Part, stackUp } from "./stack.ts";
import { measured, type RingSetQuestion, refuseSurvey } from "./survey.ts";
import { type Binding, gapLimits, leastLimit, type TravelLimit } from "./travel.ts";

/** The lantern ring in its place. */
export interface LanternInSet {
  readonly afterRing: number;
  readonly from: Length;
  readonly to: Length;
  readonly centre: Length;
  readonly width: Length;
  readonly window: Length;
  readonly limit?: LanternLimit | undefined;
}

export interface RingSet {
  /** From the throat to the gland. */
  readonly rings: readonly Part[];
  /** Rings with bush, spacer and lantern ring between them, from the throat to the gland. */
  readonly parts: readonly Part[];
  readonly section: Length;
  readonly ringHeight: Uncertain<Length>;
  /** Height of the whole set, bush and spacer in it. */
  readonly setHeight: Length;
  /** How many rings would go in; none when the depth is not known. */
  readonly fit?: number | undefined;
  readonly spacer?: Length | undefined;
  readonly lantern?: LanternInSet | undefined;
  /** Follower in the box at finger-tight. */
  readonly entry?: Uncertain<Length> | undefined;
  readonly entryBand?: Band<Length> | undefined;
  /** Follower flange to box face at finger-tight. */
  readonly glandGap?: Length | undefined;
  readonly travel?: Length | undefined;
  readonly binding?: Binding | undefined;
  readonly limits: readonly TravelLimit[];
  readonly joints: readonly number[];
  readonly depthInSections?: number | undefined;
  readonly opinions: readonly Opinion[];
  /** Inputs that the set rests on, and those that were not known. */
  readonly restsOn: readonly string[];
  readonly notKnown: readonly string[];
}

const depthRule = rule({
  id: "depth-in-sections",
  symbol: "B/s",
  expression: "B / s",
  unit: "1",
  inputs: [
    { symbol: "B", name: "depth", unit: "m" },
    { symbol: "s", name: "section", unit: "m" },
  ],
  citation: { source: "neale-1995", at: "fig. 25.11: 7 sections with lantern ring on a turning shaft" },
});

const centreRule = rule({
  id: "lantern-centre",
  symbol: "z_l",
  expression: "z + w / 2",
  unit: "m",
  inputs: [
    { symbol: "z", name: "part-from", unit: "m" },
    { symbol: "w", name: "lanternWidth", unit: "m" },
  ],
  citation: { source: "geometry", at: "middle of the lantern ring" },
});

/**
 * The ring set of a box, from whatever a fitter could measure: rings from the
 * throat to the gland with their heights, depths and joints, lantern ring,
 * spacer, entry, and the travel that is left with what ends it.
 *
 *   n = ⌊(B − b − w − e) / h_max⌋,  h = s · (1 − ε)
 *   E = B − b − p − n · h − w;  travel = least of gland gap, nose, thread and lantern limit
 *
 * What is not known is taken from practice or left open, and named.
 *
 * Units: lengths m; joints clock hours; losses parts of the height.
 * Range: section above 0 to 1 m, or a bore above the shaft; depth above 0 to 10 m; rings 1 to 40; refused outside, and where not one ring fits, the settled rings cannot fit, or the port lies outside the box. Flagged: fewer or more rings than practice, a follower that does not enter or reach, a port no lantern ring reaches, a stack longer than the stroke.
 * Source: counts, seating and entry from the facts with their sources (MIL-P-18472G, API 610, FSA 2016, Mackay 2004, common practice); the rest geometry.
 * @example ringSet({ motion: "turning", shaft: quantity("length", 50, "mm"), bore: quantity("length", 75, "mm"), depth: quantity("length", 92, "mm") }, facts)
 */
export function ringSet(given: RingSetQuestion, facts: RingFacts): Answer<RingSet> {
  const refused = refuseSurvey(given) ?? refuseLosses(given) ?? refuseLantern(given);
  if (refused) return refused;
  const work = begin();
  const height = ringHeight(work, given, facts);
  const lantern = surveyLantern(work, given, height.section);
  const width = lantern?.width ?? (0 as Length);
  const count = countRings(work, given, height, width, facts);
  if ("ok" in count) return count;

  const { rings } = count;
  const below = given.lantern?.ringsThroatSide;
  if (lantern && below !== undefined && below > rings) return refuseBelow(below, rings);
  const throatBush = given.throatBush ?? (0 as Length);
  const leftBy = (spacer: number) => entryOf(given, throatBush + spacer + width + rings * height.height);
  const around = (spacer: Length): SetAround => {
    const gap = given.glandGap ?? noseGap(given, leftBy(spacer));
    return {
      rings,
      height,
      belowRings: (throatBush + spacer) as Length,
      glandGap: gap,
      gapWorkedOut: given.glandGap === undefined,
      travel: least(gap, given.threadLeft),
    };
  };
  const spacer = lantern && count.deep ? spacerToPort(work, lantern, around, throatBush, count.spacer) : count.spacer;
  if (count.deep) {
    const shown = { rings, fit: count.fit ?? rings, spacer: length(spacer, 0) };
    work.warn({ kind: "note", input: "depth", says: { id: "rings-spacer", with: shown } });
  }
  const placed = lantern && placeLantern(work, lantern, around(spacer), below);
  if (placed && "ok" in placed) return placed;

  const joints = jointHours(work, rings, given.firstJoint ?? 12, given.jointStep ?? usualStep(work));
  const parts = stackUp(work, {
    throatBush,
    spacer,
    rings,
    ringHeight: height.height,
    lantern: placed && { width: placed.width, afterRing: placed.ringsThroatSide },
    endRings: given.endRings ?? "none",
    joints,
    depth: given.depth,
  });
  return work.found(close(work, given, { parts, height, joints, placed, fit: count.fit, spacer, facts }));
}

const lanternParts = [
  ["width", "lantern.width"],
  ["window", "lantern.window"],
  ["land", "lantern.land"],
] as const;

interface Laid {
  readonly parts: readonly Part[];
  readonly height: RingHeight;
  readonly joints: readonly number[];
  readonly placed: LanternPlaced | undefined;
  readonly fit: number | undefined;
  readonly spacer: Length;
  readonly facts: RingFacts;
}

/** Entry, travel and what is said about the set once its parts are laid. */
function close(work: Workings, given: RingSetQuestion, laid: Laid): RingSet {
  const { parts, height, placed, fit, spacer, facts } = laid;
  const rings = parts.filter((part) => part.number !== undefined);
  const setHeight = parts[parts.length - 1]?.to ?? (0 as Length);
  const { entry, entryBand } = stepEntry(work, given, setHeight, rings.length, height);
  const stops = gapLimits(work, given, entry?.mean);
  const gap = given.glandGap ?? noseGap(given, entry?.mean);
  if (placed?.limit) stops.push(...lanternStop(placed.limit, gap));
  const stop = leastLimit(work, stops);
  if (entry && entryBand) judgeEntry(work, entry.mean, entryBand.low, facts, given);
  warnMotion(work, given, (rings.length * height.height) as Length, facts);
  const restsOn: string[] = [];
  const notKnown: string[] = [];
  for (const name of measured) {
    if (given[name] !== undefined) restsOn.push(name);
    else if (isMissed(name, given)) notKnown.push(name);
  }
  for (const [name, path] of lanternParts) if (given.lantern?.[name] !== undefined) restsOn.push(path);
  return {
    rings,
    parts,
    section: height.section,
    ringHeight: uncertain(height.height, height.uncertainty),
    setHeight,
    fit,
    spacer: spacer > 0 ? spacer : undefined,
    lantern: placed && lanternInSet(work, parts, placed),
    entry,
    entryBand,
    glandGap: gap,
    travel: stop?.travel,
    binding: stop?.by,
    limits: stops,
    joints: laid.joints,
    depthInSections:
      given.depth === undefined ? undefined : work.step(depthRule, [given.depth, height.section], given.depth / height.section),
    opinions: facts.counts.get(given.motion)?.opinions ?? [],
    restsOn,
    notKnown,
  };
}

function least(one: Length | undefined, other: Length | undefined): Length | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return one < other ? one : other;
}

function refuseBelow(below: number, rings: number): Refused {
  return refuse({
    kind: "impossible",
    input: "lantern.ringsThroatSide",
    given: below,
    allowed: { min: 0, max: rings },
    says: { id: "rings-below-more-than-all", with: { rings } },
  });
}

/** The lantern ring stops the gland at the repack gap, or at the careful end of its movement where no gap is known. */
function lanternStop({ limits, repackGap, carefulMovement }: LanternLimit, gap: Length | undefined): TravelLimit[] {
  if (!limits || carefulMovement === undefined) return [];
  const travel = repackGap === undefined || gap === undefined ? carefulMovement : Math.max(0, gap - repackGap);
  return [{ by: "lantern", travel: travel as Length }];
}

function lanternInSet(
  work: Workings,
  parts: readonly Part[],
  { width, window, ringsThroatSide, limit }: LanternPlaced,
): LanternInSet | undefined {
  const part = parts.find(({ kind }) => kind === "lantern");
  if (!part) return undefined;
  const centre = work.step(centreRule, [part.from, width], (part.from + width / 2) as Length);
  return { afterRing: ringsThroatSide, from: part.from, to: part.to, centre, width, window, limit };
}
