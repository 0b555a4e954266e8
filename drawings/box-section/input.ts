import type { Family } from "@ringwright/core/materials";
import type { GaugePressure, Length } from "@ringwright/core/units";
import type { Text } from "../shapes.ts";

/** A length to be drawn and dimensioned: in blue when a person measured it, in ink when it was worked out. */
export interface Stated<Q extends number = Length> {
  readonly value: Q;
  readonly by: "measured" | "worked";
}

/** One part of the set. Distances are from the throat shoulder towards the gland, at finger-tight. */
export interface SetPart {
  readonly kind: "ring" | "end-ring" | "spacer" | "bush";
  /** Counted from the throat; rings and end rings have one. */
  readonly number?: number;
  readonly from: Length;
  readonly to: Length;
  /** Which weave; the box's family where it is not given. */
  readonly family?: Family;
}

export type PortState = "open" | "part-closed" | "shut";

/** A box as it is drawn. What is left out is drawn by convention, not dimensioned, and the description says so. */
export interface BoxDrawing {
  readonly title: Text;
  readonly subtitle?: Text;
  /** Decides what the wet end is called: pump side where a shaft turns or strokes in a pump, product side elsewhere. */
  readonly wetEnd?: "pump-side" | "product-side";
  /** Diameter that the rings run on: the worn sleeve where there is one. */
  readonly shaft: Stated;
  /** A sleeve on the shaft; `bore` is the bare shaft's diameter under it. */
  readonly sleeve?: { readonly bore?: Stated };
  readonly bore: Stated;
  /** Box face to throat shoulder. */
  readonly depth: Stated;
  readonly parts: readonly SetPart[];
  readonly family?: Family;
  readonly lantern?: { readonly from: Length; readonly to: Length /** Width less both lands. */; readonly window: Length };
  readonly port?: {
    /** Centre, from the throat shoulder. */
    readonly fromThroat: Stated;
    readonly diameter: Stated;
    readonly flush?: Stated<GaugePressure>;
    readonly state?: PortState;
  };
  readonly throat?: {
    /** Radial gap round the shaft at the throat. */
    readonly gap?: Length;
    /** A bush in the throat: its wall. */
    readonly bush?: { readonly wall: Length };
  };
  readonly follower?: {
    /** Flange to box face. */
    readonly gap?: Stated;
    /** Length of the nose, measured off the machine. */
    readonly nose?: Stated;
    readonly flange?: Length;
    /** Radial clearance on the shaft. */
    readonly clearance?: Length;
  };
  readonly studs?: {
    /** As people call it: M12, 1/2-13. Printed instead of the diameter. */
    readonly thread?: string;
    readonly diameter: Length;
    readonly count: number /** Thread that the nut can still go down. */;
    readonly left?: Stated;
  };
  /** The follower moved on from finger-tight. */
  readonly moved?: {
    readonly gland: Length;
    /** Share of the movement that the lantern ring makes. */
    readonly share: number;
  };
}
