import type { Citation } from "../sources/index.ts";
import { quantity, type Stress } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";

/** Sets whose load a printed sheet gives. */
export const stemSets = ["formed-graphite", "braided-graphite"] as const;
export type StemSet = (typeof stemSets)[number];

interface Span {
  readonly low: number;
  readonly high: number;
}

/** data/limits/stem-load.json, in the units it is printed in. */
export interface StemFile {
  readonly sets: readonly {
    readonly set: string;
    readonly floorStress: { readonly value: number; readonly unit: string };
    readonly timesPressure: number;
    readonly citation: Citation;
  }[];
  readonly loadLoss: {
    readonly strokes: number;
    readonly installed: number;
    readonly eachTamped: Span;
    readonly rammed: Span;
    readonly citation: Citation;
  };
  readonly again: { readonly strokes: Span; readonly days: number; readonly citation: Citation };
}

/** What valve stem sets are loaded to, and what they keep of it. */
export interface StemFacts {
  readonly sets: ReadonlyMap<
    string,
    { readonly floorStress: Stress; readonly floorRule: Rule; readonly timesPressure: number; readonly timesRule: Rule }
  >;
  /** Share of the load left after `strokes` strokes. */
  readonly loadLoss: {
    readonly strokes: number;
    readonly eachTamped: Span;
    readonly rammed: Span;
    readonly citation: Citation;
  };
  /** When the nuts are tightened again: after so many strokes, and after so many days in service. */
  readonly again: StemFile["again"];
}

function share(of: number, { low, high }: Span): Span {
  return { low: low / of, high: high / of };
}

/**
 * Turns the printed loads of stem sets into what `stemLoad` looks up.
 *
 * Units: as the file says; SI in the result.
 * Range: data/limits/stem-load.json; throws a RangeError for a unit it does not know: a mistake in the data.
 * Source: each row's own citation.
 * @example readStemFacts(file).sets.get("formed-graphite") // 26.2 MPa and 1.5 times the pressure
 */
export function readStemFacts({ sets, loadLoss, again }: StemFile): StemFacts {
  return {
    sets: new Map(
      sets.map((row) => [
        row.set,
        {
          floorStress: quantity("stress", row.floorStress.value, row.floorStress.unit),
          timesPressure: row.timesPressure,
          floorRule: rule({
            id: "stem-floor-stress",
            symbol: "σ_0",
            expression: `σ_0(${row.set})`,
            unit: "Pa",
            inputs: [],
            citation: row.citation,
          }),
          timesRule: rule({
            id: "stem-times-pressure",
            symbol: "m",
            expression: `m(${row.set})`,
            unit: "1",
            inputs: [],
            citation: row.citation,
          }),
        },
      ]),
    ),
    loadLoss: {
      strokes: loadLoss.strokes,
      eachTamped: share(loadLoss.installed, loadLoss.eachTamped),
      rammed: share(loadLoss.installed, loadLoss.rammed),
      citation: loadLoss.citation,
    },
    again,
  };
}
