import { isStem } from "../box/index.ts";
import type { Length } from "../units/index.ts";
import type { Workings } from "../workings/index.ts";
import type { RingFacts } from "./facts.ts";
import { wantsLantern } from "./lantern-survey.ts";
import { length } from "./ring-section.ts";
import type { measured, RingSetQuestion } from "./survey.ts";

/** What only this branch of the trade has to hear: flush port and lantern ring, stroke, one ring at low pressure. */
export function warnMotion(work: Workings, given: RingSetQuestion, stack: Length, { oneRingPressure }: RingFacts): void {
  const { motion, stroke, pressure } = given;
  if (!isStem(motion) && !wantsLantern(given)) {
    const port = given.portFromThroat ?? given.portFromFace ?? given.portDiameter;
    work.warn(
      port === undefined
        ? { kind: "gap", input: "lantern", says: { id: "rings-gap-lantern" } }
        : { kind: "limit", input: "lantern", says: { id: "rings-port-without-lantern" } },
    );
  }
  if (stroke !== undefined && motion === "stroking" && stack > stroke) {
    work.warn({
      kind: "limit",
      input: "stroke",
      given: stroke,
      says: { id: "rings-stack-above-stroke", with: { stack: length(stack), stroke: length(stroke) } },
      citation: { source: "bloch-geitner-maintenance", at: "pp. 127 to 129: an unlubricated stack should not exceed the stroke" },
    });
  }
  if (motion === "slow-agitator" && pressure !== undefined && pressure <= oneRingPressure.value) {
    work.warn({ kind: "note", input: "pressure", says: { id: "rings-slow-low-pressure" }, citation: oneRingPressure.citation });
  }
}

/** Whether an input that was left out is missed in this box. */
export function isMissed(name: (typeof measured)[number], given: RingSetQuestion): boolean {
  switch (name) {
    case "shaft":
    case "bore":
    case "section":
      return false;
    case "depth":
    case "threadLeft":
      return true;
    case "noseLength":
      return given.glandGap === undefined;
    case "portFromThroat":
      return given.portFromFace === undefined && wantsLantern(given);
    case "portDiameter":
      return wantsLantern(given);
    case "stroke":
      return given.motion === "stroking";
    case "pressure":
      return given.motion === "slow-agitator";
    default:
      return false;
  }
}
