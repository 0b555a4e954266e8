export { readStemFacts, type StemFacts, type StemFile, type StemSet, stemSets } from "./stem-facts.ts";
export { type StemFriction, type StemFrictionGiven, stemFriction } from "./stem-friction.ts";
export { type StemGovernor, stemGovernors } from "./stem-gland-stress.ts";
export { type StemLoad, type StemLoadGiven, stemLoad } from "./stem-load.ts";
