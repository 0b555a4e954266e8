export { type ButtGap, buttGap, gapPolicies } from "./butt-gap.ts";
export { type Coil, coil } from "./coil.ts";
export {
  type Opinion,
  type RingFacts,
  type RingFile,
  readRingFacts,
  type Seating,
  seatings,
} from "./facts.ts";
export { type JointsQuestion, joints } from "./joints.ts";
export { type Cut, type CutQuestion, cuts, type RingCut, ringCut } from "./ring-cut.ts";
export { type LanternInSet, type RingSet, ringSet } from "./ring-set.ts";
export { type Part, type PartKind, partKinds } from "./stack.ts";
export { type EndRings, endRings, type LanternSurvey, type RingSetQuestion } from "./survey.ts";
export { type Binding, bindings, type TravelLimit } from "./travel.ts";
