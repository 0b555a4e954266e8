import type { Citation } from "../sources/index.ts";
import type { PressureDifference } from "../units/index.ts";

/** Where the box stands to the flow through the pump: what its pressure is worked out from. */
export const boxDesigns = [
  "balance-holes-back-rings",
  "back-vanes",
  "plain-closed",
  "double-suction",
  "two-stage-back-to-back-low",
  "two-stage-back-to-back-high",
  "multistage-low-end",
  "multistage-high-end-balance-line",
  "progressing-cavity",
  "progressing-cavity-reversed",
  "overhung-unknown",
  "unknown",
] as const;
export type BoxDesign = (typeof boxDesigns)[number];

export const impellerDiameters = ["maximum", "minimum"] as const;
export type ImpellerDiameter = (typeof impellerDiameters)[number];

/** One published figure: a share of the differential, or a fixed pressure above suction. */
export interface BoxPressureFigure {
  readonly factor?: number;
  readonly above?: PressureDifference;
  readonly citation: Citation;
}

/** What is published on one design. Lives in data/limits/box-pressure.json. */
export interface BoxDesignFacts {
  readonly design: BoxDesign;
  readonly impellerDiameter?: ImpellerDiameter;
  readonly typical: BoxPressureFigure;
  readonly published: readonly BoxPressureFigure[];
}

export interface BoxPressureFacts {
  readonly designs: readonly BoxDesignFacts[];
}

/** What is published on a design; where the impeller's diameter makes no difference, it is ignored. */
export function factsOf(facts: BoxPressureFacts, design: BoxDesign, diameter: ImpellerDiameter | undefined): BoxDesignFacts | undefined {
  const ofDesign = facts.designs.filter((entry) => entry.design === design);
  return (
    ofDesign.find((entry) => diameter !== undefined && entry.impellerDiameter === diameter) ??
    ofDesign.find((entry) => entry.impellerDiameter === undefined)
  );
}
