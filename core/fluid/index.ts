export { saturationPressure, saturationTemperature } from "./saturation.ts";
export { type WaterState, waterState } from "./state.ts";
export { type Water, water } from "./water.ts";
