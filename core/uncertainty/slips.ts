import { inUnit, type Kind, type Kinds, quantity } from "../units/index.ts";
import type { Warning } from "../workings/index.ts";
import type { PlausibleField, PlausibleRanges } from "./plausible.ts";

type Pairs = readonly (readonly [string, string])[];

const ofPressure: Pairs = [
  ["bar", "psi"],
  ["bar", "kPa"],
];
/** Units whose bare numbers are taken for one another. */
const confused: Partial<Readonly<Record<Kind, Pairs>>> = {
  length: [
    ["mm", "in"],
    ["m", "mm"],
    ["mm", "um"],
  ],
  pressure: ofPressure,
  "absolute-pressure": ofPressure,
  "pressure-difference": ofPressure,
  stress: [
    ["MPa", "psi"],
    ["MPa", "bar"],
  ],
  temperature: [["degC", "degF"]],
  "temperature-difference": [["degC", "degF"]],
  rotation: [["rpm", "rad/s"]],
  speed: [["m/s", "ft/min"]],
  torque: [
    ["N*m", "ft*lbf"],
    ["N*m", "in*lbf"],
  ],
  flow: [
    ["mL/min", "L/min"],
    ["L/min", "gal/min"],
  ],
  volume: [["mL", "L"]],
  power: [["W", "kW"]],
  viscosity: [["mPa*s", "Pa*s"]],
  density: [["kg/m3", "g/cm3"]],
  "heat-capacity": [["J/(kg*K)", "kJ/(kg*K)"]],
};

/**
 * Values that may have been meant instead of one that was typed, those that
 * `fits` accepts: tenfold more or less, or the other of two units that are
 * taken for one another (mm and inch, bar and psi, °C and °F, rpm and rad/s).
 * Where the unit it was typed in is known, only that one can have been the wrong one.
 *
 * Units: SI of the kind.
 * Range: any finite value.
 * Source: Thimbleby and Cairns, J. R. Soc. Interface 7 (2010), on errors "out by ten"; the list of units is our own proposal.
 * @example meantInstead("length", 2.75e-3 as Length, (meant) => meant > 0.05) // [0.06985]
 */
export function meantInstead<K extends Kind>(kind: K, value: Kinds[K], fits: (meant: number) => boolean, unit?: string): readonly number[] {
  // Tenfold slips are made on the scale that is typed, which for temperatures is seldom the absolute one.
  const scale = unit ?? "degC";
  const tenfold =
    kind === "temperature"
      ? [quantity(kind, inUnit(kind, value, scale) / 10, scale), quantity(kind, inUnit(kind, value, scale) * 10, scale)]
      : [value / 10, value * 10];
  const meant = tenfold.filter(fits);
  for (const [one, other] of (confused[kind] ?? []).flatMap(([a, b]) => [[a, b] as const, [b, a] as const])) {
    if (unit !== undefined && unit !== one) continue;
    const swapped = quantity(kind, inUnit(kind, value, one), other);
    // Ten of one may be one of the other: the same is not offered twice.
    if (fits(swapped) && !meant.some((before) => Math.abs(swapped - before) <= 1e-9 * Math.abs(swapped))) meant.push(swapped);
  }
  return meant;
}

const none: readonly Warning[] = [];

/**
 * Asks about a value that no box is likely to have: names what may have been
 * meant, when a slip explains it. Never blocks.
 *
 * Units: SI of the field's kind.
 * Range: any finite value; inside the plausible range nothing is said.
 * Source: plausible ranges are our own proposal.
 * @example slips({ field: "shaft", value: quantity("length", 1.75, "mm") }, facts.plausible) // one warning, suggesting 44.45 mm
 */
export function slips(
  given: { readonly field: PlausibleField; readonly value: number; readonly input?: string; readonly unit?: string },
  plausible: PlausibleRanges,
): readonly Warning[] {
  const { field, value, input = field, unit } = given;
  const { kind, low, high } = plausible[field];
  if (value >= low && value <= high) return none;
  const shown = { input, given: { value, kind } };
  const middle = low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
  const distance = (meant: number) => Math.abs(low > 0 ? Math.log(meant / middle) : meant - middle);
  const within = (other: number) => other >= low && other <= high;
  const meant = [...meantInstead(kind, value as never, within, unit)].sort((a, b) => distance(a) - distance(b));
  const [likely, other] = meant;
  if (likely === undefined) {
    return [
      {
        kind: "slip",
        input,
        given: value,
        says: { id: "slip-unlikely", with: { ...shown, low: { value: low, kind }, high: { value: high, kind } } },
      },
    ];
  }
  const suggestion = { value: likely, kind };
  return [
    {
      kind: "slip",
      input,
      given: value,
      suggestion: likely,
      says:
        other === undefined
          ? { id: "slip-meant", with: { ...shown, suggestion } }
          : { id: "slip-meant-either", with: { ...shown, suggestion, other: { value: other, kind } } },
    },
  ];
}

/** Readings of one dimension this close to a slip's factor are asked about, whatever the dimension. */
const near = Math.log(1.15);

/**
 * Asks about readings of one dimension that differ from their siblings as a
 * misplaced point or an inch taken for a millimetre would make them.
 *
 * Units: m.
 * Range: lengths from 0; one reading alone has no siblings and nothing is said.
 * Source: the width of 15 % about each factor is our own proposal.
 * @example slipsAmong({ readings: [45.02, 45.01, 4.5].map((mm) => quantity("length", mm, "mm")) }, facts.plausible) // asks about readings[2]
 */
export function slipsAmong(
  given: { readonly readings: readonly number[]; readonly field?: PlausibleField; readonly inputs?: readonly string[] },
  plausible: PlausibleRanges,
): readonly Warning[] {
  const { readings, field, inputs } = given;
  if (readings.length < 2) return none;
  let low = Infinity;
  let high = -Infinity;
  for (const reading of readings) {
    low = Math.min(low, reading);
    high = Math.max(high, reading);
  }
  if (low <= 0 || high / low < 5) return none;
  // Readings that are likely in themselves are believed before the others; of two that are not, the first.
  const range = field && plausible[field];
  const likely = range ? readings.filter((reading) => reading >= range.low && reading <= range.high) : [];
  const believed = likely.length > 0 ? likely : readings;
  const sorted = [...believed].sort((a, b) => a - b);
  const reference = (believed.length === 2 ? believed[0] : sorted[Math.floor((sorted.length - 1) / 2)]) ?? low;
  const inch = quantity("length", 1, "in") / quantity("length", 1, "mm");
  return readings.flatMap((value, i): Warning[] => {
    const factor = [10, 0.1, inch, 1 / inch].find((one) => Math.abs(Math.log(value / reference / one)) < near);
    if (factor === undefined) return [];
    const input = inputs?.[i] ?? `readings[${i}]`;
    const kind = "length";
    const suggestion = value / factor;
    const shown = { input, given: { value, kind }, suggestion: { value: suggestion, kind }, others: { value: reference, kind } };
    return [{ kind: "slip", input, given: value, suggestion, says: { id: "slip-against-siblings", with: shown } }];
  });
}
