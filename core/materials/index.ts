export type { MaterialsFacts } from "./facts.ts";
export { type Materials, materials } from "./materials.ts";
export {
  type Condition,
  conditions,
  cooling,
  films,
  hardnessScales,
  type Item,
  type Motion,
  motions,
  phases,
  releases,
  type Service,
  type Sleeve,
  solidsLevels,
  uses,
} from "./question.ts";
export { readMaterials } from "./read.ts";
export type { Binding, Candidate, Reason, Rejected } from "./reason.ts";
export { type FluidListed, fluidsList } from "./fluids.ts";
export { material } from "./material.ts";
export { familyOf, type Setting, type StyleFacts, styleFacts } from "./style-facts.ts";
export type { Family, SeatingPolicy, Style } from "./facts.ts";
