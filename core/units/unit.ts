import type { Kind, Kinds } from "./quantity.ts";

/**
 * The closed list of units, and the only conversion factors in the program.
 * A factor is an exact fraction: inch 25.4 mm, pound 0.45359237 kg, standard
 * gravity 9.80665 m/s2, US gallon 231 in3 (definitions, NIST SP 811 app. B).
 */
export interface Unit {
  /** Our spelling: `*`, `/`, digits as powers. */
  readonly symbol: string;
  /** The kinds of quantity this unit can measure. */
  readonly kinds: readonly Kind[];
  /** One of this unit in SI, as numerator over denominator. */
  readonly factor: readonly [number, number];
  /** For temperatures: what is added to the reading before the factor. */
  readonly zero?: number;
  /** How it is written for people, where that differs from the symbol. */
  readonly shown?: string;
  /** What people write, compared after tidying (see `tidyUnit`). */
  readonly also: readonly string[];
}

const pressureKinds = ["pressure", "absolute-pressure", "pressure-difference", "stress"] as const;
const temperatureKinds = ["temperature", "temperature-difference"] as const;

/** Pounds-force in newtons, 0.45359237 kg times 9.80665 m/s2, as an exact fraction. */
const lbf = [8896443230521, 2000000000000] as const;

const list: readonly Unit[] = [
  { symbol: "m", kinds: ["length"], factor: [1, 1], also: ["metre", "metres", "meter", "meters"] },
  { symbol: "mm", kinds: ["length"], factor: [1, 1000], also: ["millimetre", "millimetres", "millimeter", "millimeters"] },
  { symbol: "cm", kinds: ["length"], factor: [1, 100], also: ["centimetre", "centimetres", "centimeter", "centimeters"] },
  { symbol: "um", kinds: ["length"], factor: [1, 1000000], shown: "µm", also: ["µm", "micron", "microns", "micrometre", "micrometer"] },
  { symbol: "in", kinds: ["length"], factor: [127, 5000], also: ["inch", "inches", "in.", '"'] },
  { symbol: "thou", kinds: ["length"], factor: [127, 5000000], also: ["thousandths"] },
  { symbol: "ft", kinds: ["length"], factor: [381, 1250], also: ["foot", "feet", "'"] },
  { symbol: "m2", kinds: ["area"], factor: [1, 1], shown: "m²", also: [] },
  { symbol: "mm2", kinds: ["area"], factor: [1, 1000000], shown: "mm²", also: [] },
  { symbol: "in2", kinds: ["area"], factor: [16129, 25000000], shown: "in²", also: ["sqin", "sq.in"] },
  { symbol: "m3", kinds: ["volume"], factor: [1, 1], shown: "m³", also: [] },
  { symbol: "L", kinds: ["volume"], factor: [1, 1000], also: ["l", "litre", "litres", "liter", "liters"] },
  { symbol: "mL", kinds: ["volume"], factor: [1, 1000000], also: ["ml", "cc", "cm3"] },
  { symbol: "uL", kinds: ["volume"], factor: [1, 1000000000], shown: "µL", also: ["µl", "mm3"] },
  { symbol: "gal", kinds: ["volume"], factor: [473176473, 125000000000], also: ["usgal", "gallon", "gallons"] },
  { symbol: "rad", kinds: ["angle"], factor: [1, 1], also: ["radian", "radians"] },
  { symbol: "deg", kinds: ["angle"], factor: [Math.PI, 180], shown: "°", also: ["°", "degree", "degrees"] },
  { symbol: "s", kinds: ["time"], factor: [1, 1], also: ["sec", "second", "seconds"] },
  { symbol: "min", kinds: ["time"], factor: [60, 1], also: ["minute", "minutes"] },
  { symbol: "h", kinds: ["time"], factor: [3600, 1], also: ["hr", "hour", "hours"] },
  { symbol: "m/s", kinds: ["speed"], factor: [1, 1], also: ["mps"] },
  { symbol: "m/min", kinds: ["speed"], factor: [1, 60], also: [] },
  { symbol: "ft/min", kinds: ["speed"], factor: [127, 25000], also: ["fpm"] },
  { symbol: "ft/s", kinds: ["speed"], factor: [381, 1250], also: ["fps"] },
  { symbol: "rad/s", kinds: ["rotation"], factor: [1, 1], also: [] },
  { symbol: "rpm", kinds: ["rotation"], factor: [Math.PI, 30], also: ["r/min", "rev/min", "1/min", "min-1", "u/min"] },
  { symbol: "kg", kinds: ["mass"], factor: [1, 1], also: ["kilogram", "kilograms"] },
  { symbol: "g", kinds: ["mass"], factor: [1, 1000], also: ["gram", "grams"] },
  { symbol: "lb", kinds: ["mass"], factor: [45359237, 100000000], also: ["lbs", "lbm", "pound", "pounds"] },
  { symbol: "kg/m3", kinds: ["density"], factor: [1, 1], shown: "kg/m³", also: [] },
  { symbol: "g/cm3", kinds: ["density"], factor: [1000, 1], shown: "g/cm³", also: ["g/cc", "g/ml"] },
  { symbol: "N", kinds: ["force"], factor: [1, 1], also: ["newton", "newtons"] },
  { symbol: "kN", kinds: ["force"], factor: [1000, 1], also: [] },
  { symbol: "lbf", kinds: ["force"], factor: lbf, also: ["lb-force"] },
  { symbol: "kgf", kinds: ["force"], factor: [196133, 20000], also: ["kp"] },
  { symbol: "N*m", kinds: ["torque"], factor: [1, 1], shown: "N·m", also: ["nm", "n-m", "n.m"] },
  {
    symbol: "ft*lbf",
    kinds: ["torque"],
    factor: [3389544870828501, 2500000000000000],
    shown: "ft·lbf",
    also: [
      "lbf*ft",
      "ft*lb",
      "lb*ft",
      "ftlb",
      "lbft",
      "ftlbf",
      "lbfft",
      "ft-lb",
      "ft-lbs",
      "ft-lbf",
      "ft.lb",
      "ft.lbf",
      "lb.ft",
      "lb-ft",
      "lbf-ft",
      "foot-pounds",
    ],
  },
  {
    symbol: "in*lbf",
    kinds: ["torque"],
    factor: [1129848290276167, 10000000000000000],
    shown: "in·lbf",
    also: ["lbf*in", "in*lb", "lb*in", "inlb", "in-lb", "in-lbs", "in-lbf"],
  },
  { symbol: "Pa", kinds: pressureKinds, factor: [1, 1], also: [] },
  { symbol: "kPa", kinds: pressureKinds, factor: [1000, 1], also: [] },
  { symbol: "MPa", kinds: pressureKinds, factor: [1000000, 1], also: ["n/mm2"] },
  { symbol: "bar", kinds: pressureKinds, factor: [100000, 1], also: ["bars"] },
  { symbol: "mbar", kinds: pressureKinds, factor: [100, 1], also: ["hpa"] },
  { symbol: "psi", kinds: pressureKinds, factor: [8896443230521, 1290320000], also: ["lbf/in2", "lb/in2", "lbs/in2"] },
  { symbol: "kgf/cm2", kinds: pressureKinds, factor: [196133, 2], shown: "kgf/cm²", also: ["kg/cm2"] },
  { symbol: "Pa*s", kinds: ["viscosity"], factor: [1, 1], shown: "Pa·s", also: ["pas", "pa-s"] },
  { symbol: "mPa*s", kinds: ["viscosity"], factor: [1, 1000], shown: "mPa·s", also: ["mpas", "cp"] },
  { symbol: "m2/s", kinds: ["kinematic-viscosity"], factor: [1, 1], shown: "m²/s", also: [] },
  { symbol: "mm2/s", kinds: ["kinematic-viscosity"], factor: [1, 1000000], shown: "mm²/s", also: ["cst"] },
  { symbol: "m3/s", kinds: ["flow"], factor: [1, 1], shown: "m³/s", also: [] },
  { symbol: "m3/h", kinds: ["flow"], factor: [1, 3600], shown: "m³/h", also: ["m3/hr"] },
  { symbol: "L/min", kinds: ["flow"], factor: [1, 60000], also: ["lpm"] },
  { symbol: "L/s", kinds: ["flow"], factor: [1, 1000], also: [] },
  { symbol: "L/h", kinds: ["flow"], factor: [1, 3600000], also: ["l/hr"] },
  { symbol: "mL/min", kinds: ["flow"], factor: [1, 60000000], also: ["cc/min", "cm3/min"] },
  { symbol: "gal/min", kinds: ["flow"], factor: [157725491, 2500000000000], also: ["gpm", "usgpm"] },
  { symbol: "W", kinds: ["power"], factor: [1, 1], also: ["watt", "watts"] },
  { symbol: "kW", kinds: ["power"], factor: [1000, 1], also: [] },
  { symbol: "hp", kinds: ["power"], factor: [745.6998715822702, 1], also: ["bhp"] },
  { symbol: "K", kinds: temperatureKinds, factor: [1, 1], also: ["kelvin"] },
  { symbol: "degC", kinds: temperatureKinds, factor: [1, 1], zero: 273.15, shown: "°C", also: ["°c", "℃", "c", "celsius"] },
  { symbol: "degF", kinds: temperatureKinds, factor: [5, 9], zero: 459.67, shown: "°F", also: ["°f", "℉", "f", "fahrenheit"] },
  { symbol: "J/(kg*K)", kinds: ["heat-capacity"], factor: [1, 1], shown: "J/(kg·K)", also: ["j/kg/k", "j/kgk"] },
  { symbol: "kJ/(kg*K)", kinds: ["heat-capacity"], factor: [1000, 1], shown: "kJ/(kg·K)", also: ["kj/kg/k", "kj/kgk"] },
  { symbol: "W/K", kinds: ["conductance"], factor: [1, 1], also: [] },
  { symbol: "N/m", kinds: ["surface-tension"], factor: [1, 1], also: [] },
  { symbol: "Pa*m/s", kinds: ["pressure-speed"], factor: [1, 1], shown: "Pa·m/s", also: [] },
  { symbol: "MPa*m/s", kinds: ["pressure-speed"], factor: [1000000, 1], shown: "MPa·m/s", also: [] },
  {
    symbol: "psi*ft/min",
    kinds: ["pressure-speed"],
    // Pound-force per square inch and foot a minute, multiplied.
    factor: [8896443230521 * 127, 1290320000 * 25000],
    shown: "psi·ft/min",
    also: [],
  },
];

/** Every unit, by our spelling. */
export const units: ReadonlyMap<string, Unit> = new Map(list.map((unit) => [unit.symbol, unit]));

/** The units in which a kind may be given. */
export function unitsOf(kind: Kind): readonly Unit[] {
  return list.filter((unit) => unit.kinds.includes(kind));
}

/**
 * A unit spelling as compared: one kind of micro sign, middle dots and crosses
 * as `*`, superscripts as digits, primes as quotation marks, no spaces.
 */
function tidyUnit(text: string): string {
  return text
    .replace(/\s+/gu, "")
    .replace(/[μµ]/gu, "µ")
    .replace(/[·⋅×∙]/gu, "*")
    .replace(/²/gu, "2")
    .replace(/³/gu, "3")
    .replace(/[″”“]|''/gu, '"')
    .replace(/[′’]/gu, "'")
    .replace(/º/gu, "°");
}

const spellings = new Map<string, Unit>();
for (const unit of list) {
  spellings.set(unit.symbol, unit);
  for (const spelling of [unit.symbol, ...(unit.shown ? [unit.shown] : []), ...unit.also]) {
    const key = tidyUnit(spelling).toLowerCase();
    if (!spellings.has(key)) spellings.set(key, unit);
  }
}

/**
 * The unit a person means, or undefined when it is not in the list. Our exact
 * spelling wins, so `MPa*s` is never read as `mPa*s`; else case is forgiven.
 * @example findUnit("ft-lb")?.symbol // "ft*lbf"
 */
export function findUnit(text: string): Unit | undefined {
  const tidy = tidyUnit(text).replace(/\.$/u, "");
  // Mega and milli differ by a thousand million: where only case tells them apart, it must be right.
  if (/^(?:MPa\*?s|Mm|mPa|mW|mN)$/u.test(tidy)) return undefined;
  return spellings.get(tidy) ?? spellings.get(tidy.toLowerCase());
}

/** A reading in a unit of its kind, in SI. Temperatures take their zero with them; differences do not. */
export function toSi<K extends Kind>(kind: K, value: number, unit: Unit): Kinds[K] {
  const zero = kind === "temperature" ? (unit.zero ?? 0) : 0;
  return (((value + zero) * unit.factor[0]) / unit.factor[1]) as Kinds[K];
}

/** An SI value as a reading in a unit of its kind. */
export function fromSi<K extends Kind>(kind: K, value: Kinds[K], unit: Unit): number {
  const zero = kind === "temperature" ? (unit.zero ?? 0) : 0;
  return (value * unit.factor[1]) / unit.factor[0] - zero;
}

/**
 * A quantity from a number and one of our unit spellings, for code and tests.
 * @throws RangeError when the unit does not measure that kind: a programming mistake.
 * @example quantity("length", 45, "mm") // 0.045
 */
export function quantity<K extends Kind>(kind: K, value: number, symbol: string): Kinds[K] {
  const unit = units.get(symbol);
  if (!unit?.kinds.includes(kind)) throw new RangeError(`${symbol} does not measure ${kind}`);
  return toSi(kind, value, unit);
}

/** An SI value as a number in one of our unit spellings. @throws RangeError as `quantity`. */
export function inUnit<K extends Kind>(kind: K, value: Kinds[K], symbol: string): number {
  const unit = units.get(symbol);
  if (!unit?.kinds.includes(kind)) throw new RangeError(`${symbol} does not measure ${kind}`);
  return fromSi(kind, value, unit);
}
