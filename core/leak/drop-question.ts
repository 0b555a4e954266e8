import type { Density, Length, SurfaceTension, Temperature, Volume } from "../units/index.ts";
import type { Band, Uncertain } from "../workings/index.ts";

/** How a drop volume was come by. */
type DropVolumeBasis = "timed-catch" | "drip-point" | "assumed";

export interface DropVolumeFound {
  readonly dropVolume: Uncertain<Volume>;
  /** Lowest and highest to be reckoned with. */
  readonly band: Band<Volume>;
  readonly basis: DropVolumeBasis;
}

export interface DropVolumeQuestion {
  /** Drops counted while the leak was caught. */
  readonly drops?: number;
  /** What was caught. */
  readonly caught?: Volume;
  /** Finest mark of the measure that was read. */
  readonly resolution?: Volume;
  /** Wetted width of the edge that the drops hang from. */
  readonly tip?: Length;
  /** Of the liquid; taken as water at `temperature` when left out. */
  readonly surfaceTension?: SurfaceTension;
  readonly density?: Density;
  readonly temperature?: Temperature;
}
