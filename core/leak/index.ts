export { annularLeak } from "./annular-leak.ts";
export type { Annulus } from "./annulus.ts";
export { type ClearanceFound, clearanceFromLeak } from "./clearance-from-leak.ts";
export { dripVerdicts } from "./drip-advice.ts";
export {
  type DripFacts,
  type DripMaterial,
  type DripService,
  type DripStage,
  dripMaterials,
  dripServices,
  dripStages,
} from "./drip-facts.ts";
export { type DripGuidance, dripGuideline } from "./drip-guideline.ts";
export { type DripFilm, type DripQuestion, dripFilms } from "./drip-question.ts";
export type { DropVolumeFound } from "./drop-question.ts";
export { dropVolume } from "./drop-volume.ts";
export { drops, dropsFromFlow } from "./drops.ts";
export { type LeakThen, type LeakWhatIf, leakWhatIf } from "./leak-what-if.ts";
export { leakPlaces, type Observed, shaftStates } from "./observed.ts";
