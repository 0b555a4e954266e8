export { type RodFacts, type RodFile, readRodFacts } from "./rod-facts.ts";
export { type RodSet, type RodSetGiven, rodSet } from "./rod-set.ts";
export { type RodService, rodServices } from "./undersize.ts";
