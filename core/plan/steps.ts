import { type Case, type CautionsFound, cautions } from "../cautions/index.ts";
import { type FitSteps, fitSteps } from "../fit/index.ts";
import type { StyleFacts } from "../materials/index.ts";
import type { RingCut, RingSet } from "../rings/index.ts";
import { type RunInPlan, runInPlan } from "../run-in/index.ts";
import type { StemLoad } from "../stems/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import type { Filling } from "../workings/index.ts";
import type { MeasuredBox } from "./measure.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Survey } from "./survey.ts";

/** What to mind, and what to do, in order. */
export interface Steps {
  readonly cautions: Part<CautionsFound>;
  readonly fit: Part<FitSteps>;
  readonly runIn: Part<RunInPlan>;
}

/** Lists cautions, fit steps and run-in steps for the case. */
export function stepsOf(
  survey: Survey,
  box: MeasuredBox,
  set: RingSet | undefined,
  cut: RingCut | undefined,
  style: StyleFacts | undefined,
  stem: StemLoad | undefined,
  pressure: GaugePressure | undefined,
  facts: PlanFacts,
): Steps {
  const the: GivenTo<typeof runInPlan> = { motion: survey.motion, ...survey.hazards };
  fillCase(the, survey, style, pressure);
  if (stem !== undefined) the.torque = stem.torque;
  const depth = answerOf(box.depth)?.mean.mean;
  return {
    cautions: cautions(the, facts.cautions),
    fit: when({ set }, (known) => {
      const { rings, joints, lantern, ringHeight } = known.set;
      const given: GivenTo<typeof fitSteps> = { motion: survey.motion, rings: rings.length, ...survey.hazards };
      fillCase(given, survey, style, pressure);
      given.joints = joints;
      given.ringHeight = ringHeight.mean;
      given.newShaft = survey.condition?.renewed?.length ? "yes" : "unknown";
      if (stem !== undefined) given.torque = stem.torque;
      if (lantern !== undefined) {
        given.lanternAfter = lantern.afterRing;
        given.lanternWidth = lantern.width;
      }
      if (depth !== undefined) given.boxDepth = depth;
      fillFaces(given, known.set);
      if (cut !== undefined) {
        given.mandrel = cut.mandrel;
        given.cutLength = cut.cutLengthRounded;
      }
      if (survey.port?.fromFace !== undefined) given.portDepth = survey.port.fromFace;
      if (survey.set?.cut !== undefined) given.cut = survey.set.cut;
      return fitSteps(given, facts.fit, facts.cautions);
    }),
    runIn: runInPlan(the, facts.runIn, facts.fit, facts.cautions),
  };
}

/** Where a depth gauge finds each face of the set once it is home; nothing when the depth of the box is not known. */
function fillFaces(given: GivenTo<typeof fitSteps>, set: RingSet): void {
  const faces: Length[] = [];
  let lanternFace: Length | undefined;
  let spacerFace: Length | undefined;
  for (const { kind, depthLeft } of set.parts) {
    if (depthLeft === undefined) return;
    if (kind === "lantern") lanternFace = depthLeft;
    else if (kind === "ring" || kind === "end-ring") faces.push(depthLeft);
    else spacerFace = depthLeft;
  }
  given.faces = faces;
  if (lanternFace !== undefined) given.lanternFace = lanternFace;
  if (spacerFace !== undefined) given.spacerFace = spacerFace;
}

/** Adds the box in its place, as cautions and steps see it. What the survey says of hazards is there already, and stands. */
function fillCase(given: Filling<Case>, survey: Survey, style: StyleFacts | undefined, pressure: GaugePressure | undefined): void {
  const { release, zone, service = {}, flush } = survey;
  if (release !== undefined) given.release = release;
  if (zone !== undefined) given.zone = zone;
  if (service.fluids !== undefined) given.fluids = service.fluids;
  if (service.phase !== undefined) given.phase = service.phase;
  if (service.temperature !== undefined) given.temperature = service.temperature;
  if (service.use !== undefined) given.use = service.use;
  if (service.sleeve !== undefined) given.sleeve = service.sleeve;
  if (pressure !== undefined) given.pressure = pressure;
  if (flush?.fitted !== undefined) given.flush = flush.fitted ? "yes" : "no";
  if (style !== undefined) {
    given.style = style.style;
    given.ringForm ??= style.style === "eg-die" ? "die-formed" : "braid";
  }
}
