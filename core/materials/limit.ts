import type { Citation } from "../sources/index.ts";
import { inUnit, quantity, type Temperature } from "../units/index.ts";
import { type Rule, rule, type Shown } from "../workings/index.ts";
import { citeFact, noFigure } from "./cite-fact.ts";
import type { BandOf, Confidence, Fact, Figure, Lubricant } from "./facts.ts";
import type { Compared } from "./reason.ts";

/** A limit made ready for comparing: no `null`, no looking up, nothing to build. */
export interface Limit {
  readonly kind: Compared["kind"];
  /** Infinite when no figure is known. */
  readonly value: number;
  /** From here on it is worth looking at. */
  readonly warn: number;
  /** The most that any source gives. */
  readonly top: number;
  readonly shown: Shown;
  readonly topShown: Shown;
  /** Says that the style itself has no figure. */
  readonly missing: boolean;
  readonly citation: Citation;
  readonly seen: boolean;
  readonly confidence: Confidence;
  /** The step of the workings that prints the margin. */
  readonly rule: Rule;
}

interface Kind {
  readonly kind: Compared["kind"];
  readonly symbol: string;
  readonly unit: string;
  readonly decimals: number;
}
export const kindsOfLimit = {
  temperature: { kind: "temperature", symbol: "T", unit: "K", decimals: 0 },
  speed: { kind: "speed", symbol: "v", unit: "m/s", decimals: 1 },
  pressure: { kind: "pressure", symbol: "p", unit: "Pa", decimals: 1 },
  ph: { kind: "number", symbol: "pH", unit: "1", decimals: 1 },
  hardness: { kind: "number", symbol: "H", unit: "1", decimals: 0 },
} as const satisfies Record<string, Kind>;

export function shownAs(of: Kind, value: number): Shown {
  return of.kind === "number" ? value : { value, kind: of.kind, decimals: of.decimals };
}

/** Rule for the margin of one style, `limit − given` or, for a least allowed value, `given − limit`. */
export function marginRule(id: string, of: Kind, input: string, citation: Citation, least = false): Rule {
  const { symbol, unit } = of;
  const limit = least ? `${symbol}_min` : `${symbol}_max`;
  return rule({
    id,
    symbol: `Δ${symbol}`,
    expression: least ? `${symbol} − ${limit}` : `${limit} − ${symbol}`,
    unit,
    inputs: [
      { symbol, name: input, unit },
      { symbol: limit, name: `${input}-limit`, unit },
    ],
    citation,
  });
}

interface Sources {
  readonly id: string;
  readonly input: string;
  readonly of: Kind;
  readonly least?: boolean;
}

function limitFrom(
  fact: Fact,
  value: number | null,
  warn: number,
  top: number,
  missing: boolean,
  { id, input, of, least }: Sources,
): Limit {
  const known = value ?? (least ? -Infinity : Infinity);
  const citation = value === null ? noFigure : citeFact(fact);
  return {
    kind: of.kind,
    value: known,
    warn,
    top,
    shown: shownAs(of, known),
    topShown: shownAs(of, top),
    missing,
    citation,
    seen: fact.seen,
    confidence: fact.confidence,
    rule: marginRule(id, of, input, citation, least),
  };
}

/** Speed or pressure: looked at above the careful figure, stopped above the most that any source gives. */
export function softLimit(figure: Figure, as: Sources): Limit {
  const value = figure.value ?? Infinity;
  return limitFrom(figure, figure.value, value, Math.max(figure.spread?.[1] ?? value, value), figure.value === null, as);
}

/** Nine tenths of a temperature limit, counted in °C as the trade does; below 0 °C no such line. */
function warnLine(limit: Temperature, share: number): number {
  const celsius = inUnit("temperature", limit, "degC");
  return celsius > 0 ? quantity("temperature", celsius * share, "degC") : limit;
}

/** The lowest of what a style and its lubricants bear in one atmosphere. */
export function heatLimit(
  own: Figure<Temperature>,
  lubricants: readonly Lubricant[],
  warnShare: number,
  airReaches: boolean,
  id: string,
): Limit {
  let lowest = own;
  for (const { temperature, burns } of lubricants) {
    if (burns && !airReaches) continue;
    if (temperature.value !== null && temperature.value < (lowest.value ?? Infinity)) lowest = temperature;
  }
  const value = lowest.value;
  const warn = value === null ? Infinity : Math.min(lowest.warnAt ?? Infinity, warnLine(value, warnShare));
  const top = Math.max(lowest.spread?.[1] ?? -Infinity, value ?? Infinity);
  const missing = own.value === null;
  return limitFrom(lowest, value, warn, top, missing, { id, input: "temperature", of: kindsOfLimit.temperature });
}

/** The least temperature of a style. */
export function coldLimit(own: Figure<Temperature>, id: string): Limit {
  const value = own.value ?? -Infinity;
  return limitFrom(own, own.value, value, own.spread?.[0] ?? value, own.value === null, {
    id,
    input: "temperature",
    of: kindsOfLimit.temperature,
    least: true,
  });
}

/** One end of the acidity that a style and its lubricants bear. */
export function acidityLimit(own: Figure, end: "min" | "max", lubricants: readonly Lubricant[], margin: number, id: string): Limit {
  const least = end === "min";
  let tightest: Fact = own;
  let value = own.value;
  let top = own.spread ? own.spread[least ? 0 : 1] : value;
  for (const { pH } of lubricants) {
    const bound = (pH as BandOf)[end];
    if (bound === null || (value !== null && (least ? bound <= value : bound >= value))) continue;
    tightest = pH;
    value = bound;
    top = bound;
  }
  const known = value ?? (least ? -Infinity : Infinity);
  return limitFrom(tightest, value, least ? known + margin : known - margin, top ?? known, own.value === null, {
    id,
    input: "pH",
    of: kindsOfLimit.ph,
    least,
  });
}
