export { type Bridge, type BridgeGiven, bridge } from "./bridge.ts";
export { type Expansion, type Expected, expand } from "./expand.ts";
export { type FitFacts, type FitGiven, type FitSteps, filmOf, fitSteps } from "./fit-steps.ts";
export { type Block, linesOf } from "./lines.ts";
export { type RingDepth, ringDepth } from "./ring-depth.ts";
export { type KnownSettings, type Setting, type SettingFact, Settings, settingsOf } from "./settings.ts";
export * from "./step.ts";
