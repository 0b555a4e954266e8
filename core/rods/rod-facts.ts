import type { Citation } from "../sources/index.ts";
import { type GaugePressure, type Length, quantity, type TemperatureDifference } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";

interface Printed {
  readonly value: number;
  readonly unit: string;
}

/** data/limits/rods.json, in the units it is printed in. */
export interface RodFile {
  readonly sections: { readonly low: number; readonly high: number; readonly citation: Citation };
  readonly stroke: { readonly citation: Citation };
  readonly gasRod: { readonly perDiameter: number; readonly most: Printed; readonly mostAbove: Printed; readonly citation: Citation };
  readonly plunger: { readonly most: Printed; readonly citation: Citation };
  readonly warmth: Printed & { readonly citation: Citation };
}

export interface RodFacts {
  /** Height of a set in sections. */
  readonly sections: RodFile["sections"];
  readonly stroke: Citation;
  readonly gasRod: { readonly perDiameter: number; readonly most: Length; readonly mostAbove: GaugePressure; readonly rule: Rule };
  readonly plunger: { readonly most: Length; readonly rule: Rule };
  /** How much warmer than the liquid the box may be found. */
  readonly warmth: { readonly value: TemperatureDifference; readonly rule: Rule };
}

/**
 * Turns the printed limits of rods and plungers into what `rodSet` looks up.
 *
 * Units: as the file says; SI in the result.
 * Range: data/limits/rods.json; throws a RangeError for a unit it does not know: a mistake in the data.
 * Source: each row's own citation.
 * @example readRodFacts(file).sections // 3 to 5
 */
export function readRodFacts(file: RodFile): RodFacts {
  const { gasRod, plunger, warmth } = file;
  return {
    sections: file.sections,
    stroke: file.stroke.citation,
    gasRod: {
      perDiameter: gasRod.perDiameter,
      most: quantity("length", gasRod.most.value, gasRod.most.unit),
      mostAbove: quantity("pressure", gasRod.mostAbove.value, gasRod.mostAbove.unit),
      rule: rule({
        id: "gas-rod-undersize-limit",
        symbol: "w_max",
        expression: "min(w_d · d, w_p)",
        unit: "m",
        inputs: [
          { symbol: "w_d", name: "undersize-per-diameter", unit: "1" },
          { symbol: "d", name: "rod", unit: "m" },
          { symbol: "w_p", name: "undersize-at-high-pressure", unit: "m" },
        ],
        citation: gasRod.citation,
      }),
    },
    plunger: {
      most: quantity("length", plunger.most.value, plunger.most.unit),
      rule: rule({
        id: "plunger-undersize-limit",
        symbol: "w_max",
        expression: "w_max",
        unit: "m",
        inputs: [],
        citation: plunger.citation,
      }),
    },
    warmth: {
      value: quantity("temperature-difference", warmth.value, warmth.unit),
      rule: rule({ id: "rod-box-warmth", symbol: "ΔT", expression: "ΔT", unit: "K", inputs: [], citation: warmth.citation }),
    },
  };
}
