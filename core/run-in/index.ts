export { type RunInFacts, type RunInGiven, type RunInPlan, runInPlan } from "./run-in-plan.ts";
export type { Schedule, ScheduleFact, Spread } from "./schedule.ts";
export { type StopAction, type StopRule, type StopRuleFact, stopActions } from "./stop-rules.ts";
