import { slipsOfSection } from "@ringwright/core/section";
import { type PlausibleField, type PlausibleRanges, slips, slipsAmong } from "@ringwright/core/uncertainty";
import type { Length, Typed } from "@ringwright/core/units";
import type { Warning } from "@ringwright/core/workings";

/** Fields of questions that are a dimension or reading of which a likely range is known. */
const likely: Readonly<Record<string, PlausibleField>> = {
  shaft: "shaft",
  stem: "shaft",
  rod: "shaft",
  diameter: "shaft",
  bore: "bore",
  depth: "depth",
  packedLength: "depth",
  section: "section",
  lanternWidth: "lantern-width",
  portDiameter: "port",
  clearance: "clearance",
  rotation: "rotation",
  temperature: "temperature",
  suction: "pressure",
  discharge: "pressure",
  boxPressure: "pressure",
  boxPressureGauge: "pressure",
  measuredGauge: "pressure",
};

/**
 * Asks about what looks mistyped in a question: ten times too much or too
 * little, or an inch for a millimetre, against what boxes have and against its
 * siblings. Where the calculation asks about the same field, the one that knows
 * what was meant is said.
 *
 * @returns the warnings of the calculation with those about slips before them.
 */
export function withSlips(typed: ReadonlyMap<string, Typed>, plausible: PlausibleRanges, said: readonly Warning[]): readonly Warning[] {
  const asked = new Map<string | undefined, Warning>();
  for (const warning of said) if (warning.kind === "slip") asked.set(warning.input, warning);
  const added = new Map<string | undefined, Warning>();
  for (const slip of [...alone(typed, plausible), ...gapBetween(typed, plausible), ...parts(typed, plausible)]) {
    const other = asked.get(slip.input);
    const better = other === undefined || (other.suggestion === undefined && slip.suggestion !== undefined);
    if (better && !added.has(slip.input)) added.set(slip.input, slip);
  }
  if (added.size === 0) return said;
  return [...added.values(), ...said.filter((warning) => warning.kind !== "slip" || !added.has(warning.input))];
}

function alone(typed: ReadonlyMap<string, Typed>, plausible: PlausibleRanges): Warning[] {
  return [...typed].flatMap(([input, { kind, value }]) => {
    const field = Object.hasOwn(likely, input) ? likely[input] : undefined;
    return field !== undefined && plausible[field].kind === kind ? slips({ field, value, input }, plausible) : [];
  });
}

/** Shaft and bore that are both likely, with a gap between them that is not. */
function gapBetween(typed: ReadonlyMap<string, Typed>, plausible: PlausibleRanges): readonly Warning[] {
  const [shaft, bore] = [typed.get("shaft"), typed.get("bore")];
  if (shaft?.kind !== "length" || bore?.kind !== "length" || bore.value <= shaft.value) return [];
  return slipsOfSection(shaft.value as Length, bore.value as Length, ((bore.value - shaft.value) / 2) as Length, plausible);
}

/** The parts of a set beside one another. */
function parts(typed: ReadonlyMap<string, Typed>, plausible: PlausibleRanges): readonly Warning[] {
  const inputs = [...typed.keys()].filter((path) => /^parts\[\d+\]\.height$/u.test(path));
  return slipsAmong({ readings: inputs.map((path) => typed.get(path)?.value ?? 0), inputs }, plausible);
}
