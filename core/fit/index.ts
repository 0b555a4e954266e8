export { type Bridge, type BridgeGiven, bridge } from "./bridge.ts";
export { type Expansion, type Expected, expand } from "./expand.ts";
export { type FitFacts, type FitGiven, type FitSteps, filmOf, fitSteps } from "./fit-steps.ts";
export { type RingDepth, ringDepth } from "./ring-depth.ts";
export { type Setting, type SettingFact, Settings } from "./settings.ts";
export * from "./step.ts";
