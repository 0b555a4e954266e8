import type { Seen, SourceId } from "../sources/index.ts";
import type { Density, GaugePressure, Length, Speed, Stress, Temperature } from "../units/index.ts";
import type { Family } from "./families.ts";

/** One document that a fact rests on, and what it says where that was noted. */
export interface Origin {
  readonly source: SourceId;
  readonly says?: string;
  /** `false` when it is named for context and does not bear the value out. */
  readonly supports?: false;
  readonly seen?: Seen;
}

/**
 * How far a fact can be leaned on. A: two or more sources read, a handbook,
 * standard or association among them. B: one source read, or makers' sheets
 * only. C: memory that the trade agrees with, or a convention. D: weak memory,
 * or not known.
 */
export type Confidence = "A" | "B" | "C" | "D";

/** What every fact of a material carries. */
export interface Fact {
  readonly origin: readonly Origin[];
  /** Whether a source that bears it out was read. */
  readonly seen: boolean;
  readonly confidence: Confidence;
  /** Makers' sheets that bear it out. */
  readonly sheets?: number;
  /** Id of a remark in words/. */
  readonly note?: string;
  /** Why there is no value: an id in words/. */
  readonly missing?: string;
}

/** One figure with the lowest and highest met. `null` is not known, never 0. */
export interface Figure<Q extends number = number> extends Fact {
  readonly value: Q | null;
  /** Advisory line before the limit. */
  readonly warnAt?: Q;
  readonly spread?: readonly [low: Q, high: Q];
}

/** From the least to the most. */
export interface BandOf<Q extends number = number> extends Fact {
  readonly min: Q | null;
  readonly max: Q | null;
  readonly says?: readonly string[];
}

/** Something said in words, by ids in words/. */
export interface Saying extends Fact {
  readonly says: readonly string[];
}

/** A rank with what is said about it. `null`: not known, or as another part of the packing. */
interface Graded<C extends number | string = number> extends Saying {
  readonly class: C | null;
  readonly spread?: readonly [low: C, high: C];
}

/** A list of things by id; the id is the word. */
interface Named extends Fact {
  readonly names: readonly string[];
}

type Construction = "braid" | "wire-reinforced" | "die-formed" | "foil" | "compound" | "over-core";
/** How the rings of a style are brought home before the first start. */
export type SeatingPolicy = "ptfe-light" | "graphite-yarn-light" | "graphite-braid" | "other-fibre-firm" | "stem-full-load";
type Allowance = "never" | "listed" | "tested";
export type Atmosphere = "air" | "water" | "steam" | "inert" | "other";

/** One generic kind of packing. Temperatures are at the packing, not in the tank. */
export interface Style {
  readonly id: string;
  readonly family: Family;
  readonly made: Fact & {
    /** Each part as the chemistries it may be of; more than one when the style does not say which. */
    readonly parts: readonly (readonly string[])[];
    /** Parts of which the style does not say what they are. */
    readonly notStated: readonly string[];
    readonly lubricants: readonly string[];
    readonly construction: Construction;
  };
  readonly temperature: {
    readonly min: Figure<Temperature>;
    readonly inAir: Figure<Temperature>;
    /** `notLimiting`: liquid water sets no limit of its own. */
    readonly inWater: Figure<Temperature> & { readonly notLimiting?: true };
    readonly inSteam: Figure<Temperature>;
    readonly inert: Figure<Temperature>;
  };
  readonly pH: { readonly min: Figure; readonly max: Figure; readonly not: Named };
  readonly speed: Figure<Speed>;
  readonly pressure: {
    readonly turning: Figure<GaugePressure>;
    readonly stroking: Figure<GaugePressure>;
    readonly stem: Figure<GaugePressure>;
  };
  readonly density: BandOf<Density>;
  /** 1 poor to 4 best. */
  readonly abrasives: Graded;
  readonly sleeve: {
    /** Brinell. */
    readonly min: Figure;
    /** Rockwell C. */
    readonly preferred: Figure & { readonly says?: readonly string[] };
    readonly finish: Figure<Length>;
  };
  /** 0 very low to 3 high; `value` in W/(m·K). */
  readonly conductivity: Graded & { readonly value?: number };
  /** 1/K. */
  readonly expansion: BandOf;
  /** Coefficient of friction on steel, standing or creeping. */
  readonly friction: Figure;
  /** Radial stress over axial stress. */
  readonly ratio: Figure;
  /** 1 poor to 4 fills everything. */
  readonly conformity: Graded;
  readonly glandStress: { readonly stem: BandOf<Stress>; readonly pump: Figure<Stress> };
  /** Share of volume lost when seated. */
  readonly seatingLoss: BandOf;
  /** 1 unforgiving to 4 forgiving. */
  readonly breakIn: Graded;
  readonly use: Saying & { readonly food: Allowance | null; readonly potable: Allowance | null; readonly oxygen: Allowance | null };
  readonly galvanic: Graded<"none" | "reduced" | "full" | "metal">;
  /** 0 hardly extrudes to 4 flows out. */
  readonly extrusion: Graded;
  /** Whether it leaves a dark mark in the product. */
  readonly marks: Fact & { readonly value: boolean | null };
  readonly seating: Fact & { readonly policy: SeatingPolicy | null };
  /** Gap to leave between the ends of a cut ring. */
  readonly gap: BandOf<Length>;
  /** Whether no drip at all may be lived with, on temperature. */
  readonly zeroDrip: Fact & { readonly value: boolean | null; readonly says?: readonly string[] };
  readonly services: Named & { readonly fluids: readonly string[]; readonly motions: readonly string[] };
  readonly notFor: Named;
}

export interface Lubricant {
  readonly id: string;
  /** Column of the fluid matrix that it is judged by, where there is one. */
  readonly chemistry?: string;
  readonly temperature: Figure<Temperature>;
  /** Its limit is burning in air: steam and inert gas are another matter. */
  readonly burns?: true;
  readonly pH: BandOf;
  readonly remark: Saying;
}

/** Rubber of a core. */
export interface Rubber {
  readonly id: string;
  readonly temperature: Figure<Temperature>;
  readonly suits: Fact & { readonly fluids: readonly string[] };
  readonly not: Fact & { readonly fluids: readonly string[] };
  readonly named?: Saying;
}

/** Suitable, caution, no. */
export type Rating = "S" | "C" | "N";
export interface RatingFact {
  readonly rating: Rating;
  readonly origin: readonly Origin[];
  readonly seen: boolean;
  readonly note?: string;
}

export type Solids = "none" | "fibrous" | "fine" | "coarse";

export interface FluidRow {
  readonly id: string;
  readonly note?: string;
  readonly nature: Fact & {
    readonly phase: "liquid" | "gas" | null;
    readonly atmosphere: Atmosphere;
    /** Whether it carries current, so that graphite eats the steel. */
    readonly conducts: boolean | null;
    readonly solids: Solids;
    /** Whether a dark mark spoils it. */
    readonly white: boolean;
  };
  /** The temperatures that the row is named for. */
  readonly range?: BandOf<Temperature>;
  readonly cells: Readonly<Record<string, RatingFact>>;
}

export type HardnessScale = "HB" | "HRC" | "HV";

/** What a sleeve is made of or coated with. */
export interface SleeveMaterial {
  readonly id: string;
  readonly hardness: BandOf & { readonly unit: HardnessScale };
  readonly surface: Saying;
}

/** Rows of one hardness in three scales; `null` where a scale ends. */
export interface HardnessScales extends Fact {
  readonly columns: readonly HardnessScale[];
  readonly rows: readonly (readonly (number | null)[])[];
}

export interface LanternMaterial {
  readonly id: string;
  readonly temperature: Figure<Temperature>;
  /** `not`: fluids it must not meet. */
  readonly use: Saying & { readonly not: readonly string[] };
}

export interface EndRing {
  readonly id: string;
  readonly style: string | null;
  readonly use: Saying & { readonly for: readonly string[] };
}

/** A point of pressure and speed that some document prints. */
export interface PressureSpeedPoint {
  readonly id: string;
  readonly pressure: Figure<GaugePressure>;
  readonly speed: Figure<Speed>;
  readonly temperature: Figure<Temperature>;
  /** Whether the figures were ever shown to hold together. */
  readonly together: "rig-capability" | "separate-limits";
}

export type PreferenceId =
  | "abrasives"
  | "break-in"
  | "conformity"
  | "colour"
  | "stock"
  | "extrusion"
  | "conductivity"
  | "service"
  | "caution"
  | "chemistry-caution"
  | "unknown";

/** The figures that the choosing itself uses. */
export interface Selection {
  readonly override: Saying;
  readonly warnShare: Figure;
  readonly phMargin: Figure;
  readonly nullMinBelow: Figure<Temperature>;
  readonly oxygen: Saying;
  readonly potable: Saying;
  readonly food: Saying;
  readonly lead: Figure;
  readonly galvanic: Fact & { readonly sleeves: readonly string[] };
  readonly notTurning: readonly (Fact & { readonly style: string })[];
  readonly hardFibre: Fact & { readonly families: readonly Family[]; readonly styles: readonly string[] };
  readonly gas: Fact;
  readonly release: Fact;
  readonly poorEquipment: Saying;
  readonly weights: Readonly<Record<PreferenceId, Figure>>;
}

/** Everything known about materials, in SI. */
export interface MaterialsFacts {
  readonly styles: readonly Style[];
  readonly lubricants: readonly Lubricant[];
  readonly rubbers: readonly Rubber[];
  readonly chemistries: readonly string[];
  readonly fluids: readonly FluidRow[];
  readonly sleeveFloor: Figure;
  readonly quartz: BandOf & Saying;
  readonly sleeves: readonly SleeveMaterial[];
  readonly hardnessScales: HardnessScales;
  readonly lanternPractice: Saying;
  readonly lanternMaterials: readonly LanternMaterial[];
  readonly throatGap: Figure<Length> & { readonly says: readonly string[] };
  readonly endRings: readonly EndRing[];
  readonly pressureSpeed: readonly PressureSpeedPoint[];
  readonly index: Fact & { readonly check: number; readonly ask: number };
  readonly selection: Selection;
}
