export { drawBoxSection } from "./box-section/draw.ts";
export type { BoxDrawing, PortState, SetPart, Stated } from "./box-section/input.ts";
export { boxOfPlan } from "./from-plan.ts";
export type { Drawing, Family } from "./shapes.ts";
export { type SvgOptions, toSvg } from "./svg/svg.ts";
