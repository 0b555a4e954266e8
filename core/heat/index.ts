export type { HeatFacts } from "./expansion.ts";
export { flushFlow } from "./flush-flow.ts";
export { frictionBoreTaken, ratioTaken } from "./friction-assumptions.ts";
export { type FrictionPower, frictionPower } from "./friction-power.ts";
export { type HeatSplit, heatSplit } from "./heat-split.ts";
export { pressureSpeed } from "./pressure-speed.ts";
export { type ShaftMaterial, shaftMaterials } from "./shaft-fin.ts";
export { surfaceSpeed } from "./surface-speed.ts";
export {
  type BoxMaterial,
  boxMaterials,
  type GrowingPacking,
  growingPackings,
  type ThermalGrowth,
  thermalGrowth,
} from "./thermal-growth.ts";
