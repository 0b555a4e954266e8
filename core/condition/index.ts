export type { BoxOffset } from "./clock-gaps.ts";
export { type Condition, condition } from "./condition.ts";
export { type ConditionFacts, conditionFacts, type ItemFact } from "./limits.ts";
export {
  type ConditionQuestion,
  type ConditionReading,
  type ConditionSighting,
  conditionReadings,
  conditionSightings,
} from "./question.ts";
export {
  type Decider,
  deciders,
  type HouseLimit,
  type LimitVerdict,
  outcomes,
  type Verdict,
  type VerdictWord,
  verdicts,
} from "./verdict.ts";
