import type { Kind, Kinds } from "./quantity.ts";
import { siUnits } from "./quantity.ts";
import { fromSi, units } from "./unit.ts";

/** Which family of units a person reads. */
export type UnitSystem = "metric" | "inch";

/** The unit a workshop uses for each kind. */
const shownUnits: Readonly<Record<UnitSystem, Readonly<Record<Kind, string>>>> = {
  metric: {
    length: "mm",
    area: "mm2",
    volume: "mL",
    angle: "deg",
    time: "min",
    speed: "m/s",
    rotation: "rpm",
    mass: "kg",
    density: "kg/m3",
    force: "N",
    torque: "N*m",
    pressure: "bar",
    "absolute-pressure": "bar",
    "pressure-difference": "bar",
    stress: "MPa",
    viscosity: "mPa*s",
    "kinematic-viscosity": "mm2/s",
    flow: "L/min",
    power: "W",
    temperature: "degC",
    "temperature-difference": "K",
    "heat-capacity": "kJ/(kg*K)",
    conductance: "W/K",
    "surface-tension": "N/m",
    "pressure-speed": "MPa*m/s",
  },
  inch: {
    length: "in",
    area: "in2",
    volume: "mL",
    angle: "deg",
    time: "min",
    speed: "ft/min",
    rotation: "rpm",
    mass: "lb",
    density: "kg/m3",
    force: "lbf",
    torque: "ft*lbf",
    pressure: "psi",
    "absolute-pressure": "psi",
    "pressure-difference": "psi",
    stress: "psi",
    viscosity: "mPa*s",
    "kinematic-viscosity": "mm2/s",
    flow: "gal/min",
    power: "W",
    temperature: "degF",
    "temperature-difference": "degF",
    "heat-capacity": "kJ/(kg*K)",
    conductance: "W/K",
    "surface-tension": "N/m",
    "pressure-speed": "psi*ft/min",
  },
};

/** The unit in which a kind is shown to a person. */
export function shownUnit(kind: Kind, system: UnitSystem): string {
  return shownUnits[system][kind];
}

/** How a unit symbol is written for people: `N·m`, `°C`. */
export function unitText(symbol: string): string {
  return units.get(symbol)?.shown ?? symbol;
}

/** A number to so many decimals, never `-0`, never without a leading digit; digits beyond four before the mark are grouped by a thin space. */
export function formatNumber(value: number, decimals: number): string {
  const fixed = Math.abs(value).toFixed(Math.max(0, Math.min(20, decimals)));
  const [whole = "0", part] = fixed.split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/gu, "\u2009") : whole;
  const negative = value < 0 && /[1-9]/u.test(fixed);
  return `${negative ? "−" : ""}${grouped}${part === undefined ? "" : `.${part}`}`;
}

/** Decimals that give so many significant digits. */
export function decimalsFor(value: number, digits: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  return Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))));
}

/**
 * A quantity for a person: workshop unit, and either so many decimals of that
 * unit or so many significant digits (three when neither is said).
 * @example formatQuantity("length", quantity("length", 188.5, "mm"), { decimals: 0 }) // "189 mm"
 */
export function formatQuantity<K extends Kind>(
  kind: K,
  value: Kinds[K],
  as: { readonly system?: UnitSystem; readonly unit?: string; readonly decimals?: number; readonly digits?: number } = {},
): string {
  const wanted = units.get(as.unit ?? shownUnit(kind, as.system ?? "metric"));
  const converted = wanted ? fromSi(kind, value, wanted) : value;
  // A number so large that another unit cannot hold it stays as it is.
  const fits = Number.isFinite(converted) || !Number.isFinite(value);
  const [number, unit] = fits ? [converted, wanted] : [value, undefined];
  const decimals = as.decimals ?? decimalsFor(number, as.digits ?? 3);
  const symbol = unitText(unit?.symbol ?? siUnits[kind]);
  const space = symbol === "°" ? "" : "\u00a0";
  return `${formatNumber(number, decimals)}${space}${symbol}`;
}
