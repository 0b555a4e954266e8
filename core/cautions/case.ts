import type { Motion, Release, Use, Zone } from "../box/index.ts";
import type { Citation } from "../sources/index.ts";
import type { GaugePressure, Temperature } from "../units/index.ts";

/** Not knowing is an answer. */
export const yesNoUnknown = ["yes", "no", "unknown"] as const;
export type YesNo = (typeof yesNoUnknown)[number];

/** What is known of the packing that comes out: nothing was in, a record names it, or only its age is known. */
export const oldPackings = ["none", "recorded", "since-1980", "before-1980", "unknown"] as const;
export type OldPacking = (typeof oldPackings)[number];

export const phases = ["liquid", "gas", "unknown"] as const;
export type Phase = (typeof phases)[number];

/** What sort of duty sets how long to wait between moves. */
export const services = ["small", "normal", "slurry", "fire-pump"] as const;
export type Service = (typeof services)[number];

/** How the packing is made up, where that changes how it is fitted. */
export const ringForms = ["braid", "die-formed", "v-ring"] as const;
export type RingForm = (typeof ringForms)[number];

/** How hard each ring is pressed home before the first start. */
export const seatings = ["light", "firm", "full-load", "unknown"] as const;
export type Seating = (typeof seatings)[number];

/** A box in its place, as far as cautions and steps depend on it. What is left out is not known. */
export interface Case {
  readonly motion: Motion;
  readonly release?: Release;
  readonly zone?: Zone;
  readonly phase?: Phase;
  /** Ids of fluids, as in the chemical matrix. */
  readonly fluids?: readonly string[];
  /** Of the product in the box. */
  readonly temperature?: Temperature;
  readonly pressure?: GaugePressure;
  readonly hot?: YesNo;
  readonly toxic?: YesNo;
  readonly flammable?: YesNo;
  readonly corrosive?: YesNo;
  readonly flush?: YesNo;
  readonly quench?: YesNo;
  readonly grease?: YesNo;
  /** Steam jacket, trace heating or the like on the box. */
  readonly heating?: YesNo;
  /** Shaft hanging or standing, so that it must be held when the box is opened. */
  readonly vertical?: YesNo;
  /** Style of the new packing; where it is not settled, its family. */
  readonly style?: string;
  readonly family?: string;
  readonly ringForm?: RingForm;
  readonly seating?: Seating;
  /** Id of the shaft, sleeve or stem material. */
  readonly sleeve?: string;
  readonly oldPacking?: OldPacking;
  readonly use?: Use;
  readonly service?: Service;
}

/** What a family of packings means for hands, lungs and steel, and how it is brought home. */
export interface FamilyFact {
  readonly id: string;
  /** Ids of the styles that belong to it. */
  readonly styles: readonly string[];
  /** Whether graphite or carbon touches the shaft. */
  readonly graphite: YesNo;
  readonly fluoropolymer: YesNo;
  /** Whether it swells noticeably as it warms. */
  readonly grows: YesNo;
  readonly seating: Seating;
  /** May run with nothing coming out, and be well. */
  readonly mayRunDry: YesNo;
  readonly citations: readonly Citation[];
}

/** What a fluid can do to the person who opens the box. Left out: no. */
export interface FluidHazards {
  readonly id: string;
  readonly does: readonly ("hot" | "cold" | "toxic" | "flammable" | "corrosive" | "oxidising" | "oxygen" | "setting")[];
  readonly phase: Phase;
}

export interface CaseFacts {
  readonly families: readonly FamilyFact[];
  readonly fluids: readonly FluidHazards[];
  /** Shaft, sleeve and stem materials that pit under wet graphite. */
  readonly pittingSleeves: readonly string[];
}
