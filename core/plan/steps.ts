import { type Case, type CautionsFound, cautions, type RingForm, type YesNo } from "../cautions/index.ts";
import { type FitSteps, fitSteps } from "../fit/index.ts";
import type { StyleFacts } from "../materials/index.ts";
import type { RingCut, RingSet } from "../rings/index.ts";
import { type RunInPlan, runInPlan } from "../run-in/index.ts";
import type { StemLoad } from "../stems/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import { pick } from "./choose.ts";
import type { MeasuredBox } from "./measure.ts";
import { answerOf, type Part, when } from "./part.ts";
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
  const the = caseOf(survey, style, pressure);
  const torque = stem === undefined ? {} : { torque: stem.torque };
  const depth = answerOf(box.depth)?.mean.mean;
  return {
    cautions: cautions(the, facts.cautions),
    fit: when({ set }, (known) =>
      fitSteps(
        {
          ...the,
          ...torque,
          rings: known.set.rings.length,
          ...(known.set.lantern === undefined ? {} : { lanternAfter: known.set.lantern.afterRing, lanternWidth: known.set.lantern.width }),
          joints: known.set.joints,
          ringHeight: known.set.ringHeight.mean,
          ...(depth === undefined ? {} : { boxDepth: depth }),
          ...facesOf(known.set),
          ...(cut === undefined ? {} : { mandrel: cut.mandrel, cutLength: cut.cutLengthRounded }),
          ...(survey.port?.fromFace === undefined ? {} : { portDepth: survey.port.fromFace }),
          ...(survey.set?.cut === undefined ? {} : { cut: survey.set.cut }),
          newShaft: survey.condition?.renewed?.length ? "yes" : "unknown",
        },
        facts.fit,
        facts.cautions,
      ),
    ),
    runIn: runInPlan({ ...the, ...torque }, facts.runIn, facts.fit, facts.cautions),
  };
}

/** Where a depth gauge finds each face of the set once it is home; nothing when the depth of the box is not known. */
function facesOf(set: RingSet): { readonly faces?: readonly Length[]; readonly lanternFace?: Length; readonly spacerFace?: Length } {
  const faces: Length[] = [];
  let lanternFace: Length | undefined;
  let spacerFace: Length | undefined;
  for (const { kind, depthLeft } of set.parts) {
    if (depthLeft === undefined) return {};
    if (kind === "lantern") lanternFace = depthLeft;
    else if (kind === "ring" || kind === "end-ring") faces.push(depthLeft);
    else spacerFace = depthLeft;
  }
  return { faces, ...(lanternFace === undefined ? {} : { lanternFace }), ...(spacerFace === undefined ? {} : { spacerFace }) };
}

/** The box in its place, as cautions and steps see it. */
function caseOf(survey: Survey, style: StyleFacts | undefined, pressure: GaugePressure | undefined): Case {
  const { motion, release, zone, service = {}, flush, hazards = {} } = survey;
  const fitted: YesNo | undefined = flush?.fitted === undefined ? undefined : flush.fitted ? "yes" : "no";
  const form: RingForm | undefined = style === undefined ? undefined : style.style === "eg-die" ? "die-formed" : "braid";
  return {
    motion,
    ...(release === undefined ? {} : { release }),
    ...(zone === undefined ? {} : { zone }),
    ...pick(service, ["fluids", "phase", "temperature", "use", "sleeve"]),
    ...(pressure === undefined ? {} : { pressure }),
    ...(fitted === undefined ? {} : { flush: fitted }),
    ...(style === undefined ? {} : { style: style.style }),
    ...(form === undefined ? {} : { ringForm: form }),
    ...hazards,
  };
}
