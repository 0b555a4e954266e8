import { isStem } from "../box/index.ts";
import {
  findThread,
  type GlandLoad,
  glandLoad,
  type Part as Layer,
  type SealStress,
  type StressAlongBox,
  sealStress,
  stressAlongBox,
  type Thread,
} from "../gland/index.ts";
import { frictionBoreTaken, ratioTaken } from "../heat/index.ts";
import type { StyleFacts } from "../materials/index.ts";
import type { RingSet } from "../rings/index.ts";
import { type StemLoad, type StemSet, stemLoad } from "../stems/index.ts";
import { type GaugePressure, type Length, quantity, type Stress } from "../units/index.ts";
import { type Answer, begin, rule } from "../workings/index.ts";
import type { MeasuredBox } from "./measure.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Survey } from "./survey.ts";

/** How the gland's push goes down the set, and what it asks of the nuts. */
export interface Load {
  /** K, friction and gland stress reckoned with. */
  readonly settings: Answer<Settings>;
  readonly standing: Part<StressAlongBox>;
  /** Only for a shaft that turns. */
  readonly turning: Part<StressAlongBox> | undefined;
  readonly seal: Part<SealStress>;
  readonly nuts: Part<GlandLoad> | undefined;
  readonly stem: Part<StemLoad> | undefined;
  /** Of the gland studs, where it was named and is known. */
  readonly thread: Thread | undefined;
}

export interface Settings {
  readonly ratio: number;
  readonly friction: number;
  readonly glandStress: Stress;
}

const lightlyLoaded = quantity("stress", 0.5, "MPa");

/** A pump's gland starts at finger-tight; what that puts on the packing is not measured by anyone. */
const fingerTightTaken = rule({
  id: "finger-tight-stress",
  name: "gland-stress",
  symbol: "σ_g",
  expression: "taken for lack of a measurement",
  unit: "Pa",
  inputs: [],
  citation: { source: "own-proposal", at: "a few newton metres on each nut; a setting with a wide spread" },
  assumed: { min: quantity("stress", 0.1, "MPa"), max: quantity("stress", 1, "MPa") },
});

/** Works out the stress along the box and the load on nuts or stem. */
export function loadOf(
  survey: Survey,
  box: MeasuredBox,
  set: RingSet | undefined,
  style: StyleFacts | undefined,
  pressure: GaugePressure | undefined,
  facts: PlanFacts,
): Load {
  const { motion, studs = {} } = survey;
  const stem = isStem(motion) ? stemOf(survey, box, set, style, pressure, facts) : undefined;
  const settings = settingsOf(survey, style, answerOf(stem)?.glandStress);
  const { ratio, friction, glandStress } = settings.ok ? settings.value : { ratio: 0, friction: 0, glandStress: lightlyLoaded };
  const shaft = answerOf(box.shaft)?.mean.mean;
  const bore = answerOf(box.bore)?.mean.mean;
  const parts = set ? layersOf(set, ratio, friction) : [];
  const seating = survey.set?.seated ?? "unknown";
  const along = (turning: boolean): Part<StressAlongBox> =>
    when({ shaft, bore, set }, (known) => stressAlongBox({ shaft: known.shaft, bore: known.bore, parts, glandStress, turning, seating }));
  const turns = motion === "turning" || motion === "slow-agitator";
  return {
    settings,
    standing: along(false),
    turning: turns ? along(true) : undefined,
    seal: when({ shaft, bore, set, "service.pressure": pressure }, (known) =>
      sealStress({ shaft: known.shaft, bore: known.bore, parts, pressure: known["service.pressure"], motion }),
    ),
    nuts: stem
      ? undefined
      : when({ shaft, bore, "studs.count": studs.count, "studs.thread": studs.thread, set }, (known) => {
          const given: GivenTo<typeof glandLoad> = {
            shaft: known.shaft,
            bore: known.bore,
            glandStress,
            nuts: known["studs.count"],
            thread: known["studs.thread"],
            nutCondition: studs.nutCondition ?? "as-received",
            ringsHeight: ringsHeight(known.set),
            motion,
          };
          if (pressure !== undefined && pressure >= 0) given.boxPressure = pressure;
          return glandLoad(given, facts.gland);
        }),
    stem,
    thread: studs.thread === undefined ? undefined : answerOf(findThread(studs.thread, facts.gland.threads)),
  };
}

function settingsOf({ set = {} }: Survey, style: StyleFacts | undefined, stemStress: Stress | undefined): Answer<Settings> {
  const work = begin();
  return work.found({
    ratio: style?.ratio?.typical ?? work.assume(ratioTaken, 0.5),
    friction: style?.friction?.typical ?? work.assume(frictionBoreTaken, 0.1),
    glandStress: set.glandStress ?? stemStress ?? work.assume(fingerTightTaken, lightlyLoaded),
  });
}

/** The set from gland to throat, as the decay of stress sees it: only packing rubs. */
function layersOf(set: RingSet, ratio: number, friction: number): readonly Layer[] {
  const layers: Layer[] = [];
  for (let index = set.parts.length - 1; index >= 0; index--) {
    const part = set.parts[index];
    if (!part) continue;
    const packing = part.kind === "ring" || part.kind === "end-ring";
    layers.push({
      height: part.height,
      ratio: packing ? ratio : 0,
      frictionShaft: packing ? friction : 0,
      frictionBore: packing ? friction : 0,
    });
  }
  return layers;
}

/** Height of all rings together. */
export function ringsHeight(set: RingSet): Length {
  let height = 0;
  for (const ring of set.rings) height += ring.height;
  return height as Length;
}

/** The load rule that stands for the style, where there is one. */
function stemSetOf(style: StyleFacts | undefined): StemSet | undefined {
  if (style?.family !== "graphite") return undefined;
  return style.style === "eg-die" ? "formed-graphite" : "braided-graphite";
}

function stemOf(
  survey: Survey,
  box: MeasuredBox,
  set: RingSet | undefined,
  style: StyleFacts | undefined,
  pressure: GaugePressure | undefined,
  facts: PlanFacts,
): Part<StemLoad> {
  const { studs = {} } = survey;
  const stress = survey.set?.glandStress;
  const rule_ = stemSetOf(style);
  return when(
    {
      shaft: answerOf(box.shaft)?.mean.mean,
      bore: answerOf(box.bore)?.mean.mean,
      "service.pressure": pressure,
      "studs.count": studs.count,
      "studs.thread": studs.thread,
      set,
      "set.glandStress": rule_ ?? stress,
    },
    (known) => {
      const given: GivenTo<typeof stemLoad> = {
        stem: known.shaft,
        bore: known.bore,
        pressure: known["service.pressure"],
        nuts: known["studs.count"],
        thread: known["studs.thread"],
        nutCondition: studs.nutCondition ?? "as-received",
        packedLength: ringsHeight(known.set),
        friction: style?.friction?.typical ?? 0.1,
        seating: survey.set?.seated ?? "unknown",
      };
      if (stress !== undefined) {
        given.floorStress = stress;
        given.timesPressure = 0;
      } else if (rule_ !== undefined) given.set = rule_;
      if (studs.propertyClass !== undefined) given.propertyClass = studs.propertyClass;
      return stemLoad(given, facts.stems, facts.gland);
    },
  );
}
