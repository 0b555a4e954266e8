import type { Motion } from "../box/index.ts";
import type { Citation } from "../sources/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import type { Band } from "../workings/index.ts";

/** What a box does, as far as published drips tell services apart. */
export const dripServices = [
  "general",
  "fire-pump",
  "sludge",
  "slurry",
  "irrigation",
  "rotary-pump",
  "truck-pump",
  "ship-stern",
  "yacht-stern",
  "plunger",
] as const;
export type DripService = (typeof dripServices)[number];

export const dripStages = ["new", "settled", "standing"] as const;
export type DripStage = (typeof dripStages)[number];

export const dripMaterials = ["flexible-graphite", "other"] as const;
export type DripMaterial = (typeof dripMaterials)[number];

/** One published figure, as printed. */
export interface DripGuideline {
  readonly id: string;
  readonly services: readonly DripService[];
  readonly motions: readonly Motion[];
  /** Running in, settled, or with the shaft at rest. */
  readonly stage: DripStage;
  /** Said of this material only. */
  readonly material?: DripMaterial;
  /** Drops a minute. */
  readonly drops?: Band;
  /** The drops are for so much of shaft diameter. */
  readonly perShaft?: Length;
  /** A flow, where that is what is printed. */
  readonly flow?: Band<VolumeFlow>;
  /** Where no number is printed: an id of the words used. */
  readonly saying?: string;
  readonly citation: Citation;
}

export interface DripFacts {
  readonly guidelines: readonly DripGuideline[];
  /** Who says that flexible graphite may stop dripping. */
  readonly graphiteMayStop: Citation;
}
