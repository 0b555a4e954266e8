import { quantity } from "../units/index.ts";
import type { Asked } from "./asked.ts";
import { citeFact } from "./cite-fact.ts";
import { type Judge, least, most, mostOfAny, type Verdicts } from "./judge.ts";
import { kindsOfLimit, type Limit, shownAs } from "./limit.ts";
import type { Item } from "./question.ts";
import type { ReadyStyle } from "./ready.ts";

const freezing = quantity("temperature", 0, "degC");

const heatVerdicts: Verdicts = {
  constraint: "temperature",
  holds: "temperature-holds",
  warn: "temperature-near-limit",
  stop: "temperature-stops",
  ask: "temperature-limit-unknown",
  clears: "clear-by-cooling",
  clearsBySheet: "clear-by-cooling-or-sheet",
};
const heatOfUnknown: Verdicts = { ...heatVerdicts, warn: "temperature-above-limit-in-air" };
const coldVerdicts: Verdicts = {
  constraint: "cold",
  holds: "cold-holds",
  warn: "cold-holds",
  stop: "cold-stops",
  ask: "cold-limit-unknown",
  clears: "clear-by-warming",
  clearsBySheet: "clear-by-warming-or-sheet",
};
const acidVerdicts: Verdicts = {
  constraint: "ph",
  holds: "ph-holds",
  warn: "ph-near-end",
  stop: "ph-stops",
  ask: "ph-limit-unknown",
  clearsBySheet: "clear-by-own-sheet",
};
const speedVerdicts: Verdicts = {
  constraint: "speed",
  holds: "speed-holds",
  warn: "speed-above-careful",
  stop: "speed-stops",
  ask: "speed-limit-unknown",
  clears: "clear-by-slower",
  clearsBySheet: "clear-by-slower",
};
const pressureVerdicts: Verdicts = {
  constraint: "pressure",
  holds: "pressure-holds",
  warn: "pressure-above-careful",
  stop: "pressure-stops",
  ask: "pressure-limit-unknown",
  clears: "clear-by-less-pressure",
  clearsBySheet: "clear-by-less-pressure",
};

/** The limit that the item's own sheet prints, in place of the general one. */
function own(limit: Limit, value: number | undefined, of: keyof typeof kindsOfLimit): Limit {
  if (value === undefined) return limit;
  const shown = shownAs(kindsOfLimit[of], value);
  const citation = { source: "item-sheet" } as const;
  return { ...limit, value, warn: value, top: value, shown, topShown: shown, missing: false, citation, seen: false, confidence: "C" };
}

/** How much of a temperature limit is used, counted in °C as the trade counts it; none below freezing. */
function heatShare(given: number, limit: number): number {
  return given > freezing && limit > freezing ? (given - freezing) / (limit - freezing) : 0;
}

/** How near a least temperature is: 1 at it, 0 from thirty degrees above. Our own measure. */
function coldShare(given: number, limit: number): number {
  return Math.max(0, 1 - (given - limit) / 30);
}

/** How near an end of the acidity is: the warning line, one unit away, counts as nine tenths. */
function acidShare(distance: number): number {
  return Math.max(0, 1 - distance / 10);
}

/** Heat, cold and acidity: hard limits. */
export function checkHeatAndAcid(judge: Judge, style: ReadyStyle, asked: Asked, item: Item | undefined): void {
  const { temperature, pH } = asked;
  if (temperature) {
    for (const atmosphere of asked.atmospheres) {
      const limit = own(style.heat[atmosphere], item?.temperature, "temperature");
      judge.compare(heatVerdicts, limit, temperature, heatShare(temperature.value, limit.value), most);
    }
    if (asked.atmospheres.length === 0) {
      const limit = own(style.heat.unknown, item?.temperature, "temperature");
      judge.compare(heatOfUnknown, limit, temperature, heatShare(temperature.value, limit.value), mostOfAny);
    }
    // Cold is worth a word only where it is cold: near the figure, or below freezing where there is none.
    const nullBelow = asked.ready.facts.selection.nullMinBelow.value ?? freezing;
    const near = coldShare(temperature.value, style.cold.value);
    if (style.cold.missing ? temperature.value < nullBelow : near > 0) judge.compare(coldVerdicts, style.cold, temperature, near, least);
  }
  if (pH) {
    const lowEnd = own(style.acidity.min, item?.pHMin, "ph");
    const highEnd = own(style.acidity.max, item?.pHMax, "ph");
    const low = pH.value - lowEnd.value;
    const high = highEnd.value - pH.value;
    if (low <= high) judge.compare(acidVerdicts, lowEnd, pH, acidShare(low), least);
    else judge.compare(acidVerdicts, highEnd, pH, acidShare(high), most);
  }
}

/** Speed, pressure and both together: soft up to the most that any source gives. */
export function checkSpeedAndPressure(judge: Judge, style: ReadyStyle, asked: Asked, item: Item | undefined): void {
  const { speed, pressure } = asked;
  const speedLimit = own(style.speed, item?.speed, "speed");
  const pressureLimit = own(style.pressure[asked.pressureOf], item?.pressure, "pressure");
  if (speed && asked.rotating) {
    judge.compare(speedVerdicts, speedLimit, speed, speed.value / speedLimit.value, mostOfAny);
  }
  if (pressure && pressure.value > 0) {
    judge.compare(pressureVerdicts, pressureLimit, pressure, pressure.value / pressureLimit.value, mostOfAny);
  }
  if (speed && pressure && asked.rotating && pressure.value > 0) checkIndex(judge, style, asked, speedLimit, pressureLimit);
}

/** The product of two separate limits is no allowable point: our own index says when to look closer. Never a stop. */
function checkIndex(judge: Judge, style: ReadyStyle, asked: Asked, speedLimit: Limit, pressureLimit: Limit): void {
  const p = asked.pressure?.value ?? 0;
  const v = asked.speed?.value ?? 0;
  if (!Number.isFinite(speedLimit.value) || !Number.isFinite(pressureLimit.value)) return;
  const index = (p / pressureLimit.value) * (v / speedLimit.value);
  judge.index = [style.indexRule, [p, pressureLimit.value, v, speedLimit.value], index];
  if (index <= asked.index.check) return;
  const kind = index > asked.index.ask ? "warn" : "note";
  const id = kind === "warn" ? "index-ask-supplier" : "index-check-cooling";
  const citation = citeFact(asked.ready.facts.index);
  judge.say(kind, "pressure-speed", { id, with: { index } }, citation);
}
