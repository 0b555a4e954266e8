export { drawBoxSection } from "./box-section/draw.ts";
export type { BoxDrawing, PortState, SetPart, Stated } from "./box-section/input.ts";
export { type CutStrip, drawCutStrip } from "./cut-strip.ts";
export { boxOfPlan, jointClockOfPlan, pushOfPlan, stripOfPlan } from "./from-plan.ts";
export { drawJointClock, type JointClock } from "./joint-clock.ts";
export { drawOfPlan, type PlanDrawing, planDrawings, usualWidth } from "./of-plan.ts";
export type { Drawing, Family } from "./shapes.ts";
export { drawStressCurve, type StressCurve } from "./stress-curve.ts";
export { type SvgOptions, toSvg } from "./svg/svg.ts";
