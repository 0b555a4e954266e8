import { isStem } from "../box/index.ts";
import { type LanternTrack, lanternTrack } from "../lantern/index.ts";
import type { StyleFacts } from "../materials/index.ts";
import { type Coil, coil, type LanternSurvey, type RingCut, type RingSet, ringCut, ringSet, type Seating } from "../rings/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import type { Filling, Uncertain } from "../workings/index.ts";
import { hasLantern, type MeasuredBox } from "./measure.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Survey } from "./survey.ts";

/** The rings: how they lie, how long to cut them, how much coil they take. */
export interface RingsPlan {
  readonly set: Part<RingSet>;
  readonly cut: Part<RingCut>;
  readonly coil: Part<Coil>;
  /** Where the lantern ring goes as the gland is pulled up. */
  readonly track: Part<LanternTrack> | undefined;
}

/** Lays out the set and works out the cuts. */
export function ringsOf(
  survey: Survey,
  box: MeasuredBox,
  style: StyleFacts | undefined,
  pressure: GaugePressure | undefined,
  facts: PlanFacts,
): RingsPlan {
  const { motion, port = {}, follower = {}, studs = {}, set: asked = {}, service = {} } = survey;
  const shaft = answerOf(box.shaft)?.mean;
  const bore = answerOf(box.bore)?.mean;
  const depth = answerOf(box.depth)?.mean.mean;
  const section = box.stock;
  const set = when({ section: section ?? (shaft && bore ? shaft.mean : undefined) }, () => {
    const given: GivenTo<typeof ringSet> = { motion, lantern: lanternOf(survey) };
    if (shaft !== undefined) given.shaft = shaft.mean;
    if (bore !== undefined) given.bore = bore.mean;
    if (section !== undefined) given.section = section;
    if (depth !== undefined) given.depth = depth;
    if (asked.rings !== undefined) given.rings = asked.rings;
    if (asked.endRings !== undefined) given.endRings = asked.endRings;
    if (asked.spacer !== undefined) given.spacer = asked.spacer;
    if (asked.throatBush !== undefined) given.throatBush = asked.throatBush;
    const seating = seatingOf(survey, style);
    if (seating !== undefined) given.seating = seating;
    if (port.fromThroat !== undefined) given.portFromThroat = port.fromThroat;
    if (port.fromFace !== undefined) given.portFromFace = port.fromFace;
    if (port.diameter !== undefined) given.portDiameter = port.diameter;
    if (follower.nose !== undefined) given.noseLength = follower.nose;
    if (follower.gap !== undefined) given.glandGap = follower.gap;
    if (studs.threadLeft !== undefined) given.threadLeft = studs.threadLeft;
    if (pressure !== undefined) given.pressure = pressure;
    if (service.stroke !== undefined) given.stroke = service.stroke;
    return ringSet(given, facts.rings);
  });
  const cut = asked.cut ?? (isStem(motion) ? "skive" : "butt");
  const rings = answerOf(set)?.rings.length;
  const space = shaft && bore ? { shaft, bore } : undefined;
  const across = (known: { readonly shaft: Uncertain<Length>; readonly bore: Uncertain<Length> }) => {
    const given: GivenTo<typeof ringCut> = {
      shaft: known.shaft.mean,
      bore: known.bore.mean,
      shaftUncertainty: known.shaft.u,
      boreUncertainty: known.bore.u,
      cut,
    };
    if (asked.angle !== undefined) given.angle = asked.angle;
    return given;
  };
  return {
    set,
    cut: when({ shaft: space }, (known) => {
      const given = across(known.shaft);
      if (style !== undefined) given.family = style.family;
      return ringCut(given, facts.rings);
    }),
    coil: when({ shaft: space, "set.rings": rings }, (known) => {
      const given: GivenTo<typeof coil> = { rings: known["set.rings"], ...across(known.shaft) };
      return coil(given);
    }),
    track: trackOf(survey, answerOf(set), depth),
  };
}

function lanternOf(survey: Survey): LanternSurvey {
  const { width, window, land, ringsThroatSide } = survey.lantern ?? {};
  const lantern: Filling<LanternSurvey> = { wanted: hasLantern(survey) };
  if (width !== undefined) lantern.width = width;
  if (window !== undefined) lantern.window = window;
  if (land !== undefined) lantern.land = land;
  if (ringsThroatSide !== undefined) lantern.ringsThroatSide = ringsThroatSide;
  return lantern;
}

/** Follows the lantern ring of the set over the whole gland gap. */
function trackOf({ port = {} }: Survey, set: RingSet | undefined, depth: Length | undefined): Part<LanternTrack> | undefined {
  const { lantern } = set ?? {};
  if (!set || !lantern) return undefined;
  const fromThroat =
    port.fromThroat ?? (depth === undefined || port.fromFace === undefined ? undefined : ((depth - port.fromFace) as Length));
  const belowRings = set.rings[0]?.from ?? (0 as Length);
  return when({ "port.fromFace": fromThroat, "port.diameter": port.diameter, "follower.nose": set.glandGap }, (known) => {
    const given: GivenTo<typeof lanternTrack> = {
      ringsThroatSide: lantern.afterRing,
      ringsGlandSide: set.rings.length - lantern.afterRing,
      ringHeight: set.ringHeight.mean,
      lanternWidth: lantern.width,
      window: lantern.window,
      portFromThroat: known["port.fromFace"],
      portDiameter: known["port.diameter"],
      gapTravel: known["follower.nose"],
    };
    if (belowRings > 0) given.belowRings = belowRings;
    return lanternTrack(given);
  });
}

/** How hard the rings are brought home: as the survey says, else as the packing asks. */
const manners = {
  "ptfe-light": "light",
  "graphite-yarn-light": "light",
  "graphite-braid": "firm",
  "other-fibre-firm": "firm",
  "stem-full-load": "full",
} as const;

function seatingOf({ motion, hazards = {} }: Survey, style: StyleFacts | undefined): Seating | undefined {
  const { seating } = hazards;
  if (seating === "light" || seating === "firm") return seating;
  if (seating === "full-load" || isStem(motion)) return "full";
  return style?.seating === undefined ? undefined : manners[style.seating];
}
