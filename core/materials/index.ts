export { type Clearing, clearing, type Unsaid } from "./clearing.ts";
export type { EndRing, MaterialsFacts, Origin, RatingFact, SeatingPolicy, SleeveMaterial, Style } from "./facts.ts";
export { type Family, families } from "./families.ts";
export { type FluidListed, fluidsList } from "./fluids.ts";
export { type Line, type Material, type MaterialLine, material } from "./material.ts";
export { type Materials, materials } from "./materials.ts";
export {
  type Condition,
  conditions,
  cooling,
  films,
  hardnessScales,
  type Item,
  phases,
  type Service,
  type Sleeve,
  solidsLevels,
} from "./question.ts";
export { readMaterials } from "./read.ts";
export { preferences } from "./ready.ts";
export type { Binding, Candidate, Compared, Reason, Rejected } from "./reason.ts";
export { type LanternChoice, type RingMaterials, ringMaterials } from "./ring-materials.ts";
export { familyOf, type Setting, type StyleFacts, styleFacts } from "./style-facts.ts";
