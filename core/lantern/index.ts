export { type LanternLimit, type LanternUncertainties, lanternLimit } from "./lantern-limit.ts";
export { comparePlaces, type LanternPlace, lanternPlace, type Place, type PlaceQuestion } from "./lantern-place.ts";
export { type LanternTrack, lanternTrack, mostLoss } from "./lantern-track.ts";
export { type LanternAndPort, type Opening, openings } from "./port.ts";
export { type LanternAtStart, portAfter } from "./port-after.ts";
export type { FurtherPush } from "./share.ts";
