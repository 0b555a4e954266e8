export { absolutePressure, atmosphereRange } from "./absolute.ts";
export { type AirIngress, airAdvices, airIngress, airStates } from "./air-ingress.ts";
export { type BoxDesign, type BoxPressureFacts, boxDesigns, type ImpellerDiameter, impellerDiameters } from "./box-designs.ts";
export { type BoxPressure, boxPressure } from "./box-pressure.ts";
export { type FlushPressure, flushPressure, flushRemedies } from "./flush-pressure.ts";
export { type FlushFacts, type FlushPressureFacts, type FlushService, flushReferences, flushServices } from "./flush-rules.ts";
export { type LanternFlow, lanternFlow } from "./lantern-flow.ts";
export { flowRegimes, type ThroatFlow, throatFlow } from "./throat-flow.ts";
export { type VapourMargin, vapourMargin, vapourVerdicts } from "./vapour-margin.ts";
