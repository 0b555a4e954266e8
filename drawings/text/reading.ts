import { formatNumber, inUnit, type Length, type UnitSystem, unitText } from "@ringwright/core/units";

/** A value on a ruler: metres, or a plain number such as a hardness. */
export interface Reading {
  readonly value: number;
  readonly unit: "m" | "1";
  /** The largest value beside it, which says how finely all of them are written. */
  readonly among: number;
  /** Its unit is written too. */
  readonly named?: boolean;
}

/** Metres below which a whole ruler is in micrometres, in inches too: that is how roughness is given. */
const small = 20e-6;
/** Metres from which a tenth of a millimetre, a thousandth of an inch, is fine enough. */
const large = 10e-3;

/** A value as a ruler shows it, no finer than it can be meant and without idle noughts: `0.05`, `0.0508 in`, `3.2 µm`, `250`. */
export function reading({ value, unit, among, named }: Reading, system: UnitSystem): string {
  if (unit === "1") return formatNumber(value, 0);
  const shown = among < small ? "um" : system === "metric" ? "mm" : "in";
  const decimals = shown === "um" ? 2 : (shown === "mm" ? 3 : 4) - (among >= large ? (shown === "mm" ? 2 : 1) : 0);
  const number = formatNumber(inUnit("length", value as Length, shown), decimals)
    .replace(/(\.\d*?)0+$/u, "$1")
    .replace(/\.$/u, "");
  return named ? `${number}\u00a0${unitText(shown)}` : number;
}
