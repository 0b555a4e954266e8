import { isStem } from "../box/index.ts";
import { type LanternTrack, lanternTrack } from "../lantern/index.ts";
import type { StyleFacts } from "../materials/index.ts";
import { type Coil, coil, type RingCut, type RingSet, ringCut, ringSet } from "../rings/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import { pick } from "./choose.ts";
import { hasLantern, type MeasuredBox } from "./measure.ts";
import { answerOf, type Part, when } from "./part.ts";
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
  const set = when({ section: section ?? (shaft && bore ? shaft.mean : undefined) }, () =>
    ringSet(
      {
        motion,
        ...(shaft === undefined ? {} : { shaft: shaft.mean }),
        ...(bore === undefined ? {} : { bore: bore.mean }),
        ...(section === undefined ? {} : { section }),
        ...(depth === undefined ? {} : { depth }),
        ...pick(asked, ["rings", "endRings", "spacer", "throatBush"]),
        ...seatingOf(survey, style),
        lantern: { ...pick(survey.lantern ?? {}, ["width", "window", "land", "ringsThroatSide"]), wanted: hasLantern(survey) },
        ...(port.fromThroat === undefined ? {} : { portFromThroat: port.fromThroat }),
        ...(port.fromFace === undefined ? {} : { portFromFace: port.fromFace }),
        ...(port.diameter === undefined ? {} : { portDiameter: port.diameter }),
        ...(follower.nose === undefined ? {} : { noseLength: follower.nose }),
        ...(follower.gap === undefined ? {} : { glandGap: follower.gap }),
        ...(studs.threadLeft === undefined ? {} : { threadLeft: studs.threadLeft }),
        ...(pressure === undefined ? {} : { pressure }),
        ...(service.stroke === undefined ? {} : { stroke: service.stroke }),
      },
      facts.rings,
    ),
  );
  const cut = asked.cut ?? (isStem(motion) ? "skive" : "butt");
  const strip = when({ shaft, bore }, (known) => ({ ok: true as const, value: known, workings: [], warnings: [] }));
  const given = answerOf(strip);
  const rings = answerOf(set)?.rings.length;
  const angle = asked.angle === undefined ? {} : { angle: asked.angle };
  const space = given && {
    shaft: given.shaft.mean,
    bore: given.bore.mean,
    shaftUncertainty: given.shaft.u,
    boreUncertainty: given.bore.u,
    cut,
    ...angle,
  };
  return {
    set,
    cut: when({ shaft: space }, (known) => ringCut({ ...known.shaft, ...familyForGap(style) }, facts.rings)),
    coil: when({ shaft: space, "set.rings": rings }, (known) => coil({ ...known.shaft, rings: known["set.rings"] })),
    track: trackOf(survey, answerOf(set), depth),
  };
}

/** Follows the lantern ring of the set over the whole gland gap. */
function trackOf({ port = {} }: Survey, set: RingSet | undefined, depth: Length | undefined): Part<LanternTrack> | undefined {
  const { lantern } = set ?? {};
  if (!set || !lantern) return undefined;
  const fromThroat =
    port.fromThroat ?? (depth === undefined || port.fromFace === undefined ? undefined : ((depth - port.fromFace) as Length));
  const belowRings = set.rings[0]?.from ?? (0 as Length);
  return when({ "port.fromFace": fromThroat, "port.diameter": port.diameter, "follower.nose": set.glandGap }, (known) =>
    lanternTrack({
      ringsThroatSide: lantern.afterRing,
      ringsGlandSide: set.rings.length - lantern.afterRing,
      ringHeight: set.ringHeight.mean,
      lanternWidth: lantern.width,
      window: lantern.window,
      portFromThroat: known["port.fromFace"],
      portDiameter: known["port.diameter"],
      gapTravel: known["follower.nose"],
      ...(belowRings > 0 ? { belowRings } : {}),
    }),
  );
}

/** How hard the rings are brought home: as the survey says, else as the packing asks. */
const manners = {
  "ptfe-light": "light",
  "graphite-yarn-light": "light",
  "graphite-braid": "firm",
  "other-fibre-firm": "firm",
  "stem-full-load": "full",
} as const;

function seatingOf({ motion, hazards = {} }: Survey, style: StyleFacts | undefined) {
  const { seating } = hazards;
  if (seating === "light" || seating === "firm") return { seating };
  if (seating === "full-load" || isStem(motion)) return { seating: "full" as const };
  return style?.seating === undefined ? {} : { seating: manners[style.seating] };
}

/** Families as the gap between the ends of a ring knows them. */
const gapFamilies = {
  graphite: "graphite",
  carbon: "carbon",
  ptfe: "ptfe",
  aramid: "aramid",
  novoloid: "synthetic",
  acrylic: "synthetic",
  glass: "mineral",
  "vegetable-fibre": "plant-fibre",
  melamine: "synthetic",
  metal: "metal",
  injectable: undefined,
  "elastomer-core": undefined,
} as const;

function familyForGap(style: StyleFacts | undefined) {
  const family = style && gapFamilies[style.family];
  return family === undefined ? {} : { family };
}
