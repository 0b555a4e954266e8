import type { Length } from "../units/index.ts";
import {
  type Answer,
  begin,
  notWithin,
  outside,
  type Range,
  type Refused,
  refuse,
  type Uncertain,
  type Workings,
  within,
} from "../workings/index.ts";
import { coverageFactor } from "./coverage.ts";
import type { How, Instruments } from "./instruments.ts";
import * as rules from "./measured-rules.ts";
import type { PlausibleField, PlausibleRanges } from "./plausible.ts";
import { slips, slipsAmong } from "./slips.ts";

/** Facts that measured values rest on. */
export interface UncertaintyFacts {
  readonly instruments: Instruments;
  readonly plausible: PlausibleRanges;
}

export interface Measured {
  readonly mean: Uncertain<Length>;
  readonly standardUncertainty: Length;
  /** Largest less smallest reading. */
  readonly spread: Length;
  /** Half-width of the interval that holds the mean in about 95 of 100 cases. */
  readonly expanded: Length;
  readonly count: number;
  /** Largest difference of diameter within one plane. */
  readonly outOfRound?: Length;
  /** Largest difference between the means of two planes. */
  readonly taper?: Length;
}

/**
 * One dimension from one or several readings: mean, spread, and the standard
 * uncertainty from their scatter, the step of the instrument and the way they
 * were taken. Readings by plane (each with its directions) also give
 * out-of-round and taper.
 *
 *   u² = s²/n + r²/12 + a²/3
 *
 * s standard deviation of the readings (nothing with one reading), r
 * resolution, a limit of error of the way it was taken (nothing when `how` is
 * left out and a resolution is given).
 *
 * Units: m.
 * Range: readings and resolution from 0 to 1000 m; at least one reading; refused outside. A reading ten times another, or an inch taken for a millimetre, is asked about.
 * Source: JCGM 100:2008, 4.2, 4.3.7 and F.2.2.1; limits of error are our own proposal.
 * @example measured({ readings: [quantity("length", 50.01, "mm"), quantity("length", 49.99, "mm")], resolution: quantity("length", 0.01, "mm") }, facts)
 */
export function measured(
  given: {
    readonly readings?: readonly Length[];
    readonly planes?: readonly (readonly Length[])[];
    readonly resolution?: Length;
    readonly how?: How;
    readonly field?: PlausibleField;
  },
  facts: UncertaintyFacts,
): Answer<Measured> {
  const { planes } = given;
  if (given.readings && planes) return refuse({ kind: "impossible", input: "planes", says: { id: "measured-readings-and-planes" } });
  const readings = given.readings ?? planes?.flat() ?? [];
  const refused = unusable(readings, given.readings ? undefined : planes, given.resolution);
  if (refused) return refused;

  const work = begin();
  const count = readings.length;
  const first = readings[0] ?? (0 as Length);
  let offsets = 0;
  let low = first;
  let high = first;
  for (const reading of readings) {
    offsets += reading - first;
    if (reading < low) low = reading;
    if (reading > high) high = reading;
  }
  const mean = first + offsets / count;
  let squares = 0;
  for (const reading of readings) squares += (reading - mean) ** 2;

  const scatter = count > 1 ? Math.sqrt(squares / (count - 1)) : 0;
  const repeat = count > 1 ? work.step(rules.repeatability, [scatter, count], scatter / Math.sqrt(count)) : 0;
  const how = given.how ?? (given.resolution === undefined ? "unknown" : undefined);
  const { step, limit } = wayOfMeasuring(work, given.resolution, how, given.how === undefined, facts.instruments);
  const u = Math.sqrt(repeat * repeat + step * step + limit * limit) as Length;
  work.step(rules.combined, [repeat, step, limit], u);
  work.step(rules.mean, [mean * count, count], mean as Length, u);
  const spread = work.step(rules.spread, [high, low], (high - low) as Length);
  const degrees = repeat === 0 ? Number.POSITIVE_INFINITY : ((count - 1) * u ** 4) / repeat ** 4;
  const factor = coverageFactor(degrees);
  const expanded = work.step(rules.expanded, [factor, u], (factor * u) as Length);

  ask(work, given, readings, mean, facts.plausible);
  return work.found({
    mean: { mean: mean as Length, u },
    standardUncertainty: u,
    spread,
    expanded,
    count,
    ...(planes ? form(work, planes) : {}),
  });
}

const range: Range = { min: 0, max: 1000 };

function unusable(
  readings: readonly Length[],
  planes: readonly (readonly Length[])[] | undefined,
  resolution: Length | undefined,
): Refused | undefined {
  if (readings.length === 0) return refuse({ kind: "missing", input: "readings", says: { id: "measured-no-readings" } });
  const empty = planes?.findIndex((plane) => plane.length === 0) ?? -1;
  if (empty >= 0) return refuse({ kind: "missing", input: `planes[${empty}]`, says: { id: "measured-no-readings" } });
  const refused = readings.every((value) => within(range, value)) ? undefined : readingOutside(readings, planes);
  return refused ?? (resolution === undefined ? undefined : notWithin("resolution", resolution, range, "m"));
}

/** Names the reading that no box has. */
function readingOutside(readings: readonly Length[], planes: readonly (readonly Length[])[] | undefined): Refused | undefined {
  return outside(
    planes
      ? planes.flatMap((plane, i) => plane.map((value, j) => [`planes[${i}][${j}]`, value, range, "m"] as const))
      : readings.map((value, i) => [`readings[${i}]`, value, range, "m"] as const),
  );
}

/** The two parts that repeating does not make smaller: the step of the scale, and the way it was taken. */
function wayOfMeasuring(
  work: Workings,
  resolution: Length | undefined,
  how: How | undefined,
  notSaid: boolean,
  instruments: Instruments,
): { readonly step: number; readonly limit: number } {
  const instrument = how === undefined ? undefined : instruments[how];
  const width = resolution ?? (instrument ? work.step(rules.usualResolution, [], instrument.resolution) : (0 as Length));
  const step = work.step(rules.resolution, [width], (width / Math.sqrt(12)) as Length);
  if (how === "unknown") work.warn({ kind: "gap", input: "how", says: { id: "how-not-known" } });
  else if (notSaid) work.warn({ kind: "gap", input: "how", says: { id: "how-not-said" } });
  if (!instrument) return { step, limit: 0 };
  const half = work.step(rules.limitOfError, [], instrument.limitOfError);
  return { step, limit: work.step(rules.method, [half], (half / Math.sqrt(3)) as Length) };
}

/** Asks about readings that look mistyped; about their mean only where they agree among themselves. */
function ask(
  work: Workings,
  given: { readonly planes?: readonly (readonly Length[])[]; readonly field?: PlausibleField },
  readings: readonly Length[],
  mean: number,
  plausible: PlausibleRanges,
): void {
  const { planes, field } = given;
  const inputs = planes?.flatMap((plane, i) => plane.map((_, j) => `planes[${i}][${j}]`));
  const among = slipsAmong({ readings, ...(field ? { field } : {}), ...(inputs ? { inputs } : {}) }, plausible);
  for (const warning of among) work.warn(warning);
  if (!field || among.length > 0) return;
  for (const warning of slips({ field, value: mean, input: planes ? "planes" : "readings" }, plausible)) work.warn(warning);
}

function form(work: Workings, planes: readonly (readonly Length[])[]): { outOfRound: Length; taper: Length } {
  let worst = 0;
  let smallest = Number.POSITIVE_INFINITY;
  let largest = 0;
  for (const plane of planes) {
    worst = Math.max(worst, Math.max(...plane) - Math.min(...plane));
    const mean = plane.reduce((sum: number, value) => sum + value, 0) / plane.length;
    smallest = Math.min(smallest, mean);
    largest = Math.max(largest, mean);
  }
  return {
    outOfRound: work.step(rules.outOfRound, [planes.length], worst as Length),
    taper: work.step(rules.taper, [largest, smallest], (largest - smallest) as Length),
  };
}
