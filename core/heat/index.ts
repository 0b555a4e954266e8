export type { ExpansionTable } from "./expansion.ts";
export { type FrictionPower, frictionPower } from "./friction-power.ts";
export { pressureSpeed } from "./pressure-speed.ts";
export { surfaceSpeed } from "./surface-speed.ts";
export {
  type BoxMaterial,
  boxMaterials,
  type GrowingPacking,
  growingPackings,
  type ThermalGrowth,
  thermalGrowth,
} from "./thermal-growth.ts";
