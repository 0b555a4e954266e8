export { surveyField } from "./field-names.ts";
export { type GlandMoved, type GlandTravel, glandMoved, glandTravel } from "./gland-moved.ts";
export { answerOf, isRefused, type Missing, type Part } from "./part.ts";
export { type Gap, type NoAnswer, type PartName, type Plan, partNames, partsOf, plan } from "./plan.ts";
export type { PlanFacts } from "./plan-facts.ts";
export type { Dimension, Survey } from "./survey.ts";
