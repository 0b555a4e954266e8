import type { Datum, Motion, Release, Zone } from "../box/index.ts";
import type { Case } from "../cautions/index.ts";
import type { ConditionQuestion } from "../condition/index.ts";
import type { BoxDesign, FlushService, ImpellerDiameter } from "../flush/index.ts";
import type { Seating as HowSeated, NutCondition } from "../gland/index.ts";
import type { Service } from "../materials/index.ts";
import type { Cut, EndRings } from "../rings/index.ts";
import type { StockSeries } from "../section/index.ts";
import type { How } from "../uncertainty/index.ts";
import type { Angle, GaugePressure, Length, Rotation, Stress, Temperature } from "../units/index.ts";

/** One dimension as it was measured: readings in any order, or by plane, and how they were taken. */
export interface Dimension {
  readonly readings?: readonly Length[];
  readonly planes?: readonly (readonly Length[])[];
  readonly how?: How;
  readonly resolution?: Length;
}

/**
 * Everything a fitter may find out about one box. Only the motion must be
 * there: whatever else is left out is a named gap in the plan.
 */
export interface Survey {
  readonly name?: string;
  readonly place?: string;
  readonly motion: Motion;
  readonly release?: Release;
  readonly zone?: Zone;
  readonly datum?: Datum;
  readonly shaft?: Dimension;
  readonly bore?: Dimension;
  /** Box face to throat shoulder. */
  readonly depth?: Dimension;
  readonly lantern?: {
    readonly wanted?: boolean;
    readonly width?: Length;
    readonly window?: Length;
    readonly land?: Length;
    readonly ringsThroatSide?: number;
  };
  /** Middle of the flush port. */
  readonly port?: { readonly fromFace?: Length; readonly fromThroat?: Length; readonly diameter?: Length };
  readonly follower?: { readonly nose?: Length; readonly gap?: Length };
  readonly studs?: {
    readonly count?: number;
    readonly thread?: string;
    readonly threadLeft?: Length;
    readonly propertyClass?: string;
    readonly nutCondition?: NutCondition;
  };
  readonly set?: {
    readonly rings?: number;
    readonly endRings?: EndRings;
    readonly spacer?: Length;
    readonly throatBush?: Length;
    readonly seated?: HowSeated;
    readonly section?: Length;
    readonly series?: StockSeries;
    readonly cut?: Cut;
    readonly angle?: Angle;
    readonly style?: string;
    readonly glandStress?: Stress;
  };
  readonly service?: ServiceOfBox;
  readonly flush?: {
    readonly fitted?: boolean;
    readonly supply?: GaugePressure;
    readonly set?: GaugePressure;
    readonly kind?: FlushService;
  };
  readonly condition?: Omit<ConditionQuestion, "motion" | "shaft" | "bore" | "section" | "boxDepth" | "lantern">;
  /** What else decides cautions and steps. */
  readonly hazards?: Omit<
    Case,
    "motion" | "release" | "zone" | "phase" | "fluids" | "temperature" | "pressure" | "style" | "family" | "sleeve" | "use" | "flush"
  >;
}

/** What the box has to hold back, and how hard the machine works it. */
interface ServiceOfBox {
  readonly fluids?: readonly string[];
  readonly phase?: "liquid" | "gas";
  readonly temperature?: Temperature;
  readonly pH?: number;
  readonly solids?: Service["solids"];
  readonly use?: Service["use"];
  readonly sleeve?: string;
  readonly rotation?: Rotation;
  readonly stroke?: Length;
  /** At the box itself, by gauge: a valve's line pressure, or a gauge at the flush tee of a pump. */
  readonly pressure?: GaugePressure;
  readonly suction?: GaugePressure;
  readonly discharge?: GaugePressure;
  readonly impeller?: BoxDesign;
  readonly impellerDiameter?: ImpellerDiameter;
}
