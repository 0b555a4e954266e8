export {
  type Datum,
  datums,
  isStem,
  type Motion,
  motions,
  type Release,
  releases,
  turns,
  type Use,
  uses,
  type Zone,
  zones,
} from "./kinds.ts";
