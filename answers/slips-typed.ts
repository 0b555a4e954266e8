import { slipsOfSection } from "@ringwright/core/section";
import { type PlausibleRange, type PlausibleRanges, slips, slipsAmong } from "@ringwright/core/uncertainty";
import type { Length, Typed } from "@ringwright/core/units";
import type { Warning } from "@ringwright/core/workings";
import { type Circumstances, likelyRange } from "./likely-range.ts";

/** A question as it was read, as far as a range hangs on it. */
interface Asked {
  readonly motion?: string;
  readonly parts?: readonly { readonly ratio?: number }[];
}
type TypedPaths = ReadonlyMap<string, Typed>;

const strokes: ReadonlySet<string | undefined> = new Set(["stroking", "rising-stem", "quarter-turn-stem"]);
/** Several readings of one dimension: the calculation holds them against each other and asks about their mean. */
const several = /^(.*?)\.?(?:[rR]eadings|planes)((?:\[\d+\])*)$/u;
/** Thinner than any liquid, Pa s: what leaks is a gas, and its density is none of a liquid. */
const gas = 5e-5;

/**
 * Asks about what looks mistyped in a question: ten times too much or too
 * little, or one unit for another, against what boxes have and against its
 * siblings. Where the calculation asks about the same thing, the one that
 * knows what was meant is said. Nothing is said twice and nothing is changed.
 *
 * @returns the warnings of the calculation with those about slips before them.
 */
export function withSlips(question: unknown, typed: TypedPaths, plausible: PlausibleRanges, said: readonly Warning[]): readonly Warning[] {
  const added = [
    ...siblings(question as Asked, typed, plausible),
    ...alone(question as Asked, typed, plausible),
    ...gapBetween(typed, plausible),
  ];
  const commas = thousands(question as Asked, typed, plausible);
  const asked = said.filter((warning) => warning.kind === "slip");
  if (added.length + commas.length === 0 && asked.length < 2) return said;
  const informed = asked.filter(({ says }) => !byRange.has(says.id));
  const slips = once([...commas, ...informed, ...added, ...asked]);
  return [...slips, ...said.filter((warning) => warning.kind !== "slip")];
}

/** Said of one value against its range; here the unit that was typed is known as well. */
const byRange: ReadonlySet<string> = new Set(["slip-meant", "slip-meant-either", "slip-unlikely"]);
/** What makes up the gap that is packed: one of them mistyped makes the others look wrong too. */
const across: ReadonlySet<string | undefined> = new Set(["shaft", "stem", "rod", "bore", "section", "set.section"]);

/** One question about each thing typed: of several, one that says what was meant, else the first. */
function once(found: readonly Warning[]): Iterable<Warning> {
  const kept = new Map<string | undefined, Warning>();
  const ofOneReading = new Set<string | undefined>();
  for (const slip of found) {
    const [, dimension, index] = several.exec(slip.input ?? "") ?? [];
    if (dimension && index) ofOneReading.add(dimension);
  }
  const meant = found.some((slip) => slip.suggestion !== undefined && across.has(slip.input));
  for (const slip of found) {
    const [, dimension, index] = several.exec(slip.input ?? "") ?? [];
    const about = dimension && !index ? dimension : slip.input;
    if (ofOneReading.has(about) || (meant && slip.suggestion === undefined && across.has(about))) continue;
    const before = kept.get(about);
    if (before === undefined || (before.suggestion === undefined && slip.suggestion !== undefined)) kept.set(about, slip);
  }
  return kept.values();
}

function circumstances({ motion }: Asked, typed: TypedPaths): Circumstances {
  return { motion, strokes: strokes.has(motion) || typed.has("stem") || typed.has("rod") };
}

function alone(question: Asked, typed: TypedPaths, plausible: PlausibleRanges): Warning[] {
  const known = circumstances(question, typed);
  const thin = (typed.get("viscosity")?.value ?? gas) < gas;
  const found: Warning[] = [];
  const believable = new Set<string>();
  const readings = new Map<string, Warning[]>();
  for (const [input, given] of typed) {
    const field = likelyRange(input, given, known);
    if (field === undefined) continue;
    const dimension = input.endsWith("]") ? several.exec(input)?.[1] : undefined;
    // Nought is what is not there, and no slip makes it.
    if (given.value === 0 || believed(plausible[field], given.value)) {
      if (dimension !== undefined) believable.add(dimension);
      continue;
    }
    if (thin && field === "density") continue;
    const asked = slips({ field, value: given.value, input, unit: given.unit }, plausible).map((slip) => asTyped(slip, given));
    if (dimension === undefined) found.push(...asked);
    else readings.set(dimension, [...(readings.get(dimension) ?? []), ...asked]);
  }
  for (const [dimension, asked] of readings) {
    if (believable.has(dimension)) found.push(...asked);
    // All of them: the dimension is asked about, by its first reading.
    else found.push(...asked.slice(0, 1).map((first) => ({ ...saying(first, { input: dimension }), input: dimension })));
  }
  return found;
}

/** The sentence shows what was typed as it was typed. */
function asTyped(slip: Warning, { typed }: Typed): Warning {
  return typed === "" ? slip : saying(slip, { given: typed });
}

function believed({ low, high }: PlausibleRange, value: number): boolean {
  return value >= low && value <= high;
}

/** Three digits after a single comma may be thousands. Where only what was read is likely, it is not asked. */
function thousands(question: Asked, typed: TypedPaths, plausible: PlausibleRanges): Warning[] {
  const found: Warning[] = [];
  const known = circumstances(question, typed);
  for (const [input, given] of typed) {
    const { value, kind, mayMean } = given;
    if (mayMean === undefined) continue;
    const field = likelyRange(input, given, known);
    if (field !== undefined && believed(plausible[field], value) && !believed(plausible[field], mayMean)) continue;
    const shown = { input, typed: given.typed, read: { value, kind }, other: { value: mayMean, kind } };
    found.push({ kind: "slip", input, given: value, suggestion: mayMean, says: { id: "comma-or-thousands", with: shown } });
  }
  return found;
}

/** What may have been meant by what was typed in a question that has no answer. */
export function meantByTyped(question: unknown, typed: TypedPaths, plausible: PlausibleRanges): Warning | undefined {
  return [...withSlips(question, typed, plausible, [])].find((slip) => slip.suggestion !== undefined);
}

/** Shaft and bore that are both likely, with a gap between them that is not. */
function gapBetween(typed: TypedPaths, plausible: PlausibleRanges): readonly Warning[] {
  const name = ["shaft", "stem", "rod"].find((one) => typed.has(one));
  const [shaft, bore] = [name && typed.get(name), typed.get("bore")];
  if (!name || !shaft || !bore || shaft.kind !== "length" || bore.kind !== "length" || bore.value <= shaft.value) return [];
  const gap = (bore.value - shaft.value) / 2;
  const found = slipsOfSection(shaft.value as Length, bore.value as Length, gap as Length, plausible);
  return found.map((slip) => (slip.input === "shaft" ? { ...saying(slip, { input: name }), input: name } : slip));
}

/** A question with other words in its sentence. */
function saying(warning: Warning, words: Readonly<Record<string, string>>): Warning {
  const { says } = warning;
  return { ...warning, says: { ...says, with: { ...says.with, ...words } } };
}

/** The rings of a set, and the gaps round a shaft, beside one another; a lantern ring or a spacer may be any length. */
function siblings({ parts = [] }: Asked, typed: TypedPaths, plausible: PlausibleRanges): readonly Warning[] {
  const rings = parts.flatMap(({ ratio }, i) => (ratio === 0 ? [] : [`parts[${i}].height`]));
  return [rings, ...clockGaps].flatMap((paths) => {
    const inputs = paths.filter((path) => typed.has(path));
    if (inputs.length < 2) return [];
    return slipsAmong({ readings: inputs.map((path) => typed.get(path)?.value ?? 0), inputs }, plausible);
  });
}

const clockGaps: readonly (readonly string[])[] = ["clockGaps", "condition.clockGaps"].map((list) =>
  [0, 1, 2, 3].map((i) => `${list}[${i}]`),
);
