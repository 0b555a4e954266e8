import type { Motion, Release, Use } from "../box/index.ts";
import type { GaugePressure, Length, Speed, Temperature } from "../units/index.ts";
import type { HardnessScale, Solids } from "./facts.ts";

export const phases = ["liquid", "gas"] as const;
export const conditions = ["good", "worn", "poor"] as const;
export const films = ["product", "flush-to-closed-drain", "flush-to-open-drain", "grease"] as const;
export const cooling = ["good", "low", "none"] as const;
export const solidsLevels = ["none", "fibrous", "fine", "coarse"] as const satisfies readonly Solids[];
export const hardnessScales = ["HB", "HRC", "HV"] as const satisfies readonly HardnessScale[];

/** What the packing runs on. Nothing said is not known. */
export interface Sleeve {
  /** Id of data/materials/sleeves. */
  readonly material?: string;
  readonly hardness?: number;
  /** Scale of `hardness`; Brinell when not said. */
  readonly scale?: HardnessScale;
  /** Whether it stands wet while idle. */
  readonly wetWhenIdle?: boolean;
}

/** The state of the equipment. */
export interface Condition {
  readonly overall?: (typeof conditions)[number];
  /** Radial gap between shaft and throat. */
  readonly throatGap?: Length;
  /** Radial gap between shaft and gland follower. */
  readonly followerGap?: Length;
}

/** What the sheet of an item in stock says of that very item, and who put it down. */
export interface Item {
  /** Id of the style it belongs to. */
  readonly style: string;
  /** Which document, as a person would find it again. */
  readonly sheet?: string;
  /** Who recorded it. */
  readonly recordedBy?: string;
  readonly speed?: Speed;
  readonly pressure?: GaugePressure;
  readonly temperature?: Temperature;
  readonly pHMin?: number;
  readonly pHMax?: number;
  /** Fluids that the item's own chemical chart allows. */
  readonly suits?: readonly string[];
  /** Uses that a certificate for this very item covers. */
  readonly listed?: readonly ("potable" | "food")[];
  /** Tested, cleaned and unlubricated for oxygen, this very lot. */
  readonly oxygenLot?: boolean;
  /** Corrosion inhibitor or a sacrificial part, acknowledged by the owner of the machine. */
  readonly inhibited?: boolean;
  /** Which lubricant is in it (id of data/materials/lubricants), or `none`. */
  readonly lubricant?: string;
  /** Rubber of its core (id of data/materials/elastomers). */
  readonly rubber?: string;
  /** Style of the jacket over its core. */
  readonly jacket?: string;
}

/** The service to choose a packing for. A member left out is not known, and is named as a gap. */
export interface Service {
  readonly motion: Motion;
  /** Everything that may touch the packing: product, flush, cleaning liquor. Ids of data/materials/fluids. */
  readonly fluids?: readonly string[];
  /** At the packing. */
  readonly temperature?: Temperature;
  /** In the box. */
  readonly pressure?: GaugePressure;
  /** Of the shaft surface. */
  readonly speed?: Speed;
  readonly pH?: number;
  readonly solids?: Solids;
  readonly sleeve?: Sleeve;
  readonly phase?: (typeof phases)[number];
  readonly condition?: Condition;
  readonly release?: Release;
  readonly use?: Use;
  /** What wets the rings where the product may not be let out. */
  readonly film?: (typeof films)[number];
  /** How much flush or other cooling there is. */
  readonly cooling?: (typeof cooling)[number];
  readonly items?: readonly Item[];
  /** Share of the speed and pressure limits, multiplied, from which to look at cooling, and from which to ask the supplier. */
  readonly index?: { readonly check?: number; readonly ask?: number };
}
