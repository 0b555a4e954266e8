import { saturationPressure, saturationTemperature } from "../fluid/index.ts";
import {
  type AbsolutePressure,
  type GaugePressure,
  type PressureDifference,
  quantity,
  type Temperature,
  type TemperatureDifference,
} from "../units/index.ts";
import { type Answer, begin, type Filling, outside, refuse, rule } from "../workings/index.ts";
import { absolutePressure, atmosphereRange } from "./absolute.ts";

export const vapourVerdicts = ["flashes", "close", "clear"] as const;

export interface VapourMargin {
  readonly verdict: (typeof vapourVerdicts)[number];
  readonly boxAbsolute: AbsolutePressure;
  /** Where packing and shaft meet. */
  readonly faceTemperature: Temperature;
  readonly vapourAbsolute: AbsolutePressure;
  /** Box pressure less vapour pressure; negative when it flashes. */
  readonly margin: PressureDifference;
  /** By how much the face may still warm; not known for another liquid than water. */
  readonly temperatureMargin?: TemperatureDifference;
}

const riseTaken = rule({
  id: "face-rise-taken",
  name: "rise",
  symbol: "ΔT",
  expression: "taken for lack of a measurement",
  unit: "K",
  inputs: [],
  citation: {
    source: "bloch-geitner-maintenance",
    at: "plunger boxes up to 50 °F above the pumpage while run in; the figure used is our own proposal",
  },
  assumed: { min: 0, max: quantity("temperature-difference", 50, "degF") },
});
const usualRise = 10 as TemperatureDifference;

const faceRule = rule({
  id: "face-temperature",
  symbol: "T_f",
  expression: "T + ΔT",
  unit: "K",
  inputs: [
    { symbol: "T", name: "temperature", unit: "K" },
    { symbol: "ΔT", name: "rise", unit: "K" },
  ],
  citation: { source: "definition" },
});
const saturationRule = rule({
  id: "vapour-pressure",
  symbol: "p_v",
  expression: "pressure at which water boils at T_f",
  unit: "Pa",
  inputs: [{ symbol: "T_f", name: "face-temperature", unit: "K" }],
  citation: { source: "iapws-r7-97", at: "region 4, eq. 30" },
});
const givenVapour = rule({
  id: "vapour-pressure-given",
  name: "vapour-pressure",
  symbol: "p_v",
  expression: "as given",
  unit: "Pa",
  inputs: [{ symbol: "p_v", name: "vapourAbsolute", unit: "Pa" }],
  citation: { source: "definition" },
});
const marginRule = rule({
  id: "vapour-margin",
  symbol: "Δp",
  expression: "p_abs − p_v",
  unit: "Pa",
  inputs: [
    { symbol: "p_abs", name: "absolute-pressure", unit: "Pa" },
    { symbol: "p_v", name: "vapour-pressure", unit: "Pa" },
  ],
  citation: { source: "definition" },
});
const temperatureMarginRule = rule({
  id: "vapour-temperature-margin",
  symbol: "ΔT_v",
  expression: "T_s(p_abs) − T_f",
  unit: "K",
  inputs: [
    { symbol: "p_abs", name: "absolute-pressure", unit: "Pa" },
    { symbol: "T_f", name: "face-temperature", unit: "K" },
  ],
  citation: { source: "iapws-r7-97", at: "region 4, eq. 31" },
});
const closeRule = rule({
  id: "vapour-close-within",
  symbol: "ΔT_close",
  expression: "a further rise that friction may bring",
  unit: "K",
  inputs: [],
  citation: { source: "own-proposal", at: "for another liquid than water: a vapour pressure of more than 0.7 of the box pressure" },
  assumed: { min: 5, max: 20 },
});
/** Critical point of water, IAPWS R7-97 eq. 2. */
const waterTo = quantity("temperature", 373.946, "degC");
const closeWithin = 10;
const closeShare = 0.7;

/**
 * Whether what leaks flashes to vapour in the box: box pressure above vacuum
 * against the vapour pressure where packing and shaft meet. Close: it would
 * flash if the face grew 10 K warmer.
 *
 *   Δp = p_box + p_atm − p_v(T + ΔT)
 *
 * Units: box Pa gauge, p_v Pa above vacuum, T K.
 * Range: −1.1 to 1000 bar; atmosphere 30 to 130 kPa (left out: 101.325 kPa); rise 0 to 300 K (left
 * out: 10 K); water 0 °C to its critical point at the face. Refused outside, and a box at or below vacuum as impossible.
 * Source: IAPWS R7-97, region 4; what counts as close is our own proposal.
 * @example vapourMargin({ boxPressureGauge: quantity("pressure", 1, "bar"), temperature: quantity("temperature", 115, "degC") }).value.verdict // "flashes"
 */
export function vapourMargin(given: {
  readonly boxPressureGauge: GaugePressure;
  readonly temperature: Temperature;
  readonly rise?: TemperatureDifference;
  readonly atmosphereAbsolute?: AbsolutePressure;
  readonly vapourAbsolute?: AbsolutePressure;
}): Answer<VapourMargin> {
  const { boxPressureGauge, temperature, atmosphereAbsolute, vapourAbsolute } = given;
  const ofWater = vapourAbsolute === undefined;
  const refused = outside([
    ["boxPressureGauge", boxPressureGauge, { min: -1.1e5, max: 1e8 }, "Pa"],
    ["temperature", temperature, ofWater ? { min: quantity("temperature", 0, "degC"), max: waterTo } : { min: 1, max: 2000 }, "K"],
    ["rise", given.rise ?? 0, { min: 0, max: 300 }, "K"],
    ["atmosphereAbsolute", atmosphereAbsolute ?? atmosphereRange.max, atmosphereRange, "Pa"],
    ["vapourAbsolute", vapourAbsolute ?? 0, { min: 0, max: 1e9 }, "Pa"],
  ]);
  if (refused) return refused;
  const work = begin();
  const boxAbsolute = absolutePressure(work, boxPressureGauge, atmosphereAbsolute);
  if (boxAbsolute <= 0) {
    return refuse({ kind: "impossible", input: "boxPressureGauge", given: boxPressureGauge, says: { id: "box-below-vacuum" } });
  }
  const rise = given.rise ?? work.assume(riseTaken, usualRise);
  const faceTemperature = work.step(faceRule, [temperature, rise], (temperature + rise) as Temperature);
  if (ofWater && faceTemperature > waterTo) {
    const at = outside([["temperature", faceTemperature, { max: waterTo }, "K"]]);
    if (at) return at;
  }
  const vapour = ofWater
    ? work.step(saturationRule, [faceTemperature], saturationPressure(faceTemperature))
    : work.step(givenVapour, [vapourAbsolute], vapourAbsolute);
  const margin = work.step(marginRule, [boxAbsolute, vapour], (boxAbsolute - vapour) as PressureDifference);
  const within = work.assume(closeRule, closeWithin);
  const boils = ofWater ? saturationTemperature(boxAbsolute) : (Number.NaN as Temperature);
  const temperatureMargin = Number.isFinite(boils)
    ? work.step(temperatureMarginRule, [boxAbsolute, faceTemperature], (boils - faceTemperature) as TemperatureDifference)
    : undefined;
  const close = temperatureMargin === undefined ? vapour > closeShare * boxAbsolute : temperatureMargin < within;
  const verdict = margin <= 0 ? "flashes" : close ? "close" : "clear";
  const about = {
    kind: "limit",
    input: "boxPressureGauge",
    given: boxPressureGauge,
    citation: { source: "iapws-r7-97", at: "region 4" },
  } as const;
  if (verdict === "flashes") work.warn({ ...about, says: { id: "box-flashes" } });
  if (verdict === "close") work.warn({ ...about, says: { id: "box-close-to-flashing" } });
  const found: Filling<VapourMargin> = { verdict, boxAbsolute, faceTemperature, vapourAbsolute: vapour, margin };
  if (temperatureMargin !== undefined) found.temperatureMargin = temperatureMargin;
  return work.found<VapourMargin>(found);
}
