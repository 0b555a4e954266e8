export { type BoxDesign, type BoxPressureFacts, boxDesigns, type ImpellerDiameter, impellerDiameters } from "./box-designs.ts";
export { type BoxPressure, boxPressure } from "./box-pressure.ts";
