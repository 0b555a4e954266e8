export { type Datum, datums, isStem, type Motion, motions, type Release, releases, turns, type Zone, zones } from "./kinds.ts";
