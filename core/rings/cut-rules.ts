import { quantity } from "../units/index.ts";
import { rule } from "../workings/index.ts";

export const lengthRule = rule({
  id: "ring-length",
  symbol: "L",
  expression: "π · (d + s)",
  unit: "m",
  inputs: [
    { symbol: "d", name: "shaft", unit: "m" },
    { symbol: "s", name: "section", unit: "m" },
  ],
  citation: { source: "mobley-1999", at: "p. 226: mean diameter times π" },
});

export const bevelRule = rule({
  id: "ring-bevel",
  symbol: "e",
  expression: "s / tan(α)",
  unit: "m",
  inputs: [
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "α", name: "angle", unit: "rad" },
  ],
  citation: { source: "geometry", at: "two parallel cuts at α to the strip; 90° is square" },
});

export const cutLengthRule = rule({
  id: "ring-cut-length",
  symbol: "L_c",
  expression: "L + e",
  unit: "m",
  inputs: [
    { symbol: "L", name: "ring-length", unit: "m" },
    { symbol: "e", name: "ring-bevel", unit: "m" },
  ],
  citation: { source: "geometry", at: "tip to tip of a strip with parallel slanting ends" },
});

export const otherReadingRule = rule({
  id: "ring-cut-length-from-square",
  symbol: "L_c′",
  expression: "L + s · tan(α)",
  unit: "m",
  inputs: [
    { symbol: "L", name: "ring-length", unit: "m" },
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "α", name: "angle", unit: "rad" },
  ],
  citation: { source: "geometry", at: "the same angle read from square instead of from the strip" },
});

export const fromSquareRule = rule({
  id: "angle-from-square",
  symbol: "α′",
  expression: "90° − α",
  unit: "rad",
  inputs: [{ symbol: "α", name: "angle", unit: "rad" }],
  citation: { source: "geometry", at: "the two shop readings of one cut" },
});

export const shortcutRule = rule({
  id: "ring-shortcut-error",
  symbol: "ΔL",
  expression: "π · s",
  unit: "m",
  inputs: [{ symbol: "s", name: "section", unit: "m" }],
  citation: { source: "geometry", at: "mean circumference less the shaft's" },
});

export const squareRule = rule({
  id: "ring-cut-square",
  symbol: "α",
  name: "angle",
  expression: "90°",
  unit: "rad",
  inputs: [],
  citation: { source: "definition" },
});

export const angleAssumed = rule({
  id: "ring-skive-angle",
  symbol: "α",
  name: "angle",
  expression: "",
  unit: "rad",
  inputs: [],
  citation: { source: "fsa-valve-compression-2016", at: "45°; 30° in Mobley 1999, p. 226" },
  assumed: { min: quantity("angle", 30, "deg"), max: quantity("angle", 45, "deg") },
});

export const millimetre = quantity("length", 1, "mm");
export const thirtySecond = quantity("length", 1 / 32, "in");
export const square = quantity("angle", 90, "deg");
export const flattest = quantity("angle", 15, "deg");
/** So that 15° and 90° survive the conversion from degrees. */
export const grace = quantity("angle", 0.001, "deg");

export const roundedRule = rounding("rounded-to-millimetre", "nearest whole millimetre");
export const roundedInchRule = rounding("rounded-to-thirty-second", "nearest thirty-second of an inch");

function rounding(id: string, at: string) {
  return rule({
    id,
    symbol: "L_r",
    expression: "L, rounded",
    unit: "m",
    inputs: [{ symbol: "L", name: "ring-length", unit: "m" }],
    citation: { source: "own-proposal", at: `${at}: as near as a knife cuts` },
  });
}
