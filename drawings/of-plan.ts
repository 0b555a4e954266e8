import type { Plan } from "@ringwright/core/plan";
import { drawBoxSection } from "./box-section/draw.ts";
import { drawCutStrip } from "./cut-strip.ts";
import { boxOfPlan, jointClockOfPlan, pushOfPlan, stripOfPlan } from "./from-plan.ts";
import { drawJointClock } from "./joint-clock.ts";
import type { Drawing } from "./shapes.ts";
import { drawStressCurve } from "./stress-curve.ts";

/** The drawings that a plan has, by name. */
export const planDrawings = ["box-section", "joint-clock", "cut-strip", "push"] as const;
export type PlanDrawing = (typeof planDrawings)[number];

/** Width of the paper for each, mm, when none is asked for. */
export const usualWidth: Readonly<Record<PlanDrawing, number>> = { "box-section": 180, "joint-clock": 80, "cut-strip": 140, push: 140 };

function drawn<Input>(input: Input | undefined, draw: (input: Input) => Drawing): Drawing | undefined {
  return input === undefined ? undefined : draw(input);
}

/** One drawing of a plan; none when what it shows is not known. */
export function drawOfPlan(name: PlanDrawing, plan: Plan, title: string): Drawing | undefined {
  switch (name) {
    case "box-section":
      return drawn(boxOfPlan(plan, title), drawBoxSection);
    case "joint-clock":
      return drawn(jointClockOfPlan(plan), drawJointClock);
    case "cut-strip":
      return drawn(stripOfPlan(plan), drawCutStrip);
    case "push":
      return drawn(pushOfPlan(plan), drawStressCurve);
  }
}
